import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	boardOf,
	circuitKey,
	emptyPlan,
	goesWith,
	LONGEST_NOTE,
	litCircuits,
	mergedTicks,
	NO_TICKS,
	newIn,
	nextOf,
	type Plan,
	planSays,
	type RigTicks,
	type RowStep,
	readTicks,
	stepsOf,
	TICK_STEPS,
	type TickStep,
	walkOf,
	warningsOf,
	withNote,
	withRows,
	withTick,
} from '../../../shared/plan/index.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../thrown.ts';
import { nameOf, plans } from './plans.ts';

const rows = [
	{ profile: 'tallow-6', x: 6 },
	{ profile: 'picket-8', x: 2, overhead: true, circuit: 'A' },
	{ profile: 'cobble', x: 4, overhead: true },
];
const plan: Plan = withRows(emptyPlan('Barn'), rows, nameOf);
const says = planSays(plan);
const [wash, bar, old] = plan.rows.map(({ id }) => id) as [string, string, string];

/** A phone's entry at some moment: ids by count, since chance is not for tests. */
let count = 0;
const by = (who: string, at = 0) => ({ id: (++count).toString(16).padStart(8, '0'), by: who, at });
const change = (all: RigTicks, row: string, step: TickStep, who: string, on = true, of = says): RigTicks =>
	withTick(all, of, { row, step, on }, by(who));
const standing = (all: RigTicks, row: string, step: TickStep, of = says) => boardOf(of, all).state(row, step).standing;

describe('what is ticked off at a fixture', () => {
	test('goes in a safe order: bond right after the clamp, the supply off before hands go to the mains, lit last', () => {
		expect(plan.rows.map((row) => stepsOf(plan, row))).toEqual([
			['charged', 'mode', 'address', 'placed', 'linked', 'lit'],
			['mode', 'address', 'off', 'hung', 'bond', 'linked', 'lit'],
			['mode', 'address', 'off', 'hung', 'bond', 'linked', 'lit'],
		]);
		fc.assert(
			fc.property(plans, (drawn) => {
				for (const row of drawn.rows) {
					const steps = stepsOf(drawn, row);
					const at = (step: TickStep): number => steps.indexOf(step);
					expect(at('bond')).toBe(row.place.overhead ? at('hung') + 1 : -1);
					expect(steps.includes('hung')).toBe(!steps.includes('placed'));
					if (steps.includes('off')) expect(at('off')).toBeLessThan(Math.max(at('hung'), at('placed')));
					expect(steps.includes('off')).toBe(!steps.includes('charged'));
					expect(steps.at(-1)).toBe('lit');
				}
			}),
			{ numRuns: runs(100) },
		);
	});

	test('a crew goes round by round along the room: all are linked before the first is lit', () => {
		const walk = walkOf(plan);
		expect(walk.slice(0, 4)).toEqual([
			{ row: wash, step: 'charged' },
			{ row: bar, step: 'mode' },
			{ row: bar, step: 'address' },
			{ row: old, step: 'mode' },
		]);
		expect(walk.slice(-3).map(({ step, row }) => `${step} ${row}`)).toEqual([bar, old, wash].map((id) => `lit ${id}`));
		expect(walk).toHaveLength(20);
	});

	test('the plan never asks for lit before the second fixing of anything overhead', () => {
		fc.assert(
			fc.property(plans, (drawn) => {
				const walk = walkOf(drawn).map(({ step }) => step);
				const lit = walk.indexOf('lit');
				for (const step of ['bond', 'linked', 'off'] as const) expect(walk.lastIndexOf(step)).toBeLessThan(lit);
			}),
			{ numRuns: runs(100) },
		);
	});
});

