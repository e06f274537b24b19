import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	digestsOf,
	emptyPlan,
	foundOff,
	isSeen,
	linksOf,
	loadPlan,
	type Plan,
	type PlanRow,
	packed,
	planFromSheet,
	planSheet,
	problemsOf,
	readPlan,
	sawPanels,
	settingsOf,
	sheetBefore,
	swapped,
	withRows,
} from '../../../shared/plan/index.ts';
import { bundledRig, readSheet } from '../../../shared/sheet/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { lanesOf } from '../../../src/features/rig-sheet/linePlan.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../thrown.ts';
import { nameOf, plans } from './plans.ts';

describe('the sheet of a plan', () => {
	test('reads as any other, as planned and as it was before', () => {
		fc.assert(
			fc.property(plans, (drawn) => {
				const { plan } = packed(drawn);
				for (const sheet of [planSheet(plan), sheetBefore(plan)])
					expect(readSheet(JSON.parse(JSON.stringify(sheet)))).toEqual(sheet);
			}),
			{ numRuns: runs(60) },
		);
	});

	test('its panels stand as planned, and data reaches every fixture of a desk’s line', () => {
		fc.assert(
			fc.property(plans, (drawn) => {
				const { plan } = packed(drawn);
				const rig = openRig(planSheet(plan));
				rig.wait(1500);
				for (const row of plan.rows) {
					const unit = rig.gear.units.get(row.id);
					expect(unit?.state.context.settings).toMatchObject(settingsOf(plan, row));
					if (plan.source === 'desk') expect(rig.gear.receptions.get(row.id)?.quality, row.id).toBe('clean');
				}
			}),
			{ numRuns: runs(40) },
		);
	});

	test('a splitter stands where a line would hold more than 32', () => {
		const plan = packed(
			withRows(
				emptyPlan('Long'),
				Array.from({ length: 40 }, () => ({ profile: 'tallow-6' })),
				nameOf,
			),
		).plan;
		const sheet = planSheet(plan);
		expect(sheet.splitters).toHaveLength(1);
		expect(sheet.terminators).toHaveLength(2);
		expect(readSheet(sheet)).toEqual(sheet);
	});

	test('a terminator goes where the sheet has one, in the line, its links and its drawing alike', () => {
		fc.assert(
			fc.property(plans, (drawn) => {
				const { plan } = packed(drawn);
				const { terminators, cables } = planSheet(plan);
				const told = [...linksOf(plan)].flatMap(([row, { terminates }]) => (terminates ? [`${row}:out`] : []));
				expect(told.toSorted()).toEqual(terminators.toSorted());
				const drawnEnds = lanesOf(plan).flatMap(({ terminates, stops }) => (terminates ? [stops.at(-1)?.row] : []));
				expect(drawnEnds.map((row) => `${row}:out`).toSorted()).toEqual(terminators.toSorted());
				// a second way: whatever data comes into and goes no further from
				const outs = new Set(cables.map(({ from }) => String(from).split(':')[0]));
				const ends = cables.flatMap(({ to }) =>
					outs.has(String(to).split(':')[0]) ? [] : [String(to).replace(':in', ':out')],
				);
				expect(ends.toSorted()).toEqual(terminators.toSorted());
			}),
			{ numRuns: runs(60) },
		);
	});

	test('more universes than a desk has outputs are refused with a sentence', () => {
		const rows = Array.from({ length: 9 }, (_, i) => ({ profile: 'tallow-6', universe: i + 1, address: 1 }));
		expect(thrownBy(() => planSheet(withRows(emptyPlan('Wide'), rows, nameOf))).code).toBe('rig-plan.universes');
	});
});

