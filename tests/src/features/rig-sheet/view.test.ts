import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { checkWords, planWords, rowWords, slipWords } from '#words/plan/index.ts';
import { stockNames } from '#words/stock/index.ts';
import {
	askedOf,
	emptyPlan,
	figuresOf,
	isOnBattery,
	linksOf,
	type Plan,
	packed,
	planFromSheet,
	problemsOf,
	repairsOf,
	sawPanels,
	withRows,
} from '../../../../shared/plan/index.ts';
import { BUNDLED, bundledProfile, type Profile, standInPanel } from '../../../../shared/profile/index.ts';
import { bundledRig } from '../../../../shared/sheet/index.ts';
import { Rows } from '../../../../src/features/rig-sheet/Rows.tsx';
import { routes } from '../../../../src/features/rig-sheet/routes.ts';
import { boxesOf, SlipBlock, stepText } from '../../../../src/features/rig-sheet/SlipBlock.tsx';
import type { PlanStore } from '../../../../src/features/rig-sheet/store.ts';
import { typedNumber } from '../../../../src/features/rig-sheet/typed.ts';
import {
	cautionsOf,
	fedFrom,
	movedRow,
	nameOf,
	ofWhat,
	repairSays,
	rulersOf,
	saysOf,
	withMore,
	withRow,
} from '../../../../src/features/rig-sheet/view.ts';

const rows = [{ profile: 'tallow-6' }, { profile: 'picket-8', overhead: true }, { profile: 'cobble' }];
const plan: Plan = packed(withRows(emptyPlan('Barn'), rows, nameOf)).plan;

describe('what the plan’s page shows', () => {
	it('rulers: who stands where, and how many channels are taken', () => {
		const [ruler] = rulersOf(plan, []);
		expect(ruler?.blocks.map(({ from, to }) => [from, to])).toEqual([
			[1, 9],
			[10, 18],
			[19, 21],
		]);
		expect(ruler?.used).toBe(21);
	});

	it('a clash and its way out, in words', () => {
		const off = withRow(plan, 'bar-1', { address: 5 });
		const [problem] = problemsOf(off);
		if (!problem) throw new Error('nothing is wrong');
		expect(saysOf(off, problem)).toBe('Wash 1 and Bar 1 share channels 5 to 9.');
		expect(repairsOf(off, problem).map((repair) => repairSays(off, repair))).toEqual([
			'Move Bar 1 to Universe 1, 010',
			'Give out start addresses again (1 change)',
		]);
	});

	// symptom: 'the last of that line', of a line that went on along the room past it
	it('two fed from one: the second goes after the last that is fed on from it', () => {
		const fed = fedFrom(fedFrom(plan, 'bar-1', 'wash-1'), 'wash-2', 'wash-1');
		const problem = problemsOf(fed).find(({ is }) => is === 'fed-twice');
		if (!problem) throw new Error('nothing is fed twice');
		expect(repairsOf(fed, problem).map((repair) => repairSays(fed, repair))).toEqual([
			'Feed Wash 2 from Bar 1, the last that is fed on from Wash 1',
			'Let the cable to Wash 2 go along the room',
		]);
	});

	it('cables that go along the room again are named, to be looked at where they lie', () => {
		expect(planWords.loose(['Wash 1'], 0)).toBe(
			'The cable to Wash 1 goes along the room now. Look where it lies: not in an exit route. Undo brings it back.',
		);
		expect(planWords.loose(['Wash 1', 'Bar 1'], 3)).toMatch(/^The cables to Wash 1, Bar 1,? and 3 others go along/);
	});

	it('a row that came from the bench says that nobody has looked at its panel', () => {
		const taken = planFromSheet(bundledRig('four-in-line'));
		const seen = sawPanels(taken, new Set([taken.rows[0]?.id ?? '']), taken.rows[0]?.shows ?? null);
		const lines = (of: Plan): number => {
			const store = { plan: of } as PlanStore;
			return renderToString(h(Rows, { store, problems: [], picked: null, onPick: () => {} })).split(
				rowWords.unseenShort,
			).length;
		};
		expect(lines(taken) - lines(seen)).toBe(1);
	});

	it('every problem and every repair has words with no gap in them', () => {
		const shown = withRow(plan, 'wash-1', { shows: { mode: 'long', address: 7 } });
		const plans: Plan[] = [
			shown,
			withRow(plan, 'wash-1', { address: 510 }),
			{ ...plan, source: 'leader' },
			withRow(plan, 'wash-2', { address: 512 }),
		];
		for (const each of plans)
			for (const problem of problemsOf(each)) {
				expect(saysOf(each, problem)).toMatch(/^(?!.*(undefined|NaN)).+\.$/);
				for (const repair of repairsOf(each, problem)) expect(repairSays(each, repair)).not.toMatch(/undefined|NaN/);
			}
	});

	it('every figure says what it is about', () => {
		for (const each of figuresOf(plan))
			if (each.id !== 'weight' && each.id !== 'charge-amperes') expect(ofWhat(plan, each)).not.toBe('');
	});

	it('one more goes to free slots by the rules; where a list names a universe, to that one', () => {
		const more = withMore(plan, [{ profile: 'tallow-6' }, { profile: 'tallow-6', universe: 3 }]);
		expect(more.rows.slice(3).map(({ universe, address }) => [universe, address])).toEqual([
			[1, 22],
			[3, 1],
		]);
		const given = withMore(plan, [{ profile: 'tallow-6', address: 1 }, { profile: 'cobble' }]);
		expect(given.rows.slice(3).map(({ address }) => address)).toEqual([1, 22]);
		expect(more.rows.slice(0, 3)).toEqual(plan.rows);
	});

	it('a label that a move makes wrong is told', () => {
		const off = withRow(plan, 'bar-1', { address: 5, labelled: true });
		const both = withRow(off, 'wash-1', { labelled: true });
		const says = (of: Plan) =>
			problemsOf(of).flatMap((problem) => repairsOf(of, problem).map((it) => repairSays(of, it)));
		expect(says(off)[0]).toBe('Move Wash 1 to Universe 1, 022');
		expect(says(both)).toEqual(['Move Bar 1 to Universe 1, 010. Its label will be wrong: write a new one']);
	});

	it('cautions go with what hands are about to touch', () => {
		expect(cautionsOf(plan, plan.rows)).toEqual([
			'hanging',
			'height',
			'mains',
			'hot',
			'batteries',
			'ultraviolet',
			'staring',
			'flashing',
		]);
		expect(cautionsOf(plan, plan.rows.slice(2))).toEqual(['mains', 'hot', 'staring', 'flashing']);
		// symptom: a light on its battery was said to be no hotter than the room
		const alone = plan.rows.filter((row) => isOnBattery(plan, row));
		expect(alone.length).toBeGreaterThan(0);
		expect(cautionsOf(plan, alone)).toContain('hot');
		// symptom: it is plugged in to be charged, and nothing at that step was said of the mains
		expect(cautionsOf(plan, alone)).toContain('mains');
		expect(cautionsOf(plan, [])).toEqual([]);
	});

	it('numbers as they are typed', () => {
		expect([typedNumber('12', 1, 512, true), typedNumber('2,5', 0, 200), typedNumber('1.5', 1, 512, true)]).toEqual([
			12,
			2.5,
			null,
		]);
		expect([typedNumber('513', 1, 512), typedNumber('', 0, 5), typedNumber('1e2', 1, 512)]).toEqual([null, null, null]);
		expect(typedNumber('1,500', 1, 5000)).toBeNull();
	});

	it('a row moves up and down the list, and no further than its ends', () => {
		const ids = (of: Plan) => of.rows.map(({ id }) => id);
		expect(ids(movedRow(plan, 'bar-1', -1))).toEqual(['bar-1', 'wash-1', 'wash-2']);
		expect(ids(movedRow(plan, 'wash-1', -1))).toEqual(ids(plan));
	});
});

