import { doesAct, type Profile } from '../../../shared/profile/index.ts';
import type { Need } from '../../fault/index.ts';
import type { Witness } from '../witness.ts';

/** Free to the rig, reversible, or one part replaced by a known-good one; a repair is tried, and the complaint looked at again. */
export type CheckSort = 'look' | 'try' | 'swap' | 'mend';

/** One check in one place of a rig. */
export interface Check {
	/** `kind@place`: permanent for a rig. */
	readonly id: string;
	/** Permanent; words are content's. */
	readonly kind: string;
	readonly sort: CheckSort;
	/** The edition of the catalogue that it came with: what is set from an older one does not know it. */
	readonly since: number;
	/** What it is about: a fixture, cable, socket or output id, `desk`, `remote` or `rig`. */
	readonly place: string;
	/** A second thing it is about, such as another fixture's strips. */
	readonly other?: string;
	/** The device the tech stands at to do it, or the place up beside one that hangs (`upAt`). */
	readonly at: string;
	/** Seconds once there (common practice, no source). */
	readonly seconds: number;
	readonly needs: readonly Need[];
	/** Whether it darkens or changes a running show. */
	readonly disturbs: boolean;
	readonly cautions: readonly string[];
	/** Chance of a wrong answer (common practice, no source). */
	readonly error: number;
	/** What it shows on a rig. Outcome ids are the kind's own; words are content's. */
	read(w: Witness): string;
	/** A text on which `read` depends wholly: rigs with the same text show the same. Null: read it every time. */
	key(w: Witness): string | null;
}

/** Whether the light may change as a hand scrolls through a fixture's menu: unless its profile says that it does not. @param standIn as in `FinderOptions` */
export const mayAct = ({ panel }: Profile, standIn: boolean): boolean =>
	panel.kind !== 'dip' && (standIn || doesAct(panel) !== false);

export interface CheckKind {
	readonly kind: string;
	/** As in `Check`; left out, the first. */
	readonly since?: number;
	readonly sort: CheckSort;
	readonly seconds: number;
	readonly needs?: readonly Need[];
	readonly disturbs?: boolean;
	readonly cautions?: readonly string[];
	readonly error?: number;
}

/** A wrong answer to a look at something plain (common practice, no source). */
const SLIP = 0.02;

/** A check's kind and place, before it is said what it reads. */
export type Bare = CheckKind & { readonly place: string; readonly at: string; readonly other?: string };

/** See `Check.key`. */
export type KeyOf = Check['key'];

/** One check, with what its kind leaves out filled in. */
export function check(kind: Bare, read: (w: Witness) => string, key: KeyOf): Check {
	const { place, other } = kind;
	return {
		id: `${kind.kind}@${place}${other ? `+${other}` : ''}`,
		kind: kind.kind,
		since: kind.since ?? 1,
		sort: kind.sort,
		place,
		...(other === undefined ? {} : { other }),
		at: kind.at,
		seconds: kind.seconds,
		needs: kind.needs ?? [],
		disturbs: kind.disturbs ?? false,
		cautions: kind.cautions ?? [],
		error: kind.error ?? SLIP,
		read,
		key,
	};
}
