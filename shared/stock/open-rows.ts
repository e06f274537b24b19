import type { Place, ReadChart } from './types.ts';

/** Values of a row of a printed chart, both included. */
interface Values {
	readonly from: number;
	readonly to: number;
}

/** What of a printed chart nobody has held against the manual's page. */
export interface OpenRows {
	/** Lines of the chart that are still to be checked. */
	readonly lines: number;
	/** @param mode of the chart, counted from 0 as they are in the profile */
	heading(mode: number): boolean;
	/**
	 * Whether a row has something of such a line in it.
	 * @param slot the number of its slot, from 1
	 * @param values its values; null where the slot is one row without bands
	 * @param isFirst whether the slot's name stands in it
	 */
	row(mode: number, slot: number, values: Values | null, isFirst: boolean): boolean;
}

/** Of a fixture that comes from no chart. */
export const NO_OPEN_ROWS: OpenRows = { lines: 0, heading: () => false, row: () => false };

/** Finds the rows of a chart in which its unchecked lines end up: a line that begins nothing belongs to what stands above it. */
export function openRows({ modes, marks }: ReadChart): OpenRows {
	const open = new Set(marks.flatMap(({ code, place }) => (code === 'unchecked' ? [place.line] : [])));
	if (open.size === 0) return NO_OPEN_ROWS;
	const begun = modes
		.flatMap(({ name, place, slots }) => [
			...(name === '' ? [] : [place.line]),
			...slots.flatMap((slot) => [slot.place.line, ...slot.bands.map((band) => band.place.line)]),
		])
		.toSorted((a, b) => a - b);
	const inDoubt = new Set([...open].flatMap((line) => begun.findLast((each) => each <= line) ?? begun[0] ?? []));
	const isOpen = ({ line }: Place): boolean => inDoubt.has(line);
	return {
		lines: open.size,
		heading(mode) {
			const read = modes[mode];
			return read !== undefined && read.name !== '' && isOpen(read.place);
		},
		row(mode, at, values, isFirst) {
			const slots = modes[mode]?.slots.filter((slot) => slot.at === at) ?? [];
			return slots.some(
				({ place, bands }) =>
					(isFirst && isOpen(place)) ||
					bands.some(
						(band) => isOpen(band.place) && (values === null || (band.from <= values.to && values.from <= band.to)),
					),
			);
		},
	};
}
