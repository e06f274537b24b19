import { describe, expect, test } from 'vitest';
import { cautionIds } from '#words/cautions/index.ts';
import { bundledRig, quickSheet, RIG_IDS, type RigSheet } from '../../../../shared/sheet/index.ts';
import { type Complaint, complaintsOf, meantWitness, openOutcomes } from '../../../../sim/finder/index.ts';
import { makeWork, standOn } from '../../../../src/features/finder/routes.ts';
import type { WalkView } from '../../../../src/features/finder/view.ts';
import { viewWalk } from '../../../../src/features/finder/viewWalk.ts';
import {
	ALLOWS_ALL,
	freshWalk,
	type RigChoice,
	type SetWalk,
	type WalkStep,
} from '../../../../src/features/finder/walk.ts';

const quick: RigChoice = { kind: 'quick', count: 4, linked: 'desk', profile: 'tallow-6' };

/** Views of a walk that always takes the first answer, or sets each check aside, to its end or so far. */
function viewsOf(
	sheet: RigSheet,
	rig: RigChoice,
	{ kind, fixture }: Complaint,
	most: number,
	did: WalkStep['did'] = 'answer',
): WalkView[] {
	const bench = openOutcomes(sheet, { kind, fixture });
	const stand = standOn(bench);
	const views: WalkView[] = [];
	let steps: WalkStep[] = [];
	while (views.length < most) {
		const walk: SetWalk = { ...freshWalk(rig, {}, 0), fixture, complaint: kind, steps };
		const view = viewWalk(bench, stand.at(walk, ALLOWS_ALL), walk);
		views.push(view);
		const check = view.check?.id ?? view.verdict?.repairs[0]?.check;
		const outcome = view.check?.answers[0]?.id ?? 'still';
		if (check === undefined || view.verdict?.because === 'mended') break;
		steps = [...steps, did === 'answer' ? { did, check, outcome } : { did, check }];
	}
	return views;
}

describe('every screen of a walk', () => {
	test.each(RIG_IDS.filter((id) => id !== 'long-line'))('has its words, on %s', (id) => {
		const sheet = bundledRig(id);
		const fixtures = sheet.fixtures.slice(-1);
		for (const complaint of complaintsOf(meantWitness(sheet), { ...sheet, fixtures })) {
			for (const { check, verdict, suspects, log } of viewsOf(sheet, { kind: 'bundled', id }, complaint, 4)) {
				expect((check === null) !== (verdict === null)).toBe(true);
				if (check) {
					expect(check.title).not.toBe('');
					expect(check.answers.length).toBeGreaterThan(1);
					const words = check.answers.map((answer) => `${answer.words} ${answer.note}`);
					expect(new Set(words).size, check.id).toBe(words.length);
					for (const caution of check.cautions) expect(cautionIds).toContain(caution);
					expect(check.walk).toBeLessThanOrEqual(check.seconds);
				}
				for (const repair of verdict?.repairs ?? [])
					for (const caution of repair.cautions) expect(cautionIds).toContain(caution);
				expect(suspects.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 6);
				const told = suspects.map(({ name, more }) => `${name} ${more}`);
				expect(new Set(told).size, told.join('\n')).toBe(told.length);
				for (const { seen } of log) expect(seen).not.toBe('');
			}
		}
	});
});

test('cautions are told in full the first time, and wherever hands do something or a check climbs', () => {
	let toldAgain = 0;
	for (const id of ['mixed-panels', 'two-universes'] as const) {
		const sheet = bundledRig(id);
		for (const complaint of complaintsOf(meantWitness(sheet), { ...sheet, fixtures: sheet.fixtures.slice(-1) })) {
			for (const did of ['answer', 'cannot'] as const) {
				const met = new Set<string>();
				for (const { check, verdict } of viewsOf(sheet, { kind: 'bundled', id }, complaint, 9, did)) {
					// one that was set aside may not have been read
					const read = did === 'answer' ? [check ?? verdict?.repairs[0]] : [];
					const isWhole = check?.sort !== 'look' || check.needs.includes('ladder');
					const known = (check?.cautions ?? []).filter((each) => met.has(each));
					expect(check?.said ?? []).toEqual(isWhole ? [] : known);
					if (isWhole) toldAgain += known.length;
					for (const each of read.flatMap((one) => one?.cautions ?? [])) met.add(each);
				}
			}
		}
	}
	expect(toldAgain).toBeGreaterThan(0);
});

