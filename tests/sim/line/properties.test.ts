import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LINE_LIMITS, LINE_RATES, type Reception, receptions, segments, type Wiring } from '../../../sim/line/index.ts';
import { runs } from '../../runs.ts';
import { anyTree, anyWiring } from './arbitrary.ts';
import { at, cable, chain, names, qualities, receiver, withCables } from './build.ts';
import { byHand } from './byhand.ts';

type Cable = Wiring['cables'][number];
const device = (port: string | null) => port?.split(':')[0];

/** The same cable with its ends called the other way round: each wire is named by the pin at the other end. */
const turned = (one: Cable): Cable => ({
	...one,
	from: one.to,
	to: one.from,
	...(one.swapped ? { minus: one.plus, plus: one.minus } : {}),
});

describe('whatever the wiring', () => {
	test('a reception keeps its word: rate, quality and causes agree, and the path can be walked', () => {
		fc.assert(
			fc.property(anyWiring, (wiring) => {
				const cables = new Map(wiring.cables.map((one) => [one.id, one]));
				for (const { quality, rate, causes, talker, path, fixture } of receptions(wiring).values()) {
					expect(rate).toBeGreaterThanOrEqual(0);
					expect(rate).toBeLessThanOrEqual(1);
					expect(quality === 'clean').toBe(causes.length === 0);
					expect(quality === 'clean').toBe(rate === 0);
					if (quality === 'nothing') expect(rate).toBe(1);
					if (quality === 'clean') expect(talker).not.toBeNull();
					for (const cause of causes) {
						if ('cables' in cause) expect(cause.cables).not.toEqual([]);
					}
					if (path.length === 0) continue;
					expect(path.at(-1)?.device).toBe(fixture);
					expect(path[0]?.cable).toBeNull();
					path.slice(1).forEach((step, i) => {
						const its = cables.get(step.cable ?? '');
						expect(new Set([device(its?.from ?? null), device(its?.to ?? null)])).toEqual(
							new Set([path[i]?.device, step.device]),
						);
					});
				}
			}),
			{ numRuns: runs(800, 20_000) },
		);
	});

	test('asked of one fixture alone, it is what it is among all', () => {
		fc.assert(
			fc.property(anyWiring, (wiring) => {
				for (const [fixture, reception] of receptions(wiring))
					expect(receptions(wiring, [fixture])).toEqual(new Map([[fixture, reception]]));
			}),
			{ numRuns: runs(400, 20_000) },
		);
	});

	test('a half wire comes by the way it names: take every other cable away, and it comes as before', () => {
		const half = (reception: Reception) => reception.causes.filter(({ cause }) => cause === 'one-wire-open');
		fc.assert(
			fc.property(anyWiring, (any) => {
				const wiring = { ...any, boxes: [] };
				for (const reception of receptions(wiring).values()) {
					if (half(reception).length === 0) continue;
					const way = new Set(reception.path.map((step) => step.cable));
					const alone = { ...wiring, cables: wiring.cables.filter(({ id }) => way.has(id)) };
					expect(half(at(alone, reception.fixture))).toEqual(half(reception));
				}
			}),
			{ numRuns: runs(500) },
		);
	});

	test('no list’s order matters, nor which end of a cable is called from', () => {
		fc.assert(
			fc.property(
				anyWiring,
				fc.infiniteStream(fc.nat()),
				fc.array(fc.boolean(), { minLength: 14 }),
				(wiring, dice, turn) => {
					const shuffled = <T>(list: readonly T[]): T[] =>
						list
							.map((one) => ({ one, key: dice.next().value }))
							.sort((a, b) => a.key - b.key)
							.map(({ one }) => one);
					const other: Wiring = {
						receivers: shuffled(wiring.receivers),
						talkers: shuffled(wiring.talkers),
						cables: shuffled(wiring.cables.map((one, i) => (turn[i] ? turned(one) : one))),
						boxes: shuffled(wiring.boxes),
						terminators: shuffled(wiring.terminators),
					};
					const before = receptions(wiring);
					const after = receptions(other);
					for (const [id, reception] of before) expect(after.get(id)).toEqual(reception);
					expect(segments(other)).toEqual(segments(wiring));
				},
			),
			{ numRuns: runs(500, 15_000) },
		);
	});

	test('a line of its own beside it disturbs nothing', () => {
		fc.assert(
			fc.property(anyWiring, (wiring) => {
				const more: Wiring = {
					...wiring,
					receivers: [...wiring.receivers, receiver('x1'), receiver('x2')],
					cables: [cable('a-new', 'x1:out', 'x2:in'), ...wiring.cables],
				};
				const after = receptions(more);
				for (const [id, reception] of receptions(wiring)) expect(after.get(id)).toEqual(reception);
			}),
			{ numRuns: runs(500) },
		);
	});

	test('what goes in is left as it was', () => {
		fc.assert(
			fc.property(anyWiring, (wiring) => {
				const before = JSON.stringify(wiring);
				receptions(wiring);
				segments(wiring);
				expect(JSON.stringify(wiring)).toBe(before);
			}),
			{ numRuns: runs(100) },
		);
	});
});

