import fc from 'fast-check';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { changeWords, figureNames, figureWords, needWords } from '#words/plan/index.ts';
import {
	CABLE_SLACK,
	digestsOf,
	emptyPlan,
	type Figure,
	type FigureId,
	figuresOf,
	isOfBattery,
	isOfLoad,
	linesOf,
	type NumberedCable,
	numberedCables,
	type Plan,
	packed,
	planSheet,
	readDigest,
	sheetDigests,
	verdictOn,
	withRows,
} from '../../../../shared/plan/index.ts';
import { endName, sheetName } from '../../../../src/features/rig-sheet/changesView.ts';
import { figureSays, overSays } from '../../../../src/features/rig-sheet/figureSays.ts';
import { LoadSheet } from '../../../../src/features/rig-sheet/LoadSheet.tsx';
import {
	FIRST_GRID,
	isLargeEnough,
	type LabelGrid,
	labelSize,
	onSheets,
	SHEET_SIZES,
} from '../../../../src/features/rig-sheet/labelGrid.ts';
import { asksHang } from '../../../../src/features/rig-sheet/lightView.ts';
import { DRAWING, lanesOf, levelsFor } from '../../../../src/features/rig-sheet/linePlan.ts';
import { plugInBy, readTime } from '../../../../src/features/rig-sheet/plugIn.ts';
import { nameOf } from '../../../../src/features/rig-sheet/view.ts';
import { runs } from '../../../runs.ts';
import { plans } from '../../../shared/plan/plans.ts';

const escaped = (text: string): string => renderToString(h('p', null, text)).slice(3, -4);

const grids: fc.Arbitrary<LabelGrid> = fc.record({
	paper: fc.constantFrom('a4' as const, 'letter' as const, 'strip' as const),
	columns: fc.integer({ min: 1, max: 20 }),
	rows: fc.integer({ min: 1, max: 20 }),
	top: fc.integer({ min: 0, max: 60 }),
	side: fc.integer({ min: 0, max: 60 }),
	gapAcross: fc.integer({ min: 0, max: 30 }),
	gapDown: fc.integer({ min: 0, max: 30 }),
	used: fc.integer({ min: 0, max: 399 }),
	tape: fc.integer({ min: 6, max: 110 }),
	length: fc.integer({ min: 20, max: 300 }),
});

// symptom: below zero, the least that may trip had no word and no mark but in a folded note
describe('what is said of a figure', () => {
	const of = (id: FigureId, value: number | null): Figure => ({ id, of: 'A', value, parts: [], needs: null });

	it('below zero, of every figure of amps that is left: not to switch on, the electrician, and no link made to bring one on', () => {
		for (const id of ['breaker-left', 'link-left', 'surge-left'] as const) {
			expect(overSays(of(id, -0.1)), id).toMatch(/Don’t switch on.*electrician/);
			expect([overSays(of(id, 0)), overSays(of(id, null))], id).toEqual(['', '']);
			expect(figureNames[id]('A'), id).toContain('(no permission)');
		}
		expect(overSays(of('surge-left', -1))).toContain('Never make a link to bring one on');
		expect(figureSays({ ...of('surge-left', null), needs: 'curve' })).toBe(needWords.curve);
	});
});

// symptom: a light put at 4 m on the plan had no second fixing on slip and ticks, and one put at 0 was still said to hang
describe('a light moved up or down on the plan', () => {
	it('is asked whether it hangs wherever its height says otherwise', () => {
		const at = (y: number, overhead: boolean) => asksHang({ x: 0, y, throw: 3, overhead });
		expect([at(0, false), at(1, false), at(5, true)]).toEqual([false, false, false]);
		expect([at(1.1, false), at(4, false), at(0, true), at(1, true)]).toEqual([true, true, true, true]);
	});
});

describe('a grid of labels', () => {
	it('is as a sheet measures: margins, labels and gaps come to its width and height', () => {
		// by hand: (210 − 14) ÷ 3 across, (297 − 20) ÷ 8 down
		expect(labelSize(FIRST_GRID).width).toBeCloseTo(65.333, 3);
		expect(labelSize(FIRST_GRID).height).toBeCloseTo(34.625, 3);
		fc.assert(
			fc.property(grids, (grid) => {
				const { width, height } = labelSize(grid);
				if (grid.paper === 'strip') {
					expect([height, width]).toEqual([grid.tape, grid.length]);
					return;
				}
				const sheet = SHEET_SIZES[grid.paper];
				expect(2 * grid.side + grid.columns * width + (grid.columns - 1) * grid.gapAcross).toBeCloseTo(sheet.width, 6);
				expect(2 * grid.top + grid.rows * height + (grid.rows - 1) * grid.gapDown).toBeCloseTo(sheet.height, 6);
			}),
			{ numRuns: runs(200) },
		);
	});

	it('holds every label once, in order, and leaves used ones empty', () => {
		fc.assert(
			fc.property(grids, fc.integer({ min: 0, max: 60 }), (grid, count) => {
				const labels = Array.from({ length: count }, (_, i) => i);
				const sheets = onSheets(grid, labels);
				const all = sheets.flat();
				expect(all.filter((each) => each !== null)).toEqual(labels);
				const each = grid.paper === 'strip' ? 1 : grid.columns * grid.rows;
				for (const sheet of sheets) expect(sheet.length).toBeLessThanOrEqual(each);
				const empty = grid.paper === 'strip' || count === 0 ? 0 : Math.min(grid.used, each - 1);
				expect(all.findIndex((it) => it !== null)).toBe(count === 0 ? -1 : empty);
				expect(all.length - count).toBe(empty);
			}),
			{ numRuns: runs(200) },
		);
	});

	it('is refused where a start address would not be read', () => {
		expect(isLargeEnough(FIRST_GRID)).toBe(true);
		expect(isLargeEnough({ ...FIRST_GRID, columns: 6 })).toBe(false);
		expect(isLargeEnough({ ...FIRST_GRID, rows: 20 })).toBe(false);
		expect(isLargeEnough({ ...FIRST_GRID, paper: 'strip', tape: 12 })).toBe(false);
	});
});

