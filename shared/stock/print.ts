import type { Profile } from '../profile/index.ts';
import type { ChartMode, ChartSlot } from './types.ts';

/** What a printed chart is made of: a slot with no place in any text yet. */
type PrintedBand = Pick<ChartSlot['bands'][number], 'from' | 'to' | 'words'>;
export type PrintedSlot = Pick<ChartSlot, 'at' | 'name'> & {
	readonly fine?: number | undefined;
	readonly words?: string;
	readonly bands: readonly PrintedBand[];
};
export type PrintedMode = Pick<ChartMode, 'name'> & { readonly slots: readonly PrintedSlot[] };

/** A profile's modes as they are printed: a slot that does one thing from end to end has no bands. */
export const printedModes = ({ modes }: Profile): PrintedMode[] =>
	modes.map(({ name, slots }) => ({
		name,
		slots: slots
			.toSorted((a, b) => a.at - b.at)
			.map((slot) => ({
				at: slot.at,
				fine: slot.fine,
				name: slot.name,
				bands:
					slot.drives.kind === 'bands'
						? slot.drives.bands
								.toSorted((a, b) => a.from - b.from)
								.map(({ from, to, name: words }) => ({ from, to, words }))
						: [],
			})),
	}));

/** A mode's chart as lines that `readChart` reads back to the same: its heading, a line a channel, and a line a band, set in. */
export function printMode({ name, slots }: PrintedMode): string {
	return [name, ...slots.flatMap(printSlot)].filter((line) => line !== '').join('\n');
}

function printSlot({ at, fine, name, words = '', bands }: PrintedSlot): string[] {
	const number = fine === undefined ? `${at}` : `${at}/${fine}`;
	return [
		`${number}  ${name}`,
		...(words === '' ? [] : [`\t${words}`]),
		...bands.map((band) => `\t${band.from}-${band.to}  ${band.words}`.trimEnd()),
	];
}
