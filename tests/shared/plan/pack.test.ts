import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { overlaps } from '../../../shared/dmx/index.ts';
import { PACK_ORDERS, type PackItem, type PackRules, packAddresses } from '../../../shared/plan/index.ts';
import { runs } from '../../runs.ts';

const rules: fc.Arbitrary<PackRules> = fc.record({
	universe: fc.integer({ min: 1, max: 3 }),
	gap: fc.constantFrom(0, 1, 5),
	step: fc.constantFrom(1, 10, 50),
	order: fc.constantFrom(...PACK_ORDERS),
});

/** Few and large, so that how they are laid decides how many universes they take; some stand already. */
const items: fc.Arbitrary<readonly PackItem[]> = fc
	.array(
		fc.record({
			footprint: fc.oneof(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 60, max: 300 })),
			at: fc.option(fc.record({ universe: fc.integer({ min: 1, max: 3 }), slot: fc.integer({ min: 1, max: 512 }) }), {
				freq: 4,
			}),
			type: fc.constantFrom('a', 'b'),
			x: fc.integer({ min: 0, max: 9 }),
		}),
		{ minLength: 1, maxLength: 6 },
	)
	.map((all) => all.map((item, i) => ({ ...item, id: `f${i}` })));

/** The fewest universes by trying everything: each order of the items, each put at the first slot after the one before that is free, or at any later one that is worth it. */
function exact(all: readonly PackItem[], { universe, gap, step, order }: PackRules): number {
	const kept = all.flatMap(({ at, footprint }) => (at ? [{ ...at, footprint }] : []));
	const isFree = (u: number, slot: number, footprint: number): boolean =>
		slot + footprint - 1 <= 512 &&
		kept.every(
			(it) => it.universe !== u || slot + footprint - 1 + gap < it.slot || slot > it.slot + it.footprint - 1 + gap,
		);
	const first = (u: number, from: number, footprint: number): { u: number; slot: number } => {
		for (let at = u; ; at++)
			for (let slot = at === u ? from : 1; slot <= 512; slot++)
				if ((slot - 1) % step === 0 && isFree(at, slot, footprint)) return { u: at, slot };
	};
	const inTurn = (list: readonly PackItem[]): number => {
		let spot = { u: universe, slot: 1 };
		let most = 0;
		for (const { footprint } of list) {
			const at = first(spot.u, spot.slot, footprint);
			most = Math.max(most, at.u - universe + 1);
			spot = { u: at.u, slot: at.slot + footprint + gap };
		}
		return most;
	};
	const free = all.filter(({ at }) => at === null);
	if (order === 'list') return inTurn(free);
	if (order === 'place') return inTurn(free.toSorted((a, b) => a.x - b.x));
	if (order === 'type') {
		const types = [...new Set(free.map(({ type }) => type))];
		return inTurn(types.flatMap((type) => free.filter((item) => item.type === type)));
	}
	const everyOrder = (left: readonly PackItem[]): PackItem[][] =>
		left.length === 0
			? [[]]
			: left.flatMap((item) => everyOrder(left.filter((it) => it !== item)).map((rest) => [item, ...rest]));
	return Math.min(...everyOrder(free).map(inTurn));
}

const placed = (all: readonly PackItem[], rule: PackRules) => {
	const { spots } = packAddresses(all, rule);
	return all.flatMap(({ id, footprint, at }) => {
		const spot = at ?? spots.get(id);
		return spot ? [{ id, universe: spot.universe, start: spot.slot, footprint, isKept: at !== null }] : [];
	});
};

describe('start addresses packed', () => {
	test('no two share a slot, none runs past 512, gaps and round numbers hold, all are placed', () => {
		fc.assert(
			fc.property(items, rules, (all, rule) => {
				const rows = placed(all, rule);
				expect(rows).toHaveLength(all.length);
				const kept = new Set(rows.filter(({ isKept }) => isKept).map(({ id }) => id));
				const wide = rows.map((row) => ({ ...row, footprint: row.footprint + rule.gap }));
				for (const { first, second } of overlaps(wide)) expect(kept.has(first) && kept.has(second)).toBe(true);
				for (const { start, footprint, universe, isKept } of rows) {
					if (isKept) continue;
					expect(start + footprint - 1).toBeLessThanOrEqual(512);
					expect((start - 1) % rule.step).toBe(0);
					expect(universe).toBeGreaterThanOrEqual(rule.universe);
				}
			}),
			{ numRuns: runs(300) },
		);
	});

	test('never takes more universes than the exact least, by an exact packer of its own', () => {
		fc.assert(
			fc.property(items, rules, (all, rule) => {
				const { universes, isFewest } = packAddresses(all, rule);
				expect(isFewest).toBe(true);
				expect(universes).toBe(exact(all, rule));
			}),
			{ numRuns: runs(150) },
		);
	});

	test('rises in the order that was picked', () => {
		const all: PackItem[] = [3, 1, 2].map((x, i) => ({
			id: `f${i}`,
			footprint: 10,
			at: null,
			type: i === 1 ? 'b' : 'a',
			x,
		}));
		const startsBy = (order: PackRules['order']) =>
			[...packAddresses(all, { universe: 1, gap: 0, step: 1, order }).spots].map(([id, { slot }]) => [id, slot]);
		expect(startsBy('list')).toEqual([
			['f0', 1],
			['f1', 11],
			['f2', 21],
		]);
		expect(startsBy('place')).toEqual([
			['f1', 1],
			['f2', 11],
			['f0', 21],
		]);
		expect(startsBy('type')).toEqual([
			['f0', 1],
			['f2', 11],
			['f1', 21],
		]);
	});

	// the largest first, each into the first stretch that holds it, takes three
	test('one universe fewer is looked for where the first way takes more', () => {
		const all = [129, 168, 126, 185, 92, 273].map(
			(footprint, i): PackItem => ({ id: `f${i}`, footprint, at: null, type: 'a', x: 0 }),
		);
		const { universes, isFewest } = packAddresses(all, { universe: 1, gap: 0, step: 1, order: 'fewest' });
		expect([universes, isFewest]).toEqual([2, true]);
	});

	test('what gives back the most slots stands last, so that it ends within 512', () => {
		const all = [301, 100, 100].map(
			(footprint, i): PackItem => ({ id: `f${i}`, footprint, at: null, type: 'a', x: 0 }),
		);
		const { spots, universes } = packAddresses(all, { universe: 1, gap: 0, step: 100, order: 'fewest' });
		expect(universes).toBe(1);
		expect(spots.get('f0')).toEqual({ universe: 1, slot: 201 });
	});

	test('a footprint past 512 is not placed, and named', () => {
		const item: PackItem = { id: 'long', footprint: 513, at: null, type: 'a', x: 0 };
		for (const order of PACK_ORDERS)
			expect(packAddresses([item], { universe: 1, gap: 0, step: 1, order }).unplaced).toEqual(['long']);
	});

	test('five hundred are packed', () => {
		const many = Array.from(
			{ length: 500 },
			(_, i): PackItem => ({
				id: `f${i}`,
				footprint: 1 + ((i * 37) % 40),
				at: null,
				type: 'a',
				x: i,
			}),
		);
		const slots = many.reduce((sum, { footprint }) => sum + footprint, 0);
		const { universes } = packAddresses(many, { universe: 1, gap: 0, step: 1, order: 'fewest' });
		expect(universes).toBe(Math.ceil(slots / 512));
	});
});
