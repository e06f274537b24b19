import { KIND_IDS, type KindId, LEVELS, type Level } from '../../../shared/paper/index.ts';

/** One small thing that can be asked about again and again, each time with other numbers: a kind of question on a fixture, at a level. */
export interface Skill {
	readonly kind: KindId;
	/** A profile's id; null where the kind takes what it likes. */
	readonly about: string | null;
	readonly level: Level;
}

/** A skill as a text, permanent: decks are keyed by it. */
export const skillText = ({ kind, about, level }: Skill): string => `${kind}@${about ?? 'any'}.${level}`;

const TEXT = /^([a-z0-9-]{1,40})@([a-z][a-z0-9-]{0,39})\.([a-z]+)$/;

/** The skill of such a text; null where it is none that there is. */
export function skillOf(text: string): Skill | null {
	const [, id, about = '', hard] = TEXT.exec(text) ?? [];
	const kind = KIND_IDS.find((each) => each === id);
	const level = LEVELS.find((each) => each === hard);
	return kind && level ? { kind, about: about === 'any' ? null : about, level } : null;
}
