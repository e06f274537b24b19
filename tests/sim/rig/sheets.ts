import { type RigSheet, readSheet } from '../../../shared/sheet/index.ts';

const at = (x: number) => ({ x, y: 0.5, throw: 3 });
const cable = (id: string, from: string | null, to: string | null, length = 5) => ({
	id,
	kind: 'data',
	length,
	from,
	to,
});

/** A desk, a battery wash, a mains bar feeding an older wash, one after the other, terminated. */
export const mixed: RigSheet = readSheet({
	version: 1,
	name: 'Lantern Row Hall, mixed',
	fixtures: [
		{
			id: 'wash-1',
			name: 'wash 1, house left',
			profile: 'tallow-6',
			place: at(2),
			settings: { work: 'line', address: 1 },
		},
		{ id: 'bar-1', name: 'bar 1', profile: 'picket-8', place: at(6), settings: { address: 11 }, plug: 'wall' },
		{
			id: 'old-1',
			name: 'old wash',
			profile: 'cobble',
			place: at(10),
			plug: 'bar-1',
			// 1 + 4 + 16 = 21
			switches: [true, false, true, false, true, false, false, false, false, false],
			slides: [1, 0, 0],
		},
	],
	desk: {
		name: 'desk',
		outputs: [
			{ id: 'a', universe: 1 },
			{ id: 'b', universe: 2 },
		],
		patch: [
			{ fixture: 'wash-1', universe: 1, address: 1, mode: 'middle' },
			{ fixture: 'bar-1', universe: 1, address: 11, mode: 'whole-plus' },
			{ fixture: 'old-1', universe: 1, address: 21, mode: 'five' },
		],
		levels: [
			{ universe: 1, slot: 1, level: 255 },
			{ universe: 1, slot: 8, level: 200 },
			{ universe: 1, slot: 11, level: 40 },
			{ universe: 1, slot: 14, level: 255 },
			{ universe: 1, slot: 16, level: 255 },
			{ universe: 1, slot: 22, level: 255 },
			{ universe: 1, slot: 25, level: 200 },
		],
	},
	cables: [
		cable('c1', 'desk:a', 'wash-1:in', 10),
		cable('c2', 'wash-1:out', 'bar-1:in'),
		cable('c3', 'bar-1:out', 'old-1:in'),
	],
	terminators: ['old-1:out'],
	remote: { code: 1 },
});

/** A battery wash that leads three others, no desk. */
export const led: RigSheet = readSheet({
	version: 1,
	name: 'Lantern Row Hall, leader and followers',
	fixtures: [
		{
			id: 'lead',
			name: 'leader',
			profile: 'tallow-6',
			place: at(2),
			settings: { work: 'held', held: 'rose', lead: 'on' },
		},
		...[1, 2, 3].map((n) => ({
			id: `f-${n}`,
			name: `follower ${n}`,
			profile: 'tallow-6',
			place: at(2 + 3 * n),
			settings: { work: 'follow' },
		})),
	],
	cables: [cable('c1', 'lead:out', 'f-1:in'), cable('c2', 'f-1:out', 'f-2:in'), cable('c3', 'f-2:out', 'f-3:in')],
	terminators: ['f-3:out'],
	remote: { code: 1 },
});
