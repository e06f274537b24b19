import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readArchive, readFixtureType } from '../../../shared/gdtf/index.ts';
import { type MvrLeft, readMvrArchive, readScene, writeMvr } from '../../../shared/mvr/index.ts';
import { emptyPlan, linesOf, numberedCables, type Plan, type PlanRow, withRows } from '../../../shared/plan/index.ts';
import { BUNDLED, type Profile } from '../../../shared/profile/index.ts';
import { mvrLeftText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { inventions } from '../invent/kit.ts';
import { nameOf, newRows } from '../plan/plans.ts';
import { read } from './made.ts';

/** Plans of a few fixtures, anywhere, on any start address, with cables that go any way. */
const anyPlan: fc.Arbitrary<Plan> = fc
	.record({
		rows: fc.array(
			fc.record({
				row: newRows,
				name: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 20 }),
				universe: fc.integer({ min: 1, max: 3 }),
				address: fc.integer({ min: 1, max: 512 }),
				x: fc.integer({ min: 0, max: 200_000 }),
				y: fc.integer({ min: 0, max: 40_000 }),
				after: fc.nat(20),
			}),
			{ minLength: 1, maxLength: 8 },
		),
		source: fc.constantFrom('desk' as const, 'leader' as const),
	})
	.map(({ rows, source }) => {
		const plan = withRows(
			{ ...emptyPlan('Test'), source },
			rows.map(({ row }) => row),
			nameOf,
		);
		return {
			...plan,
			rows: plan.rows.map((row, i): PlanRow => {
				const { name, universe, address, x, y, after } = rows[i] as (typeof rows)[number];
				const fed = plan.rows[after]?.id;
				const place = { ...row.place, x: x / 1000, y: y / 1000, overhead: y > 2000 };
				const said = name.replaceAll(/[\p{Cc}\uFFFE\uFFFF]/gu, ' ').trim() || 'one';
				return { ...row, name: said, universe, address, place, ...(fed === undefined ? {} : { after: fed }) };
			}),
		};
	});

/** Universes whose line is one run: where it is split, the file does not say which part comes first. */
const whole = (plan: Plan): number[] =>
	linesOf(plan).flatMap(({ universe, runs: all }) => (all.length === 1 ? universe : []));

/** Cables of these universes by the places of rows in the list: ids are given afresh. */
const cablesOf = (plan: Plan, universes: readonly number[]): string[] => {
	const at = (id: string): number => plan.rows.findIndex((row) => row.id === id);
	return numberedCables(plan).flatMap(({ universe, from, to }) =>
		universes.includes(universe) && from.is === 'row' && to.is === 'row' ? `${at(from.row)}>${at(to.row)}` : [],
	);
};

/** What of a plan a file keeps. */
const kept = ({ rows, source }: Plan): object[] =>
	rows.map(({ name, profile, mode, universe, address, place: { x, y, overhead } }) => ({
		...{ name, profile, mode, x, y, overhead },
		...(source === 'desk' ? { universe, address } : {}),
	}));

const said = (left: readonly MvrLeft[]): void => {
	for (const each of left) expect(mvrLeftText(each)).toMatch(/^[A-Z“].*\.$/s);
};

describe('a written file', () => {
	it('comes back as it was, but for what is told', () => {
		fc.assert(
			fc.property(anyPlan, (plan) => {
				const written = writeMvr(plan);
				said(written.left);
				const back = read(written.bytes);
				expect(kept({ ...back.plan, source: plan.source })).toEqual(kept(plan));
				const single = whole(plan);
				expect(cablesOf({ ...back.plan, source: plan.source }, single)).toEqual(cablesOf(plan, single));
				const codes = new Set(back.left.map(({ code }) => code));
				for (const fine of ['part-unused', 'overhead', 'not-patched'] as const) codes.delete(fine);
				expect([...codes]).toEqual([]);
			}),
			{ numRuns: runs(40) },
		);
	});

	it('comes back with fixtures nobody has seen, which its files bring', () => {
		fc.assert(
			fc.property(fc.nat(10_000), (seed) => {
				const [profile] = inventions(1, seed) as [Profile];
				const plan = withRows(
					{ ...emptyPlan('Test'), profiles: [profile] },
					[{ profile: profile.id, address: 9 }],
					nameOf,
				);
				const { bytes } = writeMvr(plan);
				expect(kept(read(bytes, undefined, [profile]).plan)).toEqual(kept(plan));
				const alone = read(bytes);
				expect(alone.plan.rows).toMatchObject([{ universe: 1, address: 9 }]);
				expect(alone.left.map(({ code }) => code)).toContain('stand-in');
			}),
			{ numRuns: runs(20) },
		);
	});

	it('is the same byte for byte, and holds a fixture file of each kind', () => {
		const rows = BUNDLED.map(({ id }) => ({ profile: id }));
		const plan = withRows(emptyPlan('Test'), [...rows, ...rows], nameOf);
		const { bytes, scene } = writeMvr(plan);
		expect(writeMvr(structuredClone(plan)).bytes).toEqual(bytes);
		const opened = readMvrArchive(bytes);
		expect(opened.scene).toBe(scene);
		expect(opened.names.toSorted()).toEqual(BUNDLED.map(({ id }) => `${id}.gdtf`).toSorted());
		for (const name of opened.names)
			expect(() => readFixtureType(readArchive(opened.file(name) ?? new Uint8Array()).description)).not.toThrow();
		expect(readScene(scene).fixtures).toHaveLength(rows.length * 2);
	});

	it('tells of all that it has no place for', () => {
		const plan = withRows(emptyPlan('Test'), [{ profile: 'tallow-6', address: 1, circuit: 'A' }], nameOf);
		const [row] = plan.rows as [PlanRow];
		const hung: PlanRow = { ...row, tilt: 10, place: { ...row.place, overhead: true } };
		const full: Plan = {
			...plan,
			supply: { ...plan.supply, breaker: 16 },
			kilograms: { 'tallow-6': 5 },
			rows: [hung],
		};
		const { left } = writeMvr(full);
		said(left);
		const parts = left.flatMap((each) => (each.code === 'not-written' ? each.facts.what : []));
		expect(parts).toEqual([
			'panels',
			'circuits',
			'labels',
			'throws',
			'tilts',
			'supply',
			'weights',
			'rules',
			'cables',
			'desk',
		]);
		expect(left.map(({ code }) => code)).toContain('place-changed');
		const { left: behind, scene } = writeMvr({ ...plan, source: 'leader' });
		said(behind);
		expect(behind.flatMap(({ facts }) => ('what' in facts ? facts.what : []))).toContain('leader');
		expect(scene).not.toContain('Address');
	});
});
