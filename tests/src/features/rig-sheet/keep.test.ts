import { describe, expect, it } from 'vitest';
import {
	emptyPlan,
	type PlanRow,
	packed,
	planFromSheet,
	sawPanels,
	sheetDigests,
	withRows,
} from '../../../../shared/plan/index.ts';
import { bundledProfile } from '../../../../shared/profile/index.ts';
import { bundledRig } from '../../../../shared/sheet/index.ts';
import { beginOn } from '../../../../src/features/finder/begin.ts';
import { readStored } from '../../../../src/features/finder/reading.ts';
import { benchText } from '../../../../src/features/rig/index.ts';
import { planOfBench } from '../../../../src/features/rig-sheet/fromBench.ts';
import { holdsPlan, planLink } from '../../../../src/features/rig-sheet/handing.ts';
import { openedFrom } from '../../../../src/features/rig-sheet/incoming.ts';
import {
	forgetRig,
	keepRig,
	keptRigs,
	planText,
	rigKeeper,
	rigText,
	setRigAside,
} from '../../../../src/features/rig-sheet/keep.ts';
import { readPlanLink, readPlanText } from '../../../../src/features/rig-sheet/reading.ts';
import { asidesIn, KEPT } from '../../../../src/storage/index.ts';
import { nameOf } from '../../../shared/plan/plans.ts';
import { memory, refuses } from '../../storage/memory.ts';

const plan = packed(withRows(emptyPlan('Barn'), [{ profile: 'tallow-6' }, { profile: 'picket-8' }], nameOf)).plan;
const ID = '00112233445566aa';
const fresh = { id: ID, from: null };

describe('a rig on the device', () => {
	it('is kept, listed, read again and deleted', async () => {
		const { store } = memory();
		const { hold, came } = keepRig(store, fresh, plan, 5);
		expect(came).toBe('kept');
		expect(keptRigs(store)).toEqual([{ id: ID, name: 'Barn', fixtures: 2, at: 5 }]);
		expect(await readPlanText(rigText(store, hold.id) ?? '')).toEqual({ is: 'plan', plan });
		expect(keepRig(store, hold, { ...plan, name: 'Yard' }, 6).hold.id).toBe(ID);
		forgetRig(store, ID);
		expect(keptRigs(store)).toEqual([]);
	});

	it('is kept beside what another tab has written in its place', () => {
		const { store } = memory();
		const mine = keepRig(store, fresh, plan, 5).hold;
		keepRig(store, mine, { ...plan, name: 'Theirs' }, 6);
		const { hold, came } = keepRig(store, mine, { ...plan, name: 'Mine' }, 7);
		expect(came).toBe('copy');
		expect(hold.id).not.toBe(ID);
		expect(keptRigs(store).map(({ name }) => name)).toEqual(['Mine', 'Theirs']);
	});

	it('is not kept where there is no room, or the browser keeps nothing, and says so', () => {
		expect(keepRig(memory({}, 10).store, fresh, plan, 5).came).toBe('full');
		expect(keepRig(refuses, fresh, plan, 5).came).toBe('refused');
		expect(keptRigs(refuses)).toEqual([]);
	});

	it('that is damaged, or of a newer version, is told apart; the damaged one is set aside whole', async () => {
		const text = planText(plan, 5);
		expect(await readPlanText(text.slice(0, -9))).toEqual({ is: 'damaged' });
		expect(await readPlanText(text.replace('"tallow-6"', '"nobody"'))).toEqual({ is: 'damaged' });
		expect(await readPlanText(text.replace('"version":1', '"version":9'))).toEqual({ is: 'newer' });
		const { store } = memory({ [KEPT.rigs.key + ID]: '{"version":1' });
		setRigAside(store, ID, '{"version":1', 5);
		expect(asidesIn(store, 'rigs').map(({ text: whole }) => whole)).toEqual(['{"version":1']);
		expect(rigText(store, ID)).toBeNull();
	});
});

