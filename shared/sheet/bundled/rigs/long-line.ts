import type { RigSheet } from '../../schema.ts';
import { BAR_LOOK, bar, chain, HALL, levels, wholeSheet } from '../parts.ts';

const long = Array.from({ length: 24 }, (_, i) => `bar-${i + 1}`);

export const longLine: RigSheet = wholeSheet({
	name: `${HALL}: twenty-four bars round the yard`,
	hall: { width: 80, height: 6 },
	fixtures: long.map((id, i) =>
		bar(
			id,
			`bar ${i + 1}`,
			2 + 3.2 * i,
			{ mode: 'whole-plus', address: 1 + 9 * i },
			{ place: { x: 2 + 3.2 * i, y: 0, throw: 2 }, plug: i % 6 === 0 ? 'wall' : `bar-${i}` },
		),
	),
	desk: {
		name: 'desk',
		outputs: [{ id: 'a', universe: 1 }],
		patch: long.map((fixture, i) => ({ fixture, universe: 1, address: 1 + 9 * i, mode: 'whole-plus' })),
		levels: long.flatMap((_, i) => levels(1, 1 + 9 * i, BAR_LOOK)),
	},
	cables: chain(1, 'desk:a', long, 10),
	terminators: ['bar-24:out'],
});
