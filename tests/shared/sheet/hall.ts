import type { RigSheetInput } from '../../../shared/sheet/index.ts';

/** A sheet that has one of everything: three kinds of fixture, desk, splitter, cables, terminators, remote. */
export const hall: RigSheetInput = {
	version: 1,
	name: 'Lantern Row Hall, get-in',
	hall: { width: 14, height: 5.5 },
	fixtures: [
		{
			id: 'wash-1',
			name: 'Wash 1, house left',
			profile: 'tallow-6',
			place: { x: 2, y: 3.5, throw: 4, overhead: true },
			settings: { work: 'line', address: 1, mode: 'long' },
			charge: 0.8,
		},
		{
			id: 'wash-2',
			name: 'Wash 2, house right',
			profile: 'tallow-6',
			place: { x: 12, y: 3.5, throw: 4, overhead: true },
			hidden: true,
		},
		{
			id: 'bar-1',
			name: 'Bar 1',
			profile: 'picket-8',
			place: { x: 5, y: 0.2, throw: 1.5 },
			plug: 'wall',
			settings: { address: 25, mode: 'halves' },
		},
		{ id: 'bar-2', name: 'Bar 2', profile: 'picket-8', place: { x: 7, y: 0.2, throw: 1.5 }, plug: 'bar-1' },
		{
			id: 'stone',
			name: 'Old wash',
			profile: 'cobble',
			place: { x: 9, y: 0.2, throw: 2 },
			plug: 'bar-2',
			switches: [false, true, false, true, false, false, false, false, false, false],
			slides: [1, 0, 1],
		},
	],
	desk: {
		name: 'Desk',
		outputs: [
			{ id: 'a', universe: 1 },
			{ id: 'b', universe: 2, on: false },
		],
		patch: [
			{ fixture: 'wash-1', universe: 1, address: 1, mode: 'long' },
			{ fixture: 'bar-1', universe: 1, address: 25, mode: 'halves' },
		],
		levels: [{ universe: 1, slot: 1, level: 255 }],
		master: 200,
	},
	splitters: [{ id: 'split', name: 'Splitter', outputs: 4 }],
	cables: [
		{ id: 'run', kind: 'data', length: 25, from: 'desk:a', to: 'split:in' },
		{ id: 'drop', kind: 'data', length: 10, from: 'split:1', to: 'wash-1:in', plus: 'open' },
		{ id: 'link', kind: 'microphone', length: 3, from: 'bar-1:out', to: 'bar-2:in', swapped: true },
		{ id: 'spare', kind: 'data', length: 5, from: null, to: null },
	],
	terminators: ['wash-1:out', 'bar-2:out'],
	remote: { code: 1 },
};