describe('the line on paper', () => {
	it('labels each cable of the rig sheet once, with its own ends and length', () => {
		fc.assert(
			fc.property(plans, (plan) => {
				const cables = numberedCables(plan);
				const sheet = planSheet(plan);
				expect(cables.map(({ length }) => length)).toEqual(sheet.cables.map(({ length }) => length));
				expect(cables.map(({ n }) => n)).toEqual(sheet.cables.map((_, i) => i + 1));
				const end = (text: string | null) => text?.split(':')[0];
				for (const [i, { from, to }] of cables.entries()) {
					const its = sheet.cables[i];
					if (from.is === 'row') expect(end(its?.from ?? null)).toBe(from.row);
					if (to.is === 'row') expect(end(its?.to ?? null)).toBe(to.row);
				}
			}),
			{ numRuns: runs(60) },
		);
	});

	it('draws no fixture over another, none outside, and as few levels as stand at one spot', () => {
		fc.assert(
			fc.property(fc.array(fc.integer({ min: 0, max: 200 }), { maxLength: 40 }), (at) => {
				const levels = levelsFor(at, DRAWING.dot);
				for (const [i, one] of at.entries())
					for (const [j, other] of at.entries())
						if (i < j && levels[i] === levels[j]) expect(Math.abs(one - other)).toBeGreaterThanOrEqual(DRAWING.dot);
				// the most that lie within one dot's width anywhere need that many levels, and no more are used
				const crowd = Math.max(0, ...at.map((x) => at.filter((y) => y <= x && x - y < DRAWING.dot).length));
				expect(Math.max(0, ...levels.map((level) => level + 1))).toBe(crowd);
			}),
			{ numRuns: runs(100) },
		);
		fc.assert(
			fc.property(plans, (plan) => {
				const stops = lanesOf(plan).flatMap((lane) => lane.stops);
				expect(stops.map(({ row }) => row)).toEqual(
					linesOf(plan).flatMap((line) => line.runs.flatMap(({ rows }) => rows)),
				);
				for (const { at, n, row } of stops) {
					expect(at).toBeGreaterThanOrEqual(DRAWING.side);
					expect(at).toBeLessThanOrEqual(DRAWING.width - DRAWING.side + 1e-9);
					expect(plan.rows[n - 1]?.id).toBe(row);
				}
			}),
			{ numRuns: runs(60) },
		);
	});

	it('every new sheet carries a mark that says what it is, and that it is old once it is', () => {
		const rows = [{ profile: 'tallow-6' }, { profile: 'picket-8', circuit: 'A' }];
		const { plan } = packed(withRows(emptyPlan('Barn'), rows, nameOf));
		const moved = {
			...plan,
			supply: { ...plan.supply, volts: 120 },
			show: { ...plan.show, look: 0.5 },
			rows: plan.rows.map((row) => ({ ...row, place: { ...row.place, x: row.place.x * 6 } })),
		};
		const digests = digestsOf(plan);
		const marks = { line: digests.line, load: digests.load, charge: digests.charge, cable: digests.cable('bar-1') };
		for (const [sheet, mark] of Object.entries(marks)) {
			expect(readDigest(mark)).toBe(mark);
			expect(verdictOn(mark, plan, null)).toMatchObject({ is: 'current', of: { sheet } });
			expect(verdictOn(mark, moved, plan), sheet).toMatchObject({ is: 'old', of: { sheet } });
			expect(changeWords.sheet).toHaveProperty(sheet);
		}
	});
});

