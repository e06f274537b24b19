import { type RigSheet, readSheet } from '../../../shared/sheet/index.ts';

const up = (...numbers: number[]): boolean[] => Array.from({ length: 10 }, (_, i) => numbers.includes(i + 1));

/** What no bundled rig has: a splitter with two lines behind it, and beside them a leader and a follower that are set by switches. */
export const boxed: RigSheet = readSheet({
	version: 1,
	name: 'Old Granary, long room',
	hall: { width: 12, height: 5 },
	fixtures: [
		{
			id: 'wash-1',
			name: 'door wash',
			profile: 'tallow-6',
			place: { x: 2, y: 0.5, throw: 3 },
			settings: { work: 'line', address: 1, mode: 'middle' },
		},
		{
			id: 'bar-1',
			name: 'beam bar',
			profile: 'picket-8',
			place: { x: 8, y: 0.5, throw: 3 },
			plug: 'wall',
			settings: { address: 10, mode: 'whole-plus' },
		},
		{
			id: 'old-1',
			name: 'old leader',
			profile: 'cobble',
			place: { x: 4, y: 0.5, throw: 3 },
			plug: 'wall',
			// magenta, and leads
			switches: up(2, 3, 9, 10),
		},
		{
			id: 'old-2',
			name: 'old follower',
			profile: 'cobble',
			place: { x: 6, y: 0.5, throw: 3 },
			plug: 'old-1',
			switches: up(1, 2, 3, 4, 10),
		},
	],
	desk: {
		name: 'desk',
		outputs: [{ id: 'a', universe: 1 }],
		patch: [
			{ fixture: 'wash-1', universe: 1, address: 1, mode: 'middle' },
			{ fixture: 'bar-1', universe: 1, address: 10, mode: 'whole-plus' },
		],
		levels: [
			{ universe: 1, slot: 1, level: 255 },
			{ universe: 1, slot: 4, level: 255 },
			{ universe: 1, slot: 10, level: 40 },
			{ universe: 1, slot: 11, level: 200 },
			{ universe: 1, slot: 15, level: 255 },
		],
	},
	splitters: [{ id: 'fan', name: 'splitter', outputs: 4 }],
	cables: [
		{ id: 'c1', kind: 'data', length: 5, from: 'desk:a', to: 'fan:in' },
		{ id: 'c2', kind: 'data', length: 5, from: 'fan:1', to: 'wash-1:in' },
		{ id: 'c3', kind: 'data', length: 5, from: 'fan:2', to: 'bar-1:in' },
		{ id: 'c4', kind: 'data', length: 5, from: 'old-1:out', to: 'old-2:in' },
	],
	terminators: ['wash-1:out', 'bar-1:out', 'old-2:out'],
	remote: { code: 1 },
});