describe('a tick', () => {
	test('is done until it is unticked', () => {
		const ticked = change(NO_TICKS, wash, 'mode', 'AB');
		expect(standing(ticked, wash, 'mode')).toBe('done');
		expect(standing(change(ticked, wash, 'mode', 'AB', false), wash, 'mode')).toBe('open');
	});

	test('is of the plan as it stood: a new start address, place or neighbour asks for its step again and no other', () => {
		let all = NO_TICKS;
		for (const row of plan.rows) for (const step of stepsOf(plan, row)) all = change(all, row.id, step, 'AB');
		const stale = (to: Plan): string[] =>
			to.rows.flatMap((row) =>
				stepsOf(to, row).flatMap((step) =>
					standing(all, row.id, step, planSays(to)) === 'done' ? [] : [`${row.id} ${step}`],
				),
			);
		const withRow = (id: string, part: object): Plan => ({
			...plan,
			rows: plan.rows.map((row) => (row.id === id ? { ...row, ...part } : row)),
		});
		expect(stale(plan)).toEqual([]);
		expect(stale(withRow(wash, { address: 90 }))).toEqual([`${wash} address`, `${wash} lit`]);
		expect(stale(withRow(wash, { name: 'Door' }))).toEqual([]);
		const gone = { ...plan, rows: plan.rows.filter(({ id }) => id !== old) };
		expect(stale(gone)).toEqual([`${wash} linked`, `${wash} lit`, `${bar} off`, `${bar} linked`, `${bar} lit`]);
		const swapped = stale(withRow(bar, { profile: 'tallow-6', mode: 'middle', circuit: '' }));
		for (const step of ['charged', 'mode', 'address', 'hung', 'bond', 'linked', 'lit'])
			expect(swapped).toContain(`${bar} ${step}`);
	});

	test('that two people gave differently, neither knowing, is shown and not done, whatever their clocks say', () => {
		const both = change(NO_TICKS, wash, 'mode', 'AB');
		const [here, there] = [change(both, wash, 'mode', 'AB', false), change(both, wash, 'mode', 'CD')];
		const merged = mergedTicks(here, there);
		const { standing: stands, ticks } = boardOf(says, merged).state(wash, 'mode');
		expect([stands, ticks.map((tick) => [tick.by, tick.on])]).toEqual([
			'split',
			[
				['AB', false],
				['CD', true],
			],
		]);
		// whoever looks and ticks settles it
		expect(standing(change(merged, wash, 'mode', 'EF'), wash, 'mode')).toBe('done');
		// who knew of it has the last word, though their clock is slow
		const later = withTick(both, says, { row: wash, step: 'mode', on: false }, { ...by('CD'), at: -5 });
		expect(standing(mergedTicks(both, later), wash, 'mode')).toBe('open');
	});

	test('by two plans at once is no agreement', () => {
		const moved = planSays({ ...plan, rows: plan.rows.map((row) => ({ ...row, address: 90 })) });
		const merged = mergedTicks(
			change(NO_TICKS, wash, 'address', 'AB'),
			change(NO_TICKS, wash, 'address', 'CD', true, moved),
		);
		expect(standing(merged, wash, 'address')).toBe('split');
		expect(standing(change(NO_TICKS, wash, 'address', 'AB'), wash, 'address', moved)).toBe('stale');
	});

	test('two notes stand side by side until one is written over both', () => {
		const merged = mergedTicks(
			withNote(NO_TICKS, wash, 'foot loose', by('AB')),
			withNote(NO_TICKS, wash, 'lens cracked', by('CD')),
		);
		const texts = (all: RigTicks): string[] =>
			boardOf(says, all)
				.notes(wash)
				.map(({ text }) => text);
		expect(texts(merged).toSorted()).toEqual(['foot loose', 'lens cracked']);
		expect(texts(withNote(merged, wash, 'both', by('EF')))).toEqual(['both']);
		expect(texts(withNote(merged, wash, '', by('EF')))).toEqual([]);
	});

	test('of the supply as off takes back that the light is lit', () => {
		const lit = change(NO_TICKS, bar, 'lit', 'AB');
		expect(goesWith(boardOf(says, lit), bar, 'off', true)).toEqual([
			{ row: bar, step: 'off', on: true },
			{ row: bar, step: 'lit', on: false },
		]);
		expect(goesWith(boardOf(says, NO_TICKS), bar, 'off', true)).toHaveLength(1);
		expect(goesWith(boardOf(says, lit), bar, 'off', false)).toHaveLength(1);
	});
});

