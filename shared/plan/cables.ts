import { linesOf } from './line.ts';
import type { Plan } from './types.ts';

/** An end of a data cable: a fixture by its row id, or the desk or where the line of a universe is split. */
export type CableEnd =
	| { readonly is: 'row'; readonly row: string }
	| { readonly is: 'desk' | 'split'; readonly universe: number };

/** One data cable as it is labelled and drawn. */
export interface NumberedCable {
	/** From 1, in the order of the lines. */
	readonly n: number;
	readonly universe: number;
	/** Which run of its universe it is of, from 1; 0 for the one to a splitter. */
	readonly run: number;
	readonly from: CableEnd;
	readonly to: CableEnd;
	/** Metres it has to reach, and of the cable to take. */
	readonly metres: number;
	readonly length: number;
}

/** What a data cable is found by: no two go to one row or to one universe's splitter. */
export const cableKey = ({ to }: Pick<NumberedCable, 'to'>): string | number =>
	to.is === 'row' ? to.row : to.universe;

/** Every data cable of a plan, those to splitters among them, in the order they are run. */
export function numberedCables(plan: Plan): NumberedCable[] {
	const found = linesOf(plan).flatMap(({ universe, feed, runs }): Omit<NumberedCable, 'n'>[] => {
		const desk: CableEnd = { is: 'desk', universe };
		const split: CableEnd = { is: 'split', universe };
		const start = feed === null ? desk : split;
		return [
			...(feed === null ? [] : [{ universe, run: 0, from: desk, to: split, metres: feed, length: feed }]),
			...runs.flatMap(({ cables }, i) =>
				cables.map(({ from, to, metres, length }) => ({
					universe,
					run: i + 1,
					from: from === null ? start : ({ is: 'row', row: from } as const),
					to: { is: 'row', row: to } as const,
					metres,
					length,
				})),
			),
		];
	});
	return found.map((cable, i) => ({ n: i + 1, ...cable }));
}

/** Lengths of all data cables of a plan, metres, each cable once. */
export const dataCables = (plan: Plan): number[] => numberedCables(plan).map(({ length }) => length);
