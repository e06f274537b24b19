import type { CautionId } from '#words/cautions/index.ts';
import type { Asked, AskedCode, LeftCode } from '../../../shared/gdtf/index.ts';
import { type Profile, ULTRAVIOLET } from '../../../shared/profile/index.ts';
import type { FileEntry } from '../../../shared/stock/index.ts';

/** What was lost from a file, and what was assumed. */
export type Notes = Pick<FileEntry, 'left' | 'asked'>;

/** What was lost from a file is shown in groups, what may hurt first. */
export type LeftGroup = 'care' | 'modes' | 'channels' | 'bands' | 'colours' | 'light' | 'rest';

const GROUPS: Readonly<Record<LeftCode, LeftGroup>> = {
	'rate-clamped': 'care',
	'not-acted': 'care',
	'shutter-between': 'care',
	reversed: 'care',
	'other-master': 'care',
	'part-of-slot': 'care',
	'mode-refused': 'modes',
	'mode-not-asked': 'modes',
	'cells-differ': 'modes',
	'virtual-channel': 'channels',
	'slot-unused': 'channels',
	'extra-bytes': 'channels',
	'fine-of-bands': 'channels',
	'master-unknown': 'channels',
	'resting-level': 'channels',
	'sets-dropped': 'bands',
	'same-start': 'bands',
	'set-outside': 'bands',
	'cut-off-byte': 'bands',
	'too-narrow': 'bands',
	'colour-not-given': 'colours',
	'colour-fitted': 'colours',
	'colour-out-of-reach': 'colours',
	'emitter-unused': 'colours',
	'beams-swapped': 'light',
	'beam-clamped': 'light',
	'beams-differ': 'light',
	'mixed-figures': 'light',
	'other-files': 'rest',
	'part-unused': 'rest',
	unreadable: 'rest',
	weight: 'rest',
	'name-cut': 'rest',
	'not-written': 'rest',
	'name-changed': 'rest',
	'cells-in-other-order': 'rest',
	'cells-overlap': 'rest',
};

const ORDER: readonly LeftGroup[] = ['care', 'modes', 'channels', 'bands', 'colours', 'light', 'rest'];

/** Notes in their groups, in the order shown; a group with none is left out. */
export const inGroups = <Note extends { readonly code: LeftCode }>(
	left: readonly Note[],
): readonly (readonly [LeftGroup, readonly Note[]])[] =>
	ORDER.map((group) => [group, left.filter(({ code }) => GROUPS[code] === group)] as const).filter(
		([, notes]) => notes.length > 0,
	);

/** Assumptions that no figure of the list of doubt stands for (`fileFixture` notes the others). */
const OWN: ReadonlySet<AskedCode> = new Set<AskedCode>([
	'strobe-rate',
	'programme',
	'emitters',
	'emitter-colour',
	'emitter-lumens',
	'emitter-watts',
	'static-colour',
]);

/** What is assumed besides the figures, what may flash first. */
export const askedBesides = <Note extends Pick<Asked, 'code'>>(asked: readonly Note[]): readonly Note[] => {
	const own = asked.filter(({ code }) => OWN.has(code));
	const mayFlash = ({ code }: Note): boolean => code === 'strobe-rate' || code === 'programme';
	return [...own.filter(mayFlash), ...own.filter((note) => !mayFlash(note))];
};

/** Nothing lost and nothing assumed: of an entry that was not read from a file. */
export const NO_NOTES: Notes = Object.freeze({ left: [], asked: [] });

/** Codes with which the real one may flash though nothing here does: a mode that was not taken may strobe. */
const MAY_FLASH: ReadonlySet<LeftCode | AskedCode> = new Set<LeftCode | AskedCode>([
	...(Object.keys(GROUPS) as LeftCode[]).filter((code) => GROUPS[code] === 'care'),
	'mode-refused',
	'mode-not-asked',
	'strobe-rate',
]);

/**
 * The cautions of light that a fixture of one's own carries wherever it is shown. The real one decides: ultraviolet counts though its
 * emitter was left out, and a slot of functions may flash though none here does.
 */
export function cautionsOf(
	{ emitters, modes }: Pick<Profile, 'emitters' | 'modes'>,
	{ left, asked }: Notes,
): ('ultraviolet' | 'flashing')[] {
	const isUltraviolet =
		emitters.some(({ ultraviolet }) => ultraviolet) ||
		left.some(({ facts }) => ULTRAVIOLET.test(Object.values(facts).join(' ')));
	const flashes =
		[...left, ...asked].some(({ code }) => MAY_FLASH.has(code)) ||
		modes.some(({ slots }) => slots.some(({ drives }) => drives.kind === 'bands'));
	return [...(isUltraviolet ? (['ultraviolet'] as const) : []), ...(flashes ? (['flashing'] as const) : [])];
}

/** All that goes on a card: what hands meet first, and then the light. @param isAssumed whether what feeds it is only assumed */
export const cardCautions = (
	{ power: { battery } }: Pick<Profile, 'power'>,
	isAssumed: boolean,
	ofLight: readonly CautionId[],
): readonly CautionId[] => [
	'hanging',
	...(battery === null || isAssumed ? (['mains'] as const) : []),
	...(battery !== null || isAssumed ? (['batteries'] as const) : []),
	...ofLight,
];
