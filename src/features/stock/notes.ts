import type { Asked, AskedCode, LeftCode } from '../../../shared/gdtf/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import type { FileEntry } from '../../../shared/stock/index.ts';

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

/** The cautions that a fixture from a file carries wherever it is shown. */
export function cautionsOf(
	{ emitters, modes }: Profile,
	{ left }: Pick<FileEntry, 'left'>,
): ('ultraviolet' | 'flashing')[] {
	const flashes =
		left.some(({ code }) => GROUPS[code] === 'care') ||
		modes.some(({ slots }) =>
			slots.some(({ drives }) => drives.kind === 'bands' && drives.bands.some(({ effect }) => effect.do === 'strobe')),
		);
	return [
		...(emitters.some(({ ultraviolet }) => ultraviolet) ? (['ultraviolet'] as const) : []),
		...(flashes ? (['flashing'] as const) : []),
	];
}
