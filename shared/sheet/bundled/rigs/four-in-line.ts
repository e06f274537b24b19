import type { RigSheet } from '../../schema.ts';
import { ACROSS, chain, HALL, levels, SIDES, WASH_LOOKS, wash, wholeSheet } from '../parts.ts';

export const fourInLine: RigSheet = wholeSheet({
	name: `${HALL}: four washes on a desk`,
	fixtures: ACROSS.map((x, i) =>
		wash(
			`wash-${i + 1}`,
			`wash ${i + 1}, ${SIDES[i]}`,
			x,
			{ work: 'line', address: 1 + 9 * i },
			i === 3 ? { settings: { mode: 'middle', work: 'line', address: 28, sensor: 'shut' } } : {},
		),
	),
	desk: {
		name: 'desk',
		outputs: [{ id: 'a', universe: 1 }],
		patch: ACROSS.map((_, i) => ({ fixture: `wash-${i + 1}`, universe: 1, address: 1 + 9 * i, mode: 'middle' })),
		levels: WASH_LOOKS.flatMap((look, i) => levels(1, 1 + 9 * i, look)),
	},
	cables: chain(1, 'desk:a', ['wash-1', 'wash-2', 'wash-3', 'wash-4']),
	terminators: ['wash-4:out'],
	remote: { code: 1 },
});