describe('a prep slip', () => {
	it('ticks off work in a safe order: bond right after the clamp, mains linked with the supply off', () => {
		expect(boxesOf(true, true)).toEqual(['charged', 'set', 'hung', 'bond', 'linked', 'answers']);
		expect(boxesOf(true, false)).toEqual(['set', 'off', 'hung', 'bond', 'linkedAll', 'answers']);
		expect(boxesOf(false, true)).toEqual(['charged', 'set', 'stood', 'linked', 'answers']);
		expect(boxesOf(false, false)).toEqual(['set', 'off', 'stood', 'linkedAll', 'answers']);
	});

	const slipText = async (of: Plan): Promise<string> => {
		const [slip = null] = await routes.slips({ plan: of, from: 'defaults' });
		const [row] = of.rows;
		if (!row) throw new Error('no row');
		return renderToString(
			h(SlipBlock, { plan: of, row, slip, link: linksOf(of).get(row.id) ?? null, hours: null, n: 1, digest: '00000' }),
		);
	};

	// symptom: presses of a fixture that nobody makes stood on paper as if they were those of the real one
	it('says of every panel that the real one differs, and of a light on its battery that no circuit is named', async () => {
		for (const { id } of BUNDLED) {
			const of = withRows(emptyPlan('One'), [{ profile: id }], nameOf);
			const [free, fed] = [
				await slipText(of),
				await slipText({ ...of, rows: of.rows.map((row) => ({ ...row, circuit: 'A' })) }),
			];
			for (const text of [free, fed]) expect(text).toContain(slipWords.panelFrom.invented);
			expect(
				[free, fed].map((text) => text.includes(slipWords.noCircuit)),
				id,
			).toEqual([of.rows.some((row) => isOnBattery(of, row)), false]);
		}
	});

	it('says nothing stands as planned where the panel has no way to it', async () => {
		const far = await slipText(withRows(emptyPlan('Far'), [{ profile: 'cobble', address: 512 }], nameOf));
		expect(far).toContain('This panel can’t set: start address.');
		expect(far).not.toContain('it stands as planned');
		const near = await slipText(withRows(emptyPlan('Near'), [{ profile: 'cobble', address: 1 }], nameOf));
		expect(near).not.toContain('can’t set');
	});

	it('has words for every setting that a plan asks for', () => {
		for (const each of [plan, { ...plan, source: 'leader' as const }])
			for (const row of each.rows)
				expect(Object.keys(slipWords.settings)).toEqual(expect.arrayContaining(Object.keys(askedOf(each, row))));
	});

	it('of a stand-in panel says so though there is nothing to press', async () => {
		const bar = bundledProfile('picket-8');
		if (!bar || bar.panel.kind === 'dip') throw new Error('no panel with keys');
		const stand: Profile = { ...bar, id: 'own-bar', panel: standInPanel(bar, stockNames.panel) };
		const start = { ...emptyPlan('Own'), loss: 'dark' as const, profiles: [stand] };
		const text = await slipText(withRows(start, [{ profile: 'own-bar', address: 1 }], nameOf));
		expect(text).toContain('it stands as planned');
		expect(text).toContain('Stand-in panel');
	});
});

