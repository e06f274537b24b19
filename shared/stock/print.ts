import type { ChartMode, ChartSlot } from './types.ts';

/** What a printed chart is made of: a slot with no place in any text yet. */
type PrintedBand = Pick<ChartSlot['bands'][number], 'from' | 'to' | 'words'>;
export type PrintedSlot = Pick<ChartSlot, 'at' | 'name'> & {
	readonly fine?: number | undefined;
	readonly words?: string;
	readonly bands: readonly PrintedBand[];
};
export type PrintedMode = Pick<ChartMode, 'name'> & { readonly slots: readonly PrintedSlot[] };

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