describe('what is unsafe is said', () => {
	const warned = (id: string, ...done: TickStep[]): readonly string[] => {
		const row = plan.rows.find((each) => each.id === id);
		if (!row) throw new Error('no row');
		return warningsOf(stepsOf(plan, row), (step) => (done.includes(step) ? 'done' : 'open'));
	};

	test('whatever is further on than the clamp, with no second fixing', () => {
		expect(warned(bar, 'off', 'hung')).toEqual(['bond']);
		expect(warned(bar, 'off', 'hung', 'linked', 'lit')).toContain('bond');
		expect(warned(bar, 'off', 'lit')).toContain('bond');
		expect(warned(bar, 'off', 'hung', 'bond')).toEqual([]);
		expect(warned(wash, 'placed', 'lit')).toEqual([]);
	});

	test('hands at a mains link with the supply not off, or the light lit', () => {
		expect(warned(bar, 'hung', 'bond')).toEqual(['supply']);
		expect(warned(bar, 'off', 'hung', 'bond', 'lit')).toEqual(['supply']);
		expect(warned(bar, 'mode', 'off', 'hung', 'bond', 'linked', 'lit')).toEqual([]);
		expect(warned(wash, 'linked')).toEqual([]);
	});

	test('before hands go there: the step asked next is at a mains link, or further on than the clamp', () => {
		const steps = stepsOf(plan, plan.rows.find(({ id }) => id === bar) as Plan['rows'][number]);
		const at = (next: TickStep, ...done: TickStep[]) =>
			warningsOf(steps, (step) => (done.includes(step) ? 'done' : 'open'), { next });
		expect(at('hung', 'mode')).toEqual(['supply']);
		expect(at('hung', 'mode', 'off')).toEqual([]);
		expect(at('linked', 'off')).toEqual(['bond']);
		expect(at('mode')).toEqual([]);
	});

	// symptom: a light hung and never bonded lost its warning as the plan moved it. cause: its tick was of the plan before
	test('a light that was hung by an older plan hangs all the same', () => {
		const steps = stepsOf(plan, plan.rows.find(({ id }) => id === bar) as Plan['rows'][number]);
		expect(warningsOf(steps, (step) => (step === 'hung' ? 'stale' : step === 'off' ? 'done' : 'open'))).toEqual([
			'bond',
		]);
	});

	test('another light on its circuit that is lit: that supply is on', () => {
		const steps = stepsOf(plan, plan.rows.find(({ id }) => id === bar) as Plan['rows'][number]);
		const done = new Set<TickStep>(['off', 'hung', 'bond']);
		const stands = (step: TickStep) => (done.has(step) ? 'done' : 'open');
		expect(warningsOf(steps, stands)).toEqual([]);
		expect(warningsOf(steps, stands, { isCircuitLit: true })).toEqual(['supply']);
		const rows = plan.rows.map((row, i) => ({ ...row, circuit: ['A', ' a ', 'B', ''][i] ?? '' }));
		const [first] = rows;
		const lit = litCircuits({ ...plan, rows }, (id) => id === first?.id);
		expect([...lit.keys()]).toEqual(['a']);
		expect(lit.get(circuitKey(rows[1]?.circuit ?? ''))).toEqual(new Set([first?.id]));
		// nobody named a circuit: mains lights may share one, those on batteries share none
		const unnamed = litCircuits({ ...plan, rows: plan.rows.map((row) => ({ ...row, circuit: '' })) }, () => true);
		expect([...(unnamed.get('') ?? [])]).toContain(bar);
		expect([...(unnamed.get('') ?? [])]).not.toContain(wash);
	});

	test('a second fixing that two people disagree on is not ticked', () => {
		const steps = stepsOf(plan, plan.rows[1] as Plan['rows'][number]);
		expect(warningsOf(steps, (step) => (step === 'bond' ? 'split' : 'done'))).toContain('bond');
	});
});

/** A step of a history: a phone ticks, unticks, notes, or hears from another. */
const acts = fc.oneof(
	fc.record({
		does: fc.constant('tick' as const),
		phone: fc.nat(2),
		row: fc.constantFrom(wash, bar),
		step: fc.constantFrom(...TICK_STEPS),
		on: fc.boolean(),
		at: fc.nat(9),
	}),
	fc.record({
		does: fc.constant('note' as const),
		phone: fc.nat(2),
		row: fc.constantFrom(wash, bar),
		text: fc.constantFrom('', 'loose', 'dim'),
		at: fc.nat(9),
	}),
	fc.record({ does: fc.constant('hear' as const), phone: fc.nat(2), from: fc.nat(2) }),
);

/** Three phones' histories after they did all of that. */
const histories = fc.array(acts, { maxLength: 30 }).map((all): [RigTicks, RigTicks, RigTicks] => {
	const phones: [RigTicks, RigTicks, RigTicks] = [NO_TICKS, NO_TICKS, NO_TICKS];
	for (const [i, act] of all.entries()) {
		const here = phones[act.phone] ?? NO_TICKS;
		const signed = { id: i.toString(16).padStart(8, '0'), by: 'ABC'[act.phone] ?? 'A', at: 'at' in act ? act.at : 0 };
		phones[act.phone] =
			act.does === 'hear'
				? mergedTicks(here, phones[act.from] ?? NO_TICKS)
				: act.does === 'tick'
					? withTick(here, says, act, signed)
					: withNote(here, act.row, act.text, signed);
	}
	return phones;
});
const allSteps: readonly RowStep[] = [wash, bar].flatMap((row) => TICK_STEPS.map((step) => ({ row, step })));