describe('the mark on a cable’s labels', () => {
	const many = (count: number) =>
		packed(
			withRows(
				emptyPlan('Barn'),
				Array.from({ length: count }, () => ({ profile: 'tallow-6' })),
				nameOf,
			),
		).plan;
	const markOf = (of: Plan, { to }: NumberedCable): string =>
		digestsOf(of).cable(to.is === 'row' ? to.row : to.universe);

	// symptom: the mark on the cable from desk to splitter was of no sheet
	it('is known of each cable, and named by where it goes', () => {
		const drawn = fc.oneof(
			plans.map((plan) => packed(plan).plan),
			fc.integer({ min: 30, max: 70 }).map(many),
		);
		fc.assert(
			fc.property(drawn, (plan) => {
				const cables = numberedCables(plan);
				for (const cable of cables) {
					const verdict = verdictOn(markOf(plan, cable), plan, null);
					expect(verdict).toMatchObject({ is: 'current', of: { sheet: 'cable' } });
					if (verdict.of)
						expect(sheetName([plan], verdict.of)).toBe(changeWords.sheet.cable(endName([plan], cable.to)));
				}
				expect(new Set(cables.map((cable) => markOf(plan, cable))).size).toBe(cables.length);
				expect(sheetDigests(plan, null).filter(({ sheet }) => sheet === 'cable')).toHaveLength(cables.length);
			}),
			{ numRuns: runs(40) },
		);
	});

	// symptom: one more light brought a splitter in, and ‘from the desk’ on the first label still passed for right
	it('is another where its first end, its number or its length is, and the same where none is', () => {
		const [one, two] = [many(32), many(33)];
		const to = (of: Plan, row: string): NumberedCable => {
			const found = numberedCables(of).find((each) => each.to.is === 'row' && each.to.row === row);
			if (!found) throw new Error(row);
			return found;
		};
		const row = one.rows[0]?.id ?? '';
		expect([to(one, row).from.is, to(two, row).from.is]).toEqual(['desk', 'split']);
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 70 }), fc.integer({ min: 1, max: 70 }), (a, b) => {
				const [was, is] = [many(a), many(b)];
				for (const cable of numberedCables(was)) {
					const its =
						cable.to.is === 'row' && is.rows.find((each) => cable.to.is === 'row' && each.id === cable.to.row);
					if (!its) continue;
					const now = to(is, its.id);
					const says = ({ n, from, length }: NumberedCable, of: Plan): unknown => [n, endName([of], from), length];
					expect(markOf(was, cable) === markOf(is, now)).toBe(
						JSON.stringify(says(cable, was)) === JSON.stringify(says(now, is)),
					);
				}
			}),
			{ numRuns: runs(30) },
		);
		// renumbered alone: from the same end, as long as before
		const later = one.rows[5]?.id ?? '';
		const fewer = { ...one, rows: one.rows.slice(1) };
		expect(to(fewer, later).n).not.toBe(to(one, later).n);
		expect(markOf(fewer, to(fewer, later))).not.toBe(markOf(one, to(one, later)));
	});
});

describe('the mark on the load sheet', () => {
	// symptom: any light moved along made a true load sheet read as old, by the metres of its data cables
	it('is another exactly where a sum that it shows is', () => {
		const shown = (of: Plan): string => JSON.stringify(figuresOf(of).filter(({ id }) => isOfLoad(id)));
		fc.assert(
			fc.property(plans, plans, fc.integer({ min: 1, max: 40 }), (one, other, far) => {
				const moved = {
					...one,
					rows: one.rows.map((row) => ({ ...row, place: { ...row.place, x: row.place.x + far } })),
				};
				expect(digestsOf(moved).load).toBe(digestsOf(one).load);
				for (const is of [
					other,
					{ ...one, supply: { ...one.supply, volts: 120 } },
					{ ...one, kilograms: { cobble: 2 } },
				])
					expect(digestsOf(is).load === digestsOf(one).load).toBe(shown(is) === shown(one));
				const html = renderToString(h(LoadSheet, { plan: one, digests: digestsOf(one) }));
				const all = figuresOf(one);
				for (const id of new Set(all.map((each) => each.id)))
					expect(html.includes(escaped(figureWords.notes[id](CABLE_SLACK))), id).toBe(isOfLoad(id) || isOfBattery(id));
			}),
			{ numRuns: runs(40) },
		);
	});
});

describe('when to plug in', () => {
	it.each([
		['19:30', 5, { hour: 14, minute: 30, daysBefore: 0 }],
		['19:30', 5.04, { hour: 14, minute: 25, daysBefore: 0 }],
		['02:00', 4, { hour: 22, minute: 0, daysBefore: 1 }],
		['00:00', 30, { hour: 18, minute: 0, daysBefore: 2 }],
	] as const)('charged by %s with %d h to charge', (text, hours, at) => {
		const by = readTime(text);
		if (!by) throw new Error(text);
		expect(plugInBy(by, hours)).toEqual(at);
	});

	it('is never later than the hours say, nor five minutes early', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 1439 }), fc.double({ min: 0, max: 60, noNaN: true }), (minute, hours) => {
				const at = plugInBy({ hour: Math.floor(minute / 60), minute: minute % 60 }, hours);
				const left = minute - (at.hour * 60 + at.minute - at.daysBefore * 1440) - hours * 60;
				expect(left).toBeGreaterThan(-1e-3);
				expect(left).toBeLessThan(5.001);
			}),
			{ numRuns: runs(200) },
		);
		for (const bad of ['', '24:00', '7', '7:60', 'noon']) expect(readTime(bad)).toBeNull();
	});
});