describe('a rig being worked on', () => {
	const text = planText(plan, 5);
	const opened = (store: ReturnType<typeof memory>['store']) => rigKeeper(store, plan, { id: ID, from: text });

	it('is written once for each change, and not where nothing changed', () => {
		const { store, held } = memory({ [KEPT.rigs.key + ID]: text });
		const keeper = opened(store);
		expect(keeper.save(plan, 6)).toBeNull();
		expect(held.get(KEPT.rigs.key + ID)).toBe(text);
		const next = { ...plan, name: 'Yard' };
		expect([keeper.save(next, 7), keeper.save(next, 8)]).toEqual(['kept', null]);
		expect(keptRigs(store)).toMatchObject([{ name: 'Yard', at: 7 }]);
	});

	it('that another tab has changed is no copy until something is done to it here', () => {
		const { store } = memory({ [KEPT.rigs.key + ID]: planText({ ...plan, name: 'Theirs' }, 6) });
		const keeper = opened(store);
		expect(keeper.save(plan, 7)).toBeNull();
		expect(keptRigs(store)).toHaveLength(1);
		expect(keeper.save({ ...plan, name: 'Mine' }, 8)).toBe('copy');
		expect(keptRigs(store).map(({ name }) => name)).toEqual(['Mine', 'Theirs']);
		// what is deleted is the copy, not theirs
		keeper.forget();
		expect(keptRigs(store).map(({ name }) => name)).toEqual(['Theirs']);
	});

	it('is not written back once it is deleted', () => {
		const { store } = memory({ [KEPT.rigs.key + ID]: text });
		const keeper = opened(store);
		keeper.forget();
		expect(keeper.save({ ...plan, name: 'Yard' }, 7)).toBeNull();
		expect(keptRigs(store)).toEqual([]);
	});

	it('is tried again where there was no room', () => {
		const { store } = memory({}, 10);
		const keeper = rigKeeper(store, plan, null);
		expect([keeper.save(plan, 6), keeper.save(plan, 7)]).toEqual(['full', 'full']);
	});
});