describe('on any tree with one talker, wires go as walking the way by hand tells', () => {
	test('what stops, what half comes, and where the common is missed', () => {
		fc.assert(
			fc.property(anyTree, (tree) => {
				for (const { fixture, dead } of tree.receivers) {
					const found = at(tree, fixture);
					const hand = byHand(tree, fixture);
					const causes = names(found);
					expect(found.quality === 'nothing').toBe(hand.stopped || dead);
					expect(found.path.flatMap((step) => step.cable ?? [])).toEqual(hand.cables);
					if (hand.stopped) continue;
					const half = found.causes.find((one) => one.cause === 'one-wire-open');
					expect(half?.cause === 'one-wire-open' ? half.wire : null).toBe(hand.lost);
					expect(causes.includes('common-open')).toBe(hand.commonOpen);
					if (hand.lost !== null && !dead) {
						const least = hand.looseTerminated ? LINE_RATES.oneWireTerminated : LINE_RATES.oneWire;
						expect(found.rate).toBeGreaterThanOrEqual(least);
						if (causes.length === 1) expect(found.rate).toBe(least);
					}
				}
			}),
			{ numRuns: runs(800, 20_000) },
		);
	});
});

/** A chain short enough that its open end never shows, and a place in it. */
const shortChain = fc
	.integer({ min: 2, max: 12 })
	.chain((count) => fc.record({ count: fc.constant(count), at: fc.integer({ min: 1, max: count }) }));

