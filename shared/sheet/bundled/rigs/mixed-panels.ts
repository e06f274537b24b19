import { switchesFor } from '../../../dmx/index.ts';
import type { RigSheet } from '../../schema.ts';
import { BAR_LOOK, bar, chain, HALL, levels, WASH_LOOKS, wash, wholeSheet } from '../parts.ts';

export const mixedPanels: RigSheet = wholeSheet({
	name: `${HALL}: whatever was in the store`,
	fixtures: [
		wash('wash-1', 'battery wash, house left', 2.5, { work: 'line', address: 1 }),
		bar('bar-1', 'bar over the stage', 6, { address: 10, mode: 'whole-plus' }),
		{
			id: 'old-1',
			name: 'old wash, centre',
			profile: 'cobble',
			place: { x: 10, y: 0, throw: 4.6 },
			switches: [...switchesFor(21, 'sum'), false],
			slides: [1, 0, 0],
			plug: 'wall',
		},
		{
			id: 'old-2',
			name: 'old wash, house right',
			profile: 'cobble',
			place: { x: 14, y: 0, throw: 4.6 },
			switches: [...switchesFor(26, 'sum'), false],
			slides: [2, 1, 0],
			plug: 'old-1',
		},
	],
	desk: {
		name: 'desk',
		outputs: [{ id: 'a', universe: 1 }],
		patch: [
			{ fixture: 'wash-1', universe: 1, address: 1, mode: 'middle' },
			{ fixture: 'bar-1', universe: 1, address: 10, mode: 'whole-plus' },
			{ fixture: 'old-1', universe: 1, address: 21, mode: 'five' },
			{ fixture: 'old-2', universe: 1, address: 26, mode: 'seven' },
		],
		levels: [
			...levels(1, 1, WASH_LOOKS[1] ?? []),
			...levels(1, 10, BAR_LOOK),
			...levels(1, 21, [0, 255, 0, 200, 255]),
			...levels(1, 26, [255, 120, 0, 255, 255, 0, 0]),
		],
	},
	cables: chain(1, 'desk:a', ['wash-1', 'bar-1', 'old-1', 'old-2'], 10),
	terminators: ['old-2:out'],
	remote: { code: 1 },
});