test.each([
	['look', [], ['mains']],
	['look', ['ladder'], []],
	['try', [], []],
	['swap', [], []],
] as const)('a caution met before, at a %s that needs %j, folds: %j', (sort, needs, said) => {
	const sheet = bundledRig('four-in-line');
	const bench = openOutcomes(sheet, { kind: 'dark', fixture: 'wash-3' });
	const stand = standOn(bench);
	const begun: SetWalk = {
		...freshWalk({ kind: 'bundled', id: 'four-in-line' }, {}, 0),
		fixture: 'wash-3',
		complaint: 'dark',
	};
	const first = viewWalk(bench, stand.at(begun, ALLOWS_ALL), begun).check;
	if (!first) throw new Error('this walk was to have a check');
	const walk: SetWalk = {
		...begun,
		steps: [{ did: 'answer', check: first.id, outcome: first.answers[0]?.id ?? '' }],
	};
	const finder = stand.at(walk, ALLOWS_ALL);
	const next = finder.next();
	if (!next) throw new Error('this walk was to go on');
	const known = finder.check(first.id);
	const told: typeof finder = Object.create(finder, {
		next: { value: () => ({ ...next, check: { ...next.check, sort, needs, cautions: ['mains'] } }) },
		check: { value: () => known && { ...known, cautions: ['mains'] } },
	});
	expect(viewWalk(bench, told, walk).check?.said).toEqual(said);
});

test('with no sheet a value that is as meant is said to be a stand-in, and with one it is said outright', () => {
	const complaint: Complaint = { kind: 'no-answer', fixture: 'wash-3' };
	const meant = (sheet: RigSheet, rig: RigChoice) =>
		viewsOf(sheet, rig, complaint, 12, 'cannot')
			.flatMap(({ check }) => check?.answers ?? [])
			.find(({ id }) => id === 'as-meant');
	const standIn = meant(quickSheet({ count: 4, linked: 'desk', profile: 'tallow-6' }), quick);
	expect(standIn?.words).toBe('As you meant it');
	expect(standIn?.note).toMatch(/^stand-in: /);
	expect(meant(bundledRig('four-in-line'), { kind: 'bundled', id: 'four-in-line' })?.note ?? null).toBeNull();
});

test('a finder moved on by a step stands where one stands that walks there from the start', () => {
	const sheet = bundledRig('four-in-line');
	const complaint: Complaint = { kind: 'flicker', fixture: 'wash-3' };
	const bench = openOutcomes(sheet, complaint);
	const one = standOn(bench);
	const at = (stand: typeof one, steps: WalkStep[]) => {
		const walk: SetWalk = {
			...freshWalk({ kind: 'bundled', id: 'four-in-line' }, {}, 0),
			fixture: complaint.fixture,
			complaint: complaint.kind,
			steps,
		};
		return viewWalk(bench, stand.at(walk, ALLOWS_ALL), walk);
	};
	const steps: WalkStep[] = [];
	for (let n = 0; n < 4; n++) {
		const view = at(one, steps);
		expect(view).toEqual(at(standOn(bench), steps));
		const { check } = view;
		if (!check) break;
		steps.push(
			n === 1
				? { did: 'unsure', check: check.id }
				: { did: 'answer', check: check.id, outcome: check.answers.at(-1)?.id ?? '' },
		);
	}
	expect(steps.length).toBeGreaterThan(2);
	// back, and on another way
	const other: WalkStep[] = [
		...steps.slice(0, 1),
		{ did: 'cannot', check: at(one, steps.slice(0, 1)).check?.id ?? '' },
	];
	expect(at(one, other)).toEqual(at(standOn(bench), other));
});

test('what is worked out ahead changes nothing that is shown, also where pairs of faults come in', async () => {
	const walk: SetWalk = {
		...freshWalk({ kind: 'bundled', id: 'four-in-line' }, {}, 0),
		fixture: 'wash-3',
		complaint: 'no-answer',
	};
	const [plain, ahead] = [makeWork(), makeWork()];
	const ask = (work: typeof plain, steps: WalkStep[]) =>
		work.look({ walk: { ...walk, steps }, allows: ALLOWS_ALL, isPartEnough: false }, () => undefined);
	const steps: WalkStep[] = [];
	let pieces = 0;
	for (let n = 0; n < 8; n++) {
		const view = await ask(ahead, steps);
		expect(view).toEqual(await ask(plain, steps));
		for (const act of ahead.ahead()) {
			act();
			pieces++;
		}
		expect(ahead.ahead()).toEqual([]);
		const repair = view.verdict?.repairs[0];
		if (view.check)
			steps.push({
				did: 'answer',
				check: view.check.id,
				outcome: view.check.answers[n % view.check.answers.length]?.id ?? '',
			});
		else if (repair) steps.push({ did: 'answer', check: repair.check, outcome: 'still' });
		else break;
	}
	expect(pieces).toBeGreaterThan(steps.length);
	expect((await ask(ahead, steps)).suspects.some(({ name }) => name.includes(' and '))).toBe(true);
});
