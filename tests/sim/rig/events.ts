import fc from 'fast-check';
import { portsOf, type RigSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { between } from '../../between.ts';
import { TREE_KEYS } from '../keys.ts';

/** Anything that might be done to a rig of this sheet, sensible or not: some of it hands could not do. */
export function anyEvent(sheet: RigSheet): fc.Arbitrary<RigEvent> {
	const fixture = fc.constantFrom(...sheet.fixtures.map(({ id }) => id));
	const cable = fc.constantFrom(...sheet.cables.map(({ id }) => id), 'spare-1', 'spare-2');
	const port = fc.constantFrom(...portsOf(sheet));
	const end = fc.constantFrom('from' as const, 'to' as const);
	const key = fc.constantFrom(...TREE_KEYS);
	const level = fc.integer({ min: 0, max: 255 });
	const wire = fc.constantFrom('sound' as const, 'open' as const);
	const share = between(0, 1);
	const output = fc.constantFrom('a', 'b');
	const make = <T extends RigEvent['type']>(type: T, rest: object): fc.Arbitrary<RigEvent> =>
		fc.record({ type: fc.constant(type), ...rest } as Record<
			string,
			fc.Arbitrary<unknown>
		>) as unknown as fc.Arbitrary<RigEvent>;
	return fc.oneof(
		{ weight: 8, arbitrary: make('key.tap', { fixture, key }) },
		{ weight: 3, arbitrary: make('key.down', { fixture, key }) },
		{ weight: 3, arbitrary: make('key.up', { fixture, key }) },
		{
			weight: 6,
			arbitrary: make('clock.wait', { ms: fc.constantFrom(10, 120, 500, 1000, 1249, 1250, 5000, 61_000, 3_600_000) }),
		},
		{
			weight: 4,
			arbitrary: make('switch.flip', { fixture, switch: fc.integer({ min: 1, max: 10 }), up: fc.boolean() }),
		},
		make('slide.move', {
			fixture,
			slide: fc.constantFrom('mode', 'loss', 'curve', 'none'),
			to: fc.integer({ min: 0, max: 3 }),
		}),
		make('power.switch', { fixture, on: fc.boolean() }),
		make('mains.plug', { fixture, into: fc.constantFrom('wall', 'none', ...sheet.fixtures.map(({ id }) => id)) }),
		make('hall.power', { on: fc.boolean() }),
		make('cable.lay', {
			cable: fc.record({
				id: cable,
				kind: fc.constantFrom('data', 'microphone'),
				length: fc.integer({ min: 1, max: 400 }),
				from: fc.option(port),
				to: fc.option(port),
				common: wire,
				minus: wire,
				plus: wire,
				swapped: fc.boolean(),
			}),
		}),
		make('cable.lift', { cable }),
		{ weight: 3, arbitrary: make('cable.plug', { cable, end, port }) },
		{ weight: 2, arbitrary: make('cable.unplug', { cable, end }) },
		{
			weight: 2,
			arbitrary: make('cable.become', {
				cable,
				change: fc.oneof(
					fc.record({ minus: wire }),
					fc.record({ plus: wire }),
					fc.record({ common: wire }),
					fc.record({ swapped: fc.boolean() }),
					fc.record({ kind: fc.constantFrom('data', 'microphone'), length: fc.integer({ min: 1, max: 900 }) }),
				),
			}),
		},
		make('terminator.fit', { port }),
		make('terminator.remove', { port }),
		{
			weight: 4,
			arbitrary: make('desk.level', { universe: fc.constantFrom(1, 2), slot: fc.integer({ min: 1, max: 30 }), level }),
		},
		make('desk.master', { level }),
		{ weight: 2, arbitrary: make('desk.output', { output, on: fc.boolean() }) },
		make('desk.universe', { output, universe: fc.constantFrom(1, 2) }),
		make('desk.start-code', { output, code: fc.constantFrom(0, 0x17, 0xcc) }),
		make('desk.hold', { by: fc.constantFrom('blind', 'frozen', null, null) }),
		{
			weight: 2,
			arbitrary: make('remote.press', {
				button: fc.constantFrom(
					'light',
					'dark',
					'brighter',
					'faster',
					'held:amber',
					'held:ultraviolet',
					'programme:flashes',
					'programme:ear-flash',
					'held:nowhere',
				),
			}),
		},
		make('remote.become', { code: fc.integer({ min: 1, max: 4 }), battery: fc.boolean() }),
		make('sight.block', { fixture, hidden: fc.boolean() }),
		make('sound.play', { level: share }),
		make('settings.become', {
			fixture,
			change: fc.constantFrom(
				{ work: 'line' },
				{ work: 'follow' },
				{ lead: 'on' },
				{ lock: 'on' },
				{ work: 'programme', lead: 'on' },
				{ limit: 40, curve: 'square' },
				{ address: 505 },
				{ loss: 'dark' },
				{ loss: 'programme' },
				{ level: 0 },
			),
		}),
		make('condition.become', {
			fixture,
			change: fc.oneof(
				fc.constantFrom(
					{ covered: true },
					{ covered: false },
					{ deadEmitters: ['red', 'amber'] },
					{ deadEmitters: [] },
					{ receiverDead: true },
					{ receiverDead: false },
					{ badSocket: 'in' },
					{ badSocket: null },
					{ extraLoads: 30 },
					{ extraLoads: 0 },
					{ chargerDead: true },
					{ displayDead: true },
				),
				fc.record({ foldBack: share }),
				fc.record({ batteryHealth: share }),
			),
		}),
	);
}
