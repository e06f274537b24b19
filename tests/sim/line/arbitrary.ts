import fc from 'fast-check';
import type { DataSource, Wiring } from '../../../sim/line/index.ts';
import { cable, desk, leader, receiver, splitter, wiring } from './build.ts';

type Cable = Wiring['cables'][number];

/** `yes` once in `odds`, else `no`. */
const rarely = <T>(odds: number, yes: T, no: T) => fc.nat(odds - 1).map((n) => (n === 0 ? yes : no));
const wire = rarely<'sound' | 'open'>(8, 'open', 'sound');

/** What can be wrong with a cable, and its length: mostly nothing, mostly short. */
const faults = fc.record({
	kind: rarely<Cable['kind']>(10, 'microphone', 'data'),
	length: fc.oneof({ weight: 4, arbitrary: fc.integer({ min: 1, max: 20 }) }, fc.integer({ min: 1, max: 400 })),
	common: wire,
	minus: wire,
	plus: wire,
	swapped: rarely(8, true, false),
});

const receivers = (count: number) =>
	fc
		.array(
			fc.record({
				unitLoads: fc.constantFrom(1, 1 / 2, 1 / 8),
				earthed: fc.boolean(),
				dead: rarely(12, true, false),
				badSocket: rarely<'in' | 'out' | null>(12, 'in', null),
			}),
			{ minLength: count, maxLength: count },
		)
		.map((list) => list.map((change, i) => receiver(`w${i + 1}`, change)));

/** Any wiring at all over a few fixtures, two desk outputs and two splitters: loose ends, rings, splits, collisions. */
export const anyWiring: fc.Arbitrary<Wiring> = fc.integer({ min: 1, max: 7 }).chain((count) => {
	const fixtures = Array.from({ length: count }, (_, i) => `w${i + 1}`);
	const sockets = [
		...fixtures.flatMap((id) => [`${id}:in`, `${id}:out`]),
		...['desk:a', 'desk:b', 's:in', 's:1', 's:2', 't:in', 't:1', 't:2'],
	];
	const port = fc.constantFrom(...sockets);
	const talkers: DataSource[] = [desk('a', 1), desk('b', 2), ...fixtures.map((id) => leader(id))];
	return fc
		.record({
			receivers: receivers(count),
			talkers: fc.subarray(talkers, { maxLength: 3 }),
			cables: fc.array(fc.tuple(port, port, rarely(10, true, false), faults), { maxLength: 14 }),
			on: fc.tuple(rarely(5, false, true), rarely(5, false, true)),
			terminators: fc.subarray(sockets, { maxLength: 4 }),
		})
		.map(({ receivers, talkers, cables, on, terminators }) =>
			wiring({
				receivers,
				talkers,
				cables: cables.map(([from, to, loose, change], i) => cable(`c${i}`, from, loose ? null : to, change)),
				boxes: [splitter('s', 2, on[0]), splitter('t', 2, on[1])],
				terminators,
			}),
		);
});

/**
 * A tree: each fixture hangs by one cable from the desk or from an earlier fixture, one talker somewhere in it. Between any
 * two sockets there is one way only, so what happens on it can be told by hand.
 */
export const anyTree: fc.Arbitrary<Wiring> = fc.integer({ min: 1, max: 8 }).chain((count) =>
	fc
		.record({
			receivers: receivers(count),
			cables: fc.array(
				fc.record({
					onto: fc.nat(100),
					end: fc.constantFrom('in', 'out'),
					own: fc.constantFrom('in', 'out'),
					turned: fc.boolean(),
					change: faults,
				}),
				{ minLength: count, maxLength: count },
			),
			talker: fc.nat(count),
			terminators: fc.subarray(Array.from({ length: count }, (_, i) => `w${i + 1}:out`)),
		})
		.map(({ receivers, cables, talker, terminators }) =>
			wiring({
				receivers,
				talkers: [talker === 0 ? desk() : leader(`w${talker}`)],
				cables: cables.map(({ onto, end, own, turned, change }, i) => {
					const parent = onto % (i + 1);
					const there = parent === 0 ? 'desk:a' : `w${parent}:${end}`;
					const here = `w${i + 1}:${own}`;
					return turned ? cable(`c${i + 1}`, here, there, change) : cable(`c${i + 1}`, there, here, change);
				}),
				terminators,
			}),
		),
);
