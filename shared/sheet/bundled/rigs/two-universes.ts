import type { RigSheet } from '../../schema.ts';
import { ACROSS, BAR_LOOK, bar, chain, HALL, levels, SIDES, wholeSheet } from '../parts.ts';

export const twoUniverses: RigSheet = wholeSheet({
	name: `${HALL}: bars on two universes`,
	fixtures: ACROSS.map((x, i) =>
		bar(
			`bar-${i + 1}`,
			`bar ${i + 1}, ${SIDES[i]}`,
			x,
			{ mode: 'whole-plus', address: 1 + 9 * (i % 2) },
			i === 1 || i === 3 ? { plug: `bar-${i}` } : {},
		),
	),
	desk: {
		name: 'desk',
		outputs: [
			{ id: 'a', universe: 1 },
			{ id: 'b', universe: 2 },
		],
		patch: ACROSS.map((_, i) => ({
			fixture: `bar-${i + 1}`,
			universe: i < 2 ? 1 : 2,
			address: 1 + 9 * (i % 2),
			mode: 'whole-plus',
		})),
		levels: ACROSS.flatMap((_, i) =>
			levels(
				i < 2 ? 1 : 2,
				1 + 9 * (i % 2),
				BAR_LOOK.map((level, slot) => (slot === 1 ? Math.max(0, level - 60 * i) : level)),
			),
		),
	},
	cables: [...chain(1, 'desk:a', ['bar-1', 'bar-2'], 20), ...chain(3, 'desk:b', ['bar-3', 'bar-4'], 20)],
	terminators: ['bar-2:out', 'bar-4:out'],
});