describe('on a chain', () => {
	test('a break, a swap or a bad socket at k touches exactly the receivers from k on', () => {
		const wrongs: Partial<Cable>[] = [
			{ minus: 'open' },
			{ plus: 'open' },
			{ minus: 'open', plus: 'open' },
			{ common: 'open' },
			{ swapped: true },
			{ to: null },
		];
		fc.assert(
			fc.property(shortChain, fc.constantFrom(...wrongs), ({ count, at: k }, wrong) => {
				const line = chain(count, { cables: () => ({ length: 3 }) });
				const hurt = 'minus' in wrong !== 'plus' in wrong || 'common' in wrong ? 'm' : 'n';
				const expected = 'c'.repeat(k - 1) + hurt.repeat(count - k + 1);
				expect(qualities(withCables(line, { [`c${k}`]: wrong }))).toBe(expected);
				const receivers = line.receivers.map((one, i) => (i === k - 1 ? { ...one, badSocket: 'in' as const } : one));
				expect(qualities({ ...line, receivers })).toBe('c'.repeat(k - 1) + 'n'.repeat(count - k + 1));
			}),
			{ numRuns: runs(300) },
		);
	});

	test('on a long one, those before a break have at most lost the terminator past it', () => {
		fc.assert(
			fc.property(fc.integer({ min: 2, max: 20 }), fc.nat(), (count, pick) => {
				const k = 1 + (pick % count);
				const line = withCables(chain(count, { cables: () => ({ length: 14 }) }), { [`c${k}`]: { minus: 'open' } });
				const near = [...receptions(line).values()].slice(0, k - 1);
				const pulled = receptions({
					...chain(Math.max(1, k - 1), { cables: () => ({ length: 14 }) }),
					terminators: [],
				});
				// but that a cable is plugged in where the line ends
				const unplugged = (value: unknown): unknown =>
					JSON.parse(JSON.stringify(value).replaceAll(`"plugged":["c${k}"]`, '"plugged":[]'));
				for (const one of near) expect(unplugged(one)).toEqual(unplugged(pulled.get(one.fixture)));
			}),
			{ numRuns: runs(200) },
		);
	});

	test('an even number of swaps before a receiver leaves it as it was, an odd number silences it', () => {
		fc.assert(
			fc.property(fc.array(fc.boolean(), { minLength: 1, maxLength: 12 }), (swaps) => {
				const line = chain(swaps.length, { cables: (k) => ({ length: 3, swapped: swaps[k - 1] === true }) });
				let odd = false;
				const expected = swaps.map((swap) => {
					odd = odd !== swap;
					return odd ? 'n' : 'c';
				});
				expect(qualities(line)).toBe(expected.join(''));
			}),
			{ numRuns: runs(300) },
		);
	});

	test('pulling the terminator of an intact line never betters it, and spoils it just where it runs on too long', () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 30 }), (count, length) => {
				const line = chain(count, { cables: () => ({ length }) });
				const open = receptions({ ...line, terminators: [] });
				const long = count * (length + LINE_LIMITS.metresPerLoad) > LINE_LIMITS.openMetres;
				for (const [id, one] of receptions(line)) {
					const pulled = open.get(id);
					if (long) expect(pulled?.rate).toBeGreaterThan(one.rate);
					else expect(pulled).toEqual(one);
				}
			}),
			{ numRuns: runs(300) },
		);
	});

	test('with one data wire open, a terminator past the break makes it worse for all past it', () => {
		fc.assert(
			fc.property(shortChain, fc.constantFrom('minus', 'plus'), fc.nat(), ({ count, at: k }, wire, pick) => {
				const end = `w${k + (pick % (count - k + 1))}:out`;
				const line = withCables(chain(count, { cables: () => ({ length: 3 }) }), { [`c${k}`]: { [wire]: 'open' } });
				const without = receptions({ ...line, terminators: [] });
				for (const [id, one] of receptions({ ...line, terminators: [end] })) {
					if (Number(id.slice(1)) >= k) expect(one.rate).toBeGreaterThan(without.get(id)?.rate ?? 1);
					else expect(one).toEqual(without.get(id));
				}
			}),
			{ numRuns: runs(300) },
		);
	});

	test('longer cables, more loads, and more terminators past two never lose fewer frames', () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 8 }), fc.nat(120), fc.nat(120), fc.boolean(), (count, a, b, ended) => {
				const rate = (length: number) =>
					at(
						{
							...chain(count, { cables: () => ({ length: 1 + length, kind: 'microphone' }) }),
							terminators: ended ? [`w${count}:out`] : [],
						},
						`w${count}`,
					).rate;
				expect(rate(Math.max(a, b))).toBeGreaterThanOrEqual(rate(Math.min(a, b)));
				const loaded = (loads: number) => at(chain(count, { receivers: () => ({ unitLoads: loads }) }), 'w1').rate;
				expect(loaded(Math.max(a, b))).toBeGreaterThanOrEqual(loaded(Math.min(a, b)));
			}),
			{ numRuns: runs(300) },
		);
	});
});