describe('a rig on its way', () => {
	it('comes out of its link as it went in', async () => {
		const link = await planLink(plan, 5);
		expect(holdsPlan(link)).toBe(true);
		expect(await readPlanLink(link)).toEqual({ is: 'plan', plan });
		for (const bad of ['#plan=1.AAAA', '#plan=x', '#plan=1.', link.slice(0, -8)])
			expect(await readPlanLink(bad)).toEqual({ is: 'damaged' });
		expect(await readPlanLink(link.replace('=1.', '=9.'))).toEqual({ is: 'newer' });
	});

	it('is made of the bench that is kept', async () => {
		const sheet = bundledRig('four-in-line');
		const { store } = memory({ [KEPT.bench.key]: benchText({ sheet, log: [] }, { id: ID }) });
		const found = await planOfBench(store);
		expect(found?.is === 'plan' && found.plan.rows.map(({ id }) => id)).toEqual(sheet.fixtures.map(({ id }) => id));
		expect(await planOfBench(memory().store)).toBeNull();
		expect(await planOfBench(memory({ [KEPT.bench.key]: '{' }).store)).toEqual({ is: 'damaged' });
	});

	it('writes the first version wherever an older site can read it, and reads both', async () => {
		const { plan } = packed(withRows(emptyPlan('Barn'), [{ profile: 'picket-8' }], nameOf));
		const second = { ...plan, supply: { ...plan.supply, link: 13, curve: 'C' as const }, surge: { 'picket-8': 20 } };
		expect([JSON.parse(planText(plan, 1)).version, JSON.parse(planText(second, 1)).version]).toEqual([1, 2]);
		expect(JSON.parse(planText(plan, 1, { before: second })).version).toBe(2);
		expect(await planLink(plan, 1)).toMatch(/^#plan=1\./);
		expect(await planLink(second, 1)).toMatch(/^#plan=2\./);
		for (const each of [plan, second]) expect(await readPlanText(planText(each, 1))).toMatchObject({ plan: each });
	});

	it('writes the third version where a row is fed from another, and reads it again', async () => {
		const [first, second] = plan.rows;
		const fed = { ...plan, rows: [{ ...(first as PlanRow), after: second?.id ?? '' }, second as PlanRow] };
		const text = planText(fed, 5);
		expect(text).toMatch(/^\{"version":3,/);
		expect(await readPlanText(text)).toEqual({ is: 'plan', plan: fed });
		expect(planText(plan, 5, { before: fed })).toMatch(/^\{"version":3,/);
	});

	it('writes the fourth version while a panel is as a bench had it, and an earlier one once all were looked at', async () => {
		const taken = planFromSheet(bundledRig('four-in-line'));
		const text = planText(taken, 5);
		expect(text).toMatch(/^\{"version":4,/);
		expect(await readPlanText(text)).toEqual({ is: 'plan', plan: taken });
		const seen = sawPanels(taken, new Set(taken.rows.map(({ id }) => id)), null);
		expect(planText(seen, 5)).toMatch(/^\{"version":1,/);
		// symptom: the plan that sheets were printed from kept older phones out for good, when every panel had been looked at; a sheet
		// tells nothing of what nobody saw, so it is written without, and its marks stay
		const printed = planText(seen, 5, { before: taken });
		expect(printed).toMatch(/^\{"version":1,/);
		const back = await readPlanText(printed);
		if (back.is !== 'plan' || !back.before) throw new Error('the file cannot be read');
		expect(sheetDigests(back.before, null)).toEqual(sheetDigests(taken, null));
	});

	// symptom: an older site called a link with a crew's own panel in it damaged, and nobody was told to load the page again
	it('writes the second version where a fixture of one’s own has a panel that only that one has', () => {
		const own = bundledProfile('picket-8');
		if (own?.panel.kind !== 'code' && own?.panel.kind !== 'text') throw new Error('no panel with keys');
		const { panel } = own;
		const version = (menu: typeof panel.menu, more: object = {}): unknown => {
			const profiles = [{ ...own, id: 'own-1', panel: { ...panel, ...more, menu } }];
			return JSON.parse(planText({ ...plan, profiles }, 1)).version;
		};
		const says: typeof panel.menu = [{ kind: 'info', id: 'says', label: 'VER', title: 'Says', shows: 'nothing' }];
		const choice = panel.menu
			.flatMap((item) => (item.kind === 'menu' ? item.items : [item]))
			.find((item) => item.kind === 'choice');
		if (choice?.kind !== 'choice') throw new Error('no list');
		const listed = { ...choice, idle: [{ at: 0, label: 'AUX' }] };
		const under = (items: (typeof choice)[]): typeof panel.menu => [
			...panel.menu,
			{ kind: 'menu', id: 'more', label: 'MORE', title: 'More', items },
		];
		expect(version(panel.menu)).toBe(1);
		expect(version(under([choice]))).toBe(1);
		expect(version(panel.menu, { printed: { up: 'VAL' } })).toBe(2);
		expect(version([...panel.menu, ...says])).toBe(2);
		expect(version([...panel.menu, listed])).toBe(2);
		expect(version(under([listed]))).toBe(2);
	});

	// symptom: a box that was filled and emptied kept a rig from older phones for good; an empty one is left out, as they know none
	it('goes back to the first version once what only the second one has is emptied', async () => {
		const first = packed(withRows(emptyPlan('Barn'), [{ profile: 'picket-8' }], nameOf)).plan;
		const emptied = {
			...first,
			supply: { ...first.supply, link: null, curve: null },
			surge: {},
			rows: first.rows.map((row) => ({ ...row, tilt: 0 })),
		};
		expect(planText(emptied, 1)).toBe(planText(first, 1));
		expect(planText(first, 1, { before: emptied })).toBe(planText(first, 1, { before: first }));
		expect(await planLink(emptied, 1)).toMatch(/^#plan=1\./);
		// kept with its empty boxes before this, it is the same plan as comes in without
		const text = JSON.stringify({ version: 2, at: 1, plan: emptied });
		const { store } = memory({ [KEPT.rigs.key + ID]: text });
		const opened = await openedFrom(store, { is: 'plan', plan: first, id: ID }, 2);
		expect(opened.came?.plan).toBeNull();
		const filled = [
			{ ...emptied, supply: { ...emptied.supply, link: 13 } },
			{ ...emptied, supply: { ...emptied.supply, curve: 'B' as const } },
			{ ...emptied, surge: { 'picket-8': 20 } },
			{ ...emptied, rows: first.rows.map((row) => ({ ...row, tilt: -5 })) },
		];
		for (const each of filled) {
			expect(JSON.parse(planText(each, 1)).version).toBe(2);
			const read = await readPlanText(planText(each, 1));
			expect(read.is === 'plan' && planText(read.plan, 1)).toBe(planText(each, 1));
		}
	});

	it('has the finder begin on one of its fixtures; a walk that stood there is set aside', async () => {
		const sheet = bundledRig('four-in-line');
		const { store } = memory({ [KEPT.walk.key]: '{"version":1,"walk":null}' });
		expect(beginOn(store, sheet, 'wash-3', '00112233445566aa', 5)).toBe(true);
		const { kept, damaged } = await readStored({ walk: store().getItem(KEPT.walk.key), counts: null });
		expect(damaged).toEqual([]);
		expect(kept?.walk).toMatchObject({ rig: { kind: 'sheet', sheet: { name: sheet.name } }, fixture: 'wash-3' });
		expect(asidesIn(store, 'walk')).toHaveLength(1);
		expect(beginOn(refuses, sheet, 'wash-3', '00112233445566aa', 5)).toBe(false);
	});
});