describe('merging', () => {
	test('1,000 random histories come out alike in any order, however often, with every entry still there', () => {
		fc.assert(
			fc.property(histories, ([a, b, c]) => {
				const merged = mergedTicks(mergedTicks(a, b), c);
				expect(mergedTicks(mergedTicks(c, b), a)).toEqual(merged);
				expect(mergedTicks(a, mergedTicks(b, c))).toEqual(merged);
				expect(mergedTicks(mergedTicks(b, a), mergedTicks(c, b))).toEqual(merged);
				expect(mergedTicks(merged, merged)).toEqual(merged);
				for (const each of [a, b, c]) {
					expect(newIn(merged, each).count).toBe(0);
					for (const tick of each.ticks) expect(merged.ticks).toContainEqual(tick);
					for (const note of each.notes) expect(merged.notes).toContainEqual(note);
				}
				expect(readTicks(JSON.parse(JSON.stringify(merged)))).toEqual(merged);
			}),
			{ numRuns: runs(1000) },
		);
	});

	test('what stands is what nobody who knew of it has replaced; where that differs it is split, never picked', () => {
		fc.assert(
			fc.property(histories, ([a, b, c]) => {
				const all = mergedTicks(mergedTicks(a, b), c);
				const board = boardOf(says, all);
				for (const { row, step } of allSteps) {
					const its = all.ticks.filter((tick) => tick.row === row && tick.step === step);
					const left = its.filter(({ id }) => !its.some(({ over }) => over.includes(id)));
					const { ticks, standing: stands } = board.state(row, step);
					expect(ticks.map(({ id }) => id).toSorted()).toEqual(left.map(({ id }) => id).toSorted());
					if (left.some(({ on }) => on) && left.some(({ on }) => !on)) expect(stands).toBe('split');
					expect(its.length === 0 || left.length > 0).toBe(true);
				}
			}),
			{ numRuns: runs(300) },
		);
	});

	test('says how many entries are new, and whose', () => {
		const known = change(NO_TICKS, wash, 'mode', 'AB');
		const more = withNote(change(known, wash, 'address', 'CD'), wash, 'dim', by('EF'));
		expect(newIn(known, more)).toEqual({ count: 2, by: ['CD', 'EF'] });
	});
});

describe('what is next', () => {
	test('is the first step not done, past what is left for now', () => {
		const walk = walkOf(plan);
		const board = boardOf(says, change(NO_TICKS, wash, 'charged', 'AB'));
		expect(nextOf(walk, board)).toEqual({ row: bar, step: 'mode' });
		expect(nextOf(walk, board, ({ row }) => row === bar)).toEqual({ row: old, step: 'mode' });
		expect(nextOf(walk, board, () => true)).toEqual({ row: bar, step: 'mode' });
		const done = walk.reduce((all, { row, step }) => change(all, row, step, 'AB'), NO_TICKS);
		expect(nextOf(walk, boardOf(says, done))).toBeNull();
	});
});

describe('ticks from outside', () => {
	const good = withNote(change(NO_TICKS, wash, 'mode', 'AB'), wash, 'dim', by('CD'));
	const [tick] = good.ticks;
	const [note] = good.notes;
	const bad: readonly unknown[] = [
		null,
		[],
		{ ...good, version: 2 },
		{ ...good, more: 1 },
		{ ...good, ticks: [{ ...tick, step: 'danced' }] },
		{ ...good, ticks: [{ ...tick, by: '<b>' }] },
		{ ...good, ticks: [{ ...tick, by: 'ABCDE' }] },
		{ ...good, ticks: [{ ...tick, id: 'x' }] },
		{ ...good, ticks: [{ ...tick, at: -1 }] },
		{ ...good, ticks: [{ ...tick, at: 0.5 }] },
		{ ...good, ticks: [{ ...tick, over: ['x'] }] },
		{ ...good, notes: [{ ...note, text: 'x'.repeat(LONGEST_NOTE + 1) }] },
	];

	test('are read as they were written', () => {
		expect(readTicks(JSON.parse(JSON.stringify(good)))).toEqual(good);
	});

	test.each(bad)('and refused where they are off: %j', (input) => {
		expect(thrownBy(() => readTicks(input)).code).toBe('rig-ticks.shape');
	});

	test('that take each other’s place are still shown', () => {
		const loop = { ...good, ticks: [{ ...tick, over: [tick?.id] }] };
		expect(standing(readTicks(loop), wash, 'mode')).toBe('done');
	});
});
