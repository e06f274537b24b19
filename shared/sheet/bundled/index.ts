/** The bundled rigs: set in a made-up hall, invented, and between them what crews meet. */
import { switchesFor } from '../../dmx/index.ts';
import { readSheet } from '../check.ts';
import type { RigSheet, RigSheetInput } from '../schema.ts';
import { BAR_LOOK, bar, chain, HALL, levels, WASH_LOOKS, wash } from './parts.ts';

/** Permanent ids. */
export const RIG_IDS = [
	'one-wash',
	'four-in-line',
	'leader-and-three',
	'two-universes',
	'mixed-panels',
	'long-line',
] as const;
export type RigId = (typeof RIG_IDS)[number];

const at = [2, 6, 10, 14];
const sides = ['house left', 'centre left', 'centre right', 'house right'];

const oneWash: RigSheetInput = {
	version: 1,
	name: `${HALL}: one wash by the door`,
	fixtures: [wash('wash-1', 'wash by the door', 8, { work: 'held', held: 'rose', level: 80 }, { plug: 'wall' })],
	remote: { code: 1 },
};

const fourInLine: RigSheetInput = {
	version: 1,
	name: `${HALL}: four washes on a desk`,
	fixtures: at.map((x, i) =>
		wash(
			`wash-${i + 1}`,
			`wash ${i + 1}, ${sides[i]}`,
			x,
			{ work: 'line', address: 1 + 9 * i },
			i === 3 ? { settings: { mode: 'middle', work: 'line', address: 28, sensor: 'shut' } } : {},
		),
	),
	desk: {
		name: 'desk',
		outputs: [{ id: 'a', universe: 1 }],
		patch: at.map((_, i) => ({ fixture: `wash-${i + 1}`, universe: 1, address: 1 + 9 * i, mode: 'middle' })),
		levels: WASH_LOOKS.flatMap((look, i) => levels(1, 1 + 9 * i, look)),
	},
	cables: chain(1, 'desk:a', ['wash-1', 'wash-2', 'wash-3', 'wash-4']),
	terminators: ['wash-4:out'],
	remote: { code: 1 },
};

const leaderAndThree: RigSheetInput = {
	version: 1,
	name: `${HALL}: a leader and three followers`,
	fixtures: at.map((x, i) =>
		wash(
			`wash-${i + 1}`,
			i === 0 ? 'leader, house left' : `follower ${i}, ${sides[i]}`,
			x,
			i === 0 ? { work: 'held', held: 'rose', lead: 'on' } : { work: 'follow' },
		),
	),
	cables: chain(1, 'wash-1:out', ['wash-2', 'wash-3', 'wash-4']),
	terminators: ['wash-4:out'],
	remote: { code: 1 },
};

const twoUniverses: RigSheetInput = {
	version: 1,
	name: `${HALL}: bars on two universes`,
	fixtures: at.map((x, i) =>
		bar(
			`bar-${i + 1}`,
			`bar ${i + 1}, ${sides[i]}`,
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
		patch: at.map((_, i) => ({
			fixture: `bar-${i + 1}`,
			universe: i < 2 ? 1 : 2,
			address: 1 + 9 * (i % 2),
			mode: 'whole-plus',
		})),
		levels: at.flatMap((_, i) =>
			levels(
				i < 2 ? 1 : 2,
				1 + 9 * (i % 2),
				BAR_LOOK.map((level, slot) => (slot === 1 ? Math.max(0, level - 60 * i) : level)),
			),
		),
	},
	cables: [...chain(1, 'desk:a', ['bar-1', 'bar-2'], 20), ...chain(3, 'desk:b', ['bar-3', 'bar-4'], 20)],
	terminators: ['bar-2:out', 'bar-4:out'],
};

const mixedPanels: RigSheetInput = {
	version: 1,
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
};

const long = Array.from({ length: 24 }, (_, i) => `bar-${i + 1}`);

const longLine: RigSheetInput = {
	version: 1,
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
};

const sheets: Readonly<Record<RigId, RigSheetInput>> = {
	'one-wash': oneWash,
	'four-in-line': fourInLine,
	'leader-and-three': leaderAndThree,
	'two-universes': twoUniverses,
	'mixed-panels': mixedPanels,
	'long-line': longLine,
};

const read = new Map<RigId, RigSheet>();

/** A bundled rig's sheet; the same object every time, so that what is worked out for it can be kept. */
export function bundledRig(id: RigId): RigSheet {
	let sheet = read.get(id);
	if (!sheet) {
		sheet = readSheet(sheets[id]);
		read.set(id, sheet);
	}
	return sheet;
}
