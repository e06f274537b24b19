import { type CableEnd, linesOf, type Plan } from '../../../shared/plan/index.ts';

/** One data cable as it is labelled and drawn. */
export interface NumberedCable {
	/** From 1, in the order of the lines. */
	readonly n: number;
	readonly universe: number;
	readonly from: CableEnd;
	readonly to: CableEnd;
	/** Metres of the cable to take. */
	readonly length: number;
}

/** Every data cable of a plan, those to splitters among them, in the order they are run. */
export function numberedCables(plan: Plan): NumberedCable[] {
	const found: Omit<NumberedCable, 'n'>[] = linesOf(plan).flatMap(({ universe, feed, runs }) => [
		...(feed === null
			? []
			: [{ universe, from: { is: 'desk', universe }, to: { is: 'split', universe }, length: feed } as const]),
		...runs.flatMap(({ cables }) =>
			cables.map(({ from, to, length }) => ({
				universe,
				from:
					from === null
						? ({ is: feed === null ? 'desk' : 'split', universe } as const)
						: ({ is: 'row', row: from } as const),
				to: { is: 'row', row: to } as const,
				length,
			})),
		),
	]);
	return found.map((cable, i) => ({ n: i + 1, ...cable }));
}