describe('a plan from a sheet', () => {
	test.each(['four-in-line', 'mixed-panels', 'two-universes', 'long-line'] as const)(
		'%s comes back with its patch',
		(id) => {
			const sheet = bundledRig(id);
			const plan = planFromSheet(sheet);
			expect(
				plan.rows.map(({ id: fixture, universe, address, mode }) => ({ fixture, universe, address, mode })),
			).toEqual(sheet.fixtures.map(({ id: fixture }) => sheet.desk?.patch.find((each) => each.fixture === fixture)));
			expect(planSheet(plan).desk?.patch).toEqual(
				plan.rows.map(({ id: fixture, universe, address, mode }) => ({ fixture, universe, address, mode })),
			);
		},
	);

	test('keeps what each panel shows, as planned or not', () => {
		const sheet = bundledRig('four-in-line');
		const [first] = planFromSheet(sheet).rows;
		expect(first?.shows).toEqual({ mode: first?.mode, address: first?.address });
	});

	// symptom: a rig taken from the bench opened as 'all looked at', and no real panel had been
	test('counts no panel of it as looked at until somebody did', () => {
		const plan = planFromSheet(bundledRig('four-in-line'));
		const [first, second] = plan.rows as [PlanRow, PlanRow];
		const off = { ...first, address: first.address === 1 ? 2 : 1 };
		const rows = [off, ...plan.rows.slice(1)];
		expect([rows.filter(isSeen), foundOff({ ...plan, rows })]).toEqual([[], []]);
		const seen = sawPanels({ ...plan, rows }, new Set([off.id]), off.shows);
		expect([seen.rows.filter(isSeen).map(({ id }) => id), foundOff(seen)]).toMatchObject([
			[first.id],
			[{ row: { id: first.id } }],
		]);
		expect(seen.rows[0]).not.toHaveProperty('unseen');
		const again = sawPanels(seen, new Set([first.id, second.id]), null);
		expect(again.rows.slice(0, 2).map((row) => [isSeen(row), 'unseen' in row])).toEqual([
			[false, false],
			[false, false],
		]);
		expect(swapped(plan, first.id, 'cobble').rows[0]).not.toHaveProperty('unseen');
	});

	// symptom: a slip 'from what each panel shows now' began from what a bench had, and a problem said what a panel shows that nobody saw
	test('takes nothing from a panel that nobody looked at: problems, slips and their marks are as if it were not known', () => {
		const taken = planFromSheet(bundledRig('four-in-line'));
		const rows = taken.rows.map((row) => ({ ...row, shows: { mode: row.mode, address: row.address + 1 } }));
		const bench = { ...taken, rows };
		const unknown = { ...bench, rows: rows.map((row) => ({ ...row, shows: null })) };
		const seen = { ...bench, rows: rows.map(({ unseen: _, ...row }) => row) };
		const panels = (of: Plan) => problemsOf(of).filter(({ is }) => is === 'panel-address' || is === 'panel-mode');
		expect([panels(bench), panels(unknown), panels(seen).length]).toEqual([[], [], rows.length]);
		expect(sheetBefore(bench)).toEqual(sheetBefore(unknown));
		expect(sheetBefore(seen)).not.toEqual(sheetBefore(unknown));
		const marks = (of: Plan): string[] => of.rows.map((row) => digestsOf(of).slip(row, 'shown'));
		expect(marks(bench)).toEqual(marks(unknown));
		expect(marks(seen)).not.toEqual(marks(unknown));
	});

	test('a leader’s row comes back as one', () => {
		expect(planFromSheet(bundledRig('leader-and-three')).source).toBe('leader');
	});
});

describe('a plan as it is kept', () => {
	test('is read back as it was written', async () => {
		const plan = packed(withRows(emptyPlan('Kept'), [{ profile: 'tallow-6' }, { profile: 'cobble' }], nameOf)).plan;
		expect(readPlan(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
		expect(await loadPlan(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
	});

	test('is refused with the place where it is off', () => {
		const plan = withRows(emptyPlan('Off'), [{ profile: 'tallow-6' }], nameOf);
		const [row] = plan.rows;
		expect(thrownBy(() => readPlan({ ...plan, name: '' })).code).toBe('rig-plan.shape');
		expect(thrownBy(() => readPlan({ ...plan, rows: [row, row] }))).toMatchObject({
			code: 'rig-plan.row',
			path: 'rows[1].id',
		});
		expect(thrownBy(() => readPlan({ ...plan, rows: [{ ...row, profile: 'nobody' }] })).path).toBe('rows[0].profile');
		expect(thrownBy(() => readPlan({ ...plan, rows: [{ ...row, mode: 'none' }] })).code).toBe('mode.unknown');
		const shows = { mode: 'none', address: 1 };
		expect(thrownBy(() => readPlan({ ...plan, rows: [{ ...row, shows }] })).code).toBe('mode.unknown');
	});

	test('a weight of 0, as older plans may hold, reads as not given', () => {
		const plan = withRows(emptyPlan('Old'), [{ profile: 'tallow-6' }, { profile: 'picket-8' }], nameOf);
		const read = readPlan({ ...plan, kilograms: { 'tallow-6': 0, 'picket-8': 6.5 } });
		expect(read.kilograms).toEqual({ 'picket-8': 6.5 });
	});
});
