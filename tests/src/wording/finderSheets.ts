import { BUNDLED, type Profile } from '../../../shared/profile/index.ts';
import { type RigSheet, readSheet } from '../../../shared/sheet/index.ts';
import { boxed } from '../../sim/finder/boxed.ts';
import { led, mixed } from '../../sim/rig/sheets.ts';

const tallow = BUNDLED.find(({ id }) => id === 'tallow-6') as Profile;
const LONG = 'the longest name that a part may be given';

/** A battery wash of the crew's own, whose names are as long as names may be. */
const wordy: Profile = {
	...tallow,
	id: 'wordy',
	name: 'Wordy',
	emitters: tallow.emitters.map((emitter) =>
		emitter.id === 'red' ? { ...emitter, name: LONG.slice(0, 40) } : emitter,
	),
	held: tallow.held.map((held) => (held.id === 'candle' ? { ...held, name: LONG.slice(0, 40) } : held)),
};

/** What the other two sheets lack: two universes, a panel that locks, a sensor shut, a programme that waits for sound, a lamp overhead, a charger in, a cable in nothing. */
export const kept: RigSheet = readSheet({
	version: 1,
	name: 'Lantern Row Hall, side gallery',
	fixtures: [
		{
			id: 'q-1',
			name: 'gallery wash',
			profile: 'tallow-6',
			place: { x: 1, y: 4, throw: 3, overhead: true },
			plug: 'wall',
			settings: { work: 'line', lock: 'on', sensor: 'shut', code: 3, loss: 'dark' },
		},
		{
			id: 'q-2',
			name: 'dance wash',
			profile: 'tallow-6',
			place: { x: 3, y: 0.5, throw: 3 },
			settings: { work: 'programme', programme: 'ear-step' },
		},
		{
			id: 'q-3',
			name: 'ledge bar',
			profile: 'picket-8',
			place: { x: 6, y: 0.5, throw: 3 },
			plug: 'wall',
			settings: { mode: 'cells', address: 20, loss: 'programme' },
		},
		{
			id: 'q-4',
			name: 'door wash',
			profile: 'wordy',
			place: { x: 9, y: 0.5, throw: 3 },
			settings: { work: 'held', held: 'candle' },
		},
	],
	desk: {
		name: 'gallery desk',
		outputs: [
			{ id: 'a', universe: 7 },
			{ id: 'b', universe: 8 },
		],
		patch: [
			{ fixture: 'q-1', universe: 7, address: 1, mode: 'middle' },
			{ fixture: 'q-3', universe: 8, address: 20, mode: 'cells' },
		],
		levels: [
			{ universe: 7, slot: 1, level: 255 },
			{ universe: 7, slot: 4, level: 200 },
			{ universe: 8, slot: 20, level: 40 },
			{ universe: 8, slot: 21, level: 255 },
			{ universe: 8, slot: 24, level: 255 },
		],
	},
	cables: [
		{ id: 'c1', kind: 'data', length: 5, from: 'desk:a', to: 'q-1:in' },
		{ id: 'c2', kind: 'data', length: 5, from: 'desk:b', to: 'q-3:in' },
		{ id: 'c3', kind: 'data', length: 5, from: null, to: null },
	],
	terminators: ['q-1:out', 'q-3:out'],
	remote: { code: 3 },
	profiles: [wordy],
});

export const sheets: readonly RigSheet[] = [mixed, led, kept, boxed];
