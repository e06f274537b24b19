import fc from 'fast-check';
import { type RigSheet, readSheet } from '../../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../../sim/event/index.ts';

/** A washed wall of two, one cable, a desk. */
export const pair: RigSheet = readSheet({
	version: 1,
	name: 'Lantern Row Hall',
	fixtures: [1, 2].map((n) => ({
		id: `wash-${n}`,
		name: `Wash ${n}`,
		profile: 'tallow-6',
		place: { x: 2 * n, y: 0, throw: 3 },
		settings: { work: 'line', address: 1 + 9 * (n - 1), mode: 'middle' },
	})),
	desk: {
		name: 'Prep desk',
		outputs: [{ id: 'a', universe: 1 }],
		patch: [
			{ fixture: 'wash-1', universe: 1, address: 1, mode: 'middle' },
			{ fixture: 'wash-2', universe: 1, address: 10, mode: 'middle' },
		],
	},
	cables: [
		{ id: 'cable-1', kind: 'data', length: 5, from: 'desk:a', to: 'wash-1:in' },
		{ id: 'cable-2', kind: 'data', length: 5, from: 'wash-1:out', to: 'wash-2:in' },
	],
	terminators: ['wash-2:out'],
	remote: { code: 1 },
});

const fixture = fc.constantFrom('wash-1', 'wash-2');

/** Things a hand could do to that pair, one at a time. */
const deed: fc.Arbitrary<RigEvent> = fc.oneof(
	fc.record({ type: fc.constant('key.tap' as const), fixture, key: fc.constantFrom('back', 'down', 'up', 'set') }),
	fc.record({ type: fc.constant('power.switch' as const), fixture, on: fc.boolean() }),
	fc.record({
		type: fc.constant('desk.level' as const),
		universe: fc.constant(1),
		slot: fc.integer({ min: 1, max: 20 }),
		level: fc.integer({ min: 0, max: 255 }),
	}),
	fc.record({ type: fc.constant('hall.power' as const), on: fc.boolean() }),
	fc.record({ type: fc.constant('remote.press' as const), button: fc.constantFrom('dark', 'light', 'held:rose') }),
	fc.record({ type: fc.constant('clock.wait' as const), ms: fc.integer({ min: 1, max: 90_000 }) }),
);

export const deeds = (most = 30): fc.Arbitrary<RigEvent[]> => fc.array(deed, { maxLength: most });