describe('prep slips as the worker makes them', () => {
	it('one for each row, each step in words', async () => {
		const slips = await routes.slips({ plan, from: 'defaults' });
		expect(slips.map((slip) => slip?.row)).toEqual(['wash-1', 'bar-1', 'wash-2']);
		for (const slip of slips)
			for (const step of slip?.steps ?? []) expect(stepText(step, undefined)).toMatch(/^(?!.*(undefined|NaN)).+$/);
		expect(slips[2]?.steps.map((step) => stepText(step, undefined))).toEqual([
			'Switches up: 1 2 5. All others down',
			'Slide ‘Data gone’ to Hold',
		]);
	});

	it('from what a panel shows where that is asked for', async () => {
		const shown = withRow(plan, 'bar-1', { shows: { mode: 'whole-plus', address: 10 } });
		const [, fromDefaults] = await routes.slips({ plan: shown, from: 'defaults' });
		const [, fromShown] = await routes.slips({ plan: shown, from: 'shown' });
		expect(fromShown?.presses).toBeLessThan(fromDefaults?.presses ?? 0);
	});

	it('from what a panel shows: nothing where that is as planned, else the way from there', async () => {
		const [wash] = bundledRig('four-in-line').fixtures;
		if (!wash) throw new Error('no wash');
		const at = { ...wash, settings: { ...wash.settings, address: 10 } };
		const alone = { ...bundledRig('four-in-line'), fixtures: [at], desk: null, cables: [], terminators: [] };
		const taken = planFromSheet(alone);
		// a panel that only the bench had so is not known to: its slip begins from the defaults
		const [unseen] = await routes.slips({ plan: taken, from: 'shown' });
		expect(unseen?.presses).toBeGreaterThan(0);
		const asShown = sawPanels(taken, new Set([wash.id]), taken.rows[0]?.shows ?? null);
		const [nothing] = await routes.slips({ plan: asShown, from: 'shown' });
		expect(nothing).toMatchObject({ steps: [], presses: 0 });
		const [some] = await routes.slips({ plan: asShown, from: 'defaults' });
		expect(some?.presses).toBeGreaterThan(0);
		const [two] = await routes.slips({ plan: withRow(asShown, wash.id, { address: 12 }), from: 'shown' });
		expect(two?.steps.find((step) => step.do === 'tap' && step.key === 'up')).toMatchObject({ times: 2 });
	});
});

// symptom: a light that does as the desk means was said to do other things. cause: the words claimed what nothing worked out
it('tells of channels that reach a light otherwise set only that they reach it', () => {
	for (const own of ['all', 'some', 'none'] as const) expect(checkWords.own[own]).toMatch(/reach it\.$/);
});

// symptom: a light overhead whose start address doesn't show lost 'from the floor only'; 'look first, with no press' said to press after
it('sends nobody up a ladder to read a panel, nor to press one to read it, and has the bench as no look', () => {
	for (const text of [checkWords.overhead, checkWords.silentUp])
		expect(text).toMatch(/^From the floor only, no ladder for this\..*(left|Leave it) for later\.$/);
	expect(checkWords.lookOnly).toMatch(/^Look only, and press nothing:.*Leave it for later\.$/);
	for (const text of [checkWords.all, checkWords.allSame])
		expect(text).toMatch(/taken from the bench\? Then look at each/);
	expect(slipWords.panelFrom.invented).toMatch(
		/look otherwise\? Stop, press nothing more, and tell whoever is in charge\.$/,
	);
});
