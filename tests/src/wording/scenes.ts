import { type RigSheet, readSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { openRig, type ReasonId, type Rig } from '../../../sim/rig/index.ts';
import { led, mixed } from '../../sim/rig/sheets.ts';

/** A rig in which a fixture's trail holds a reason. */
export interface Scene {
	readonly rig: Rig;
	readonly fixture: string;
}

/** Events, and waits as milliseconds. */
type Step = RigEvent | number;

const scene = (sheet: RigSheet, fixture: string, ...steps: Step[]): Scene => {
	const rig = openRig(sheet);
	for (const step of steps) {
		if (typeof step === 'number') rig.wait(step);
		else rig.send(step);
	}
	return { rig, fixture };
};

const set = (fixture: string, change: object): RigEvent => ({ type: 'settings.become', fixture, change }) as RigEvent;
const harm = (fixture: string, change: object): RigEvent => ({ type: 'condition.become', fixture, change }) as RigEvent;
const cable = (id: string, change: object): RigEvent => ({ type: 'cable.become', cable: id, change }) as RigEvent;
const level = (slot: number, value: number): RigEvent => ({ type: 'desk.level', universe: 1, slot, level: value });
const unplug = (id: string, end: 'from' | 'to'): RigEvent => ({ type: 'cable.unplug', cable: id, end });
const output = (on: boolean): RigEvent => ({ type: 'desk.output', output: 'a', on });
const lit = (fixture: string, on: boolean): RigEvent => ({ type: 'power.switch', fixture, on });
const lost = [output(false), 2000] as const;

/** The mixed rig with its sheet changed. */
const other = (change: object): RigSheet => readSheet({ ...mixed, ...change });

/** The mixed rig fed through a splitter. */
const split = (on: boolean): RigSheet =>
	other({
		splitters: [{ id: 'fan', name: 'splitter', outputs: 4, on }],
		cables: mixed.cables
			.map((each) => (each.id === 'c1' ? { ...each, from: 'fan:1' } : each))
			.concat({ ...(mixed.cables[0] as (typeof mixed.cables)[number]), id: 'c0', from: 'desk:a', to: 'fan:in' }),
	});

/** A desk and a long row of the same battery wash, one after the other, terminated. */
const row = (count: number): RigSheet => {
	const id = (n: number) => `w-${n + 1}`;
	return readSheet({
		version: 1,
		name: 'Lantern Row Hall, a long row',
		fixtures: Array.from({ length: count }, (_, n) => ({
			id: id(n),
			name: `wash ${n + 1}`,
			profile: 'tallow-6',
			place: { x: n, y: 0, throw: 3 },
			settings: { work: 'line', address: 1 },
		})),
		desk: { name: 'desk', outputs: [{ id: 'a', universe: 1 }], patch: [] },
		cables: Array.from({ length: count }, (_, n) => ({
			id: `c${n + 1}`,
			kind: 'data',
			length: 2,
			from: n === 0 ? 'desk:a' : `${id(n - 1)}:out`,
			to: `${id(n)}:in`,
		})),
		terminators: [`${id(count - 1)}:out`],
	});
};

/** One rig for every reason there is. A reason with no rig fails the types here. */
export const scenes: Readonly<Record<ReasonId, () => Scene>> = {
	'power.off': () => scene(mixed, 'wash-1', lit('wash-1', false)),
	'power.charging': () =>
		scene(mixed, 'wash-1', { type: 'mains.plug', fixture: 'wash-1', into: 'wall' }, lit('wash-1', false)),
	'power.no-mains': () => scene(mixed, 'old-1', { type: 'mains.plug', fixture: 'bar-1', into: 'none' }),
	'power.hall-dark': () => scene(mixed, 'bar-1', { type: 'hall.power', on: false }),
	'power.flat': () => scene(mixed, 'wash-1', 5 * 24 * 3_600_000),
	'power.battery': () => scene(mixed, 'wash-1', 1000),
	'power.mains': () => scene(mixed, 'old-1'),
	'drive.line': () => scene(mixed, 'wash-1'),
	'drive.follow': () => scene(led, 'f-1'),
	'drive.held': () => scene(led, 'lead', set('lead', { strobe: 3 })),
	'drive.programme': () => scene(led, 'lead', set('lead', { work: 'programme', programme: 'ear-step', level: 60 })),
	'drive.leading': () => scene(led, 'lead'),
	'drive.leading-not': () => scene(mixed, 'wash-1', set('wash-1', { lead: 'on' })),
	'drive.remote-shut': () => scene(mixed, 'wash-1', set('wash-1', { sensor: 'shut' })),
	'drive.sensor-dead': () =>
		scene(mixed, 'wash-1', { type: 'condition.become', fixture: 'wash-1', change: { sensorDead: true } }),
	'drive.remote-flat': () => scene(mixed, 'wash-1', { type: 'remote.become', code: 1, battery: false }),
	'drive.remote-code': () => scene(mixed, 'wash-1', { type: 'remote.become', code: 2, battery: true }),
	'drive.remote-hidden': () => scene(mixed, 'wash-1', { type: 'sight.block', fixture: 'wash-1', hidden: true }),
	'source.none': () => scene(mixed, 'wash-1', unplug('c1', 'from'), 2000),
	'source.desk-off': () => scene(mixed, 'wash-1', { type: 'hall.power', on: false }, 2000),
	'source.output-off': () => scene(mixed, 'wash-1', ...lost),
	'source.leader-off': () => scene(led, 'f-1', set('lead', { lead: 'off' }), 2000),
	'source.desk': () => scene(mixed, 'bar-1'),
	'source.leader': () => scene(led, 'f-2'),
	'source.start-code': () => scene(mixed, 'bar-1', { type: 'desk.start-code', output: 'a', code: 0x17 }),
	'source.master': () => scene(mixed, 'bar-1', { type: 'desk.master', level: 128 }),
	'line.no-cable': () => scene(mixed, 'wash-1', unplug('c1', 'to'), unplug('c2', 'from'), 2000),
	'line.cable-loose': () => scene(mixed, 'old-1', unplug('c2', 'to'), 2000),
	'line.splitter-off': () => scene(split(false), 'bar-1'),
	'line.bad-socket': () => scene(mixed, 'bar-1', harm('wash-1', { badSocket: 'out' })),
	'line.pair-open': () => scene(mixed, 'old-1', cable('c2', { minus: 'open', plus: 'open' })),
	'line.one-wire-open': () => scene(mixed, 'old-1', cable('c3', { plus: 'open' })),
	'line.common-open': () => scene(led, 'f-3', cable('c2', { common: 'open' })),
	'line.swapped': () => scene(mixed, 'wash-1', cable('c1', { swapped: true })),
	'line.collision': () => scene(mixed, 'bar-1', set('wash-1', { work: 'held', lead: 'on' })),
	'line.no-terminator': () =>
		scene(mixed, 'old-1', cable('c3', { length: 120 }), { type: 'terminator.remove', port: 'old-1:out' }),
	'line.too-long': () => scene(mixed, 'old-1', cable('c2', { length: 400.04 })),
	'line.too-many-loads': () => scene(row(34), 'w-5', level(1, 255), level(9, 255)),
	'line.microphone-cable': () => scene(mixed, 'wash-1', cable('c1', { kind: 'microphone', length: 60 })),
	'line.common-open-yet': () => scene(mixed, 'old-1', cable('c3', { common: 'open' })),
	'line.microphone-cable-yet': () => scene(mixed, 'wash-1', cable('c1', { kind: 'microphone', length: 8 })),
	'line.no-terminator-yet': () => scene(mixed, 'old-1', { type: 'terminator.remove', port: 'old-1:out' }),
	'line.split': () =>
		scene(
			other({ cables: mixed.cables.map((each) => (each.id === 'c3' ? { ...each, from: 'bar-1:in' } : each)) }),
			'old-1',
		),
	'line.ring': () =>
		scene(
			led,
			'f-2',
			{ type: 'terminator.remove', port: 'f-3:out' },
			{
				type: 'cable.lay',
				cable: { ...(led.cables[0] as (typeof led.cables)[number]), id: 'c4', from: 'f-3:out', to: 'lead:in' },
			},
		),
	'line.extra-terminators': () =>
		scene(
			other({
				fixtures: mixed.fixtures.filter(({ id }) => id === 'wash-1'),
				cables: mixed.cables.filter(({ id }) => id === 'c1'),
				terminators: ['wash-1:out', 'wash-1:in', 'desk:a'],
				desk: { ...mixed.desk, patch: [] },
			}),
			'wash-1',
		),
	'line.receiver-dead': () => scene(mixed, 'wash-1', harm('wash-1', { receiverDead: true })),
	'line.clean': () => scene(mixed, 'old-1'),
	'signal.never': () => scene(mixed, 'wash-1', output(false), lit('wash-1', false), lit('wash-1', true)),
	'signal.overdue': () => scene(mixed, 'wash-1', output(false), 500),
	'signal.holding': () => scene(mixed, 'wash-1', ...lost),
	'signal.dark': () => scene(mixed, 'bar-1', ...lost),
	'signal.running': () => scene(mixed, 'wash-1', set('wash-1', { loss: 'programme' }), ...lost),
	'address.reads': () => scene(mixed, 'bar-1'),
	'address.follows': () => scene(led, 'f-3'),
	'address.past-end': () => scene(mixed, 'wash-1', set('wash-1', { address: 512 })),
	'address.universe-differs': () => scene(mixed, 'bar-1', { type: 'desk.universe', output: 'a', universe: 2 }),
	'address.patch-differs': () => scene(mixed, 'bar-1', set('bar-1', { address: 12 })),
	'address.mode-differs': () => scene(led, 'f-2', set('f-2', { mode: 'long' })),
	'slots.intensity': () => scene(mixed, 'wash-1', level(1, 0)),
	'slots.colours': () => scene(mixed, 'bar-1', level(12, 10), level(13, 20)),
	'slots.band': () => scene(mixed, 'wash-1'),
	'slots.programme': () => scene(mixed, 'wash-1', level(2, 100)),
	'slots.held': () => scene(mixed, 'bar-1', level(18, 230)),
	'slots.dark': () => scene(mixed, 'bar-1', level(11, 0)),
	'slots.strobe': () => scene(mixed, 'bar-1', level(11, 200)),
	'slots.ignored': () => scene(mixed, 'wash-1', level(2, 100)),
	'level.nothing': () => scene(led, 'lead', set('lead', { level: 0 })),
	'level.silence': () => scene(led, 'lead', set('lead', { work: 'programme', programme: 'ear-swell' })),
	'level.limit': () => scene(mixed, 'wash-1', set('wash-1', { limit: 40 })),
	'level.curve': () => scene(mixed, 'bar-1'),
	'lamp.dead-emitter': () => scene(led, 'lead', harm('lead', { deadEmitters: ['red', 'blue', 'amber'] })),
	'lamp.folded-back': () => scene(mixed, 'wash-1', harm('wash-1', { foldBack: 0.4 })),
	'lamp.covered': () => scene(mixed, 'wash-1', harm('wash-1', { covered: true })),
	'light.dark': () => scene(mixed, 'wash-1', set('wash-1', { curve: 'square' }), level(1, 1), level(8, 1)),
	'light.shows': () => scene(mixed, 'wash-1'),
	'light.ultraviolet': () => scene(led, 'lead', set('lead', { held: 'ultraviolet' })),
	'light.flashes': () => scene(mixed, 'bar-1', level(11, 200)),
	'light.flickers': () => scene(led, 'f-3', cable('c2', { common: 'open' }), 1000),
};
