import { describe, expect, it } from 'vitest';
import { checks, mendTried, SPOTS } from '#words/checks/index.ts';
import { complaints } from '#words/complaints/index.ts';
import { readSheet } from '../../../shared/sheet/index.ts';
import { faultOf, placedFaults } from '../../../sim/fault/index.ts';
import { checksOf } from '../../../sim/finder/checks/index.ts';
import { type Check, complaintsOf, meantWitness, tableFor, type Witness } from '../../../sim/finder/index.ts';
import { faultyWitness } from '../../../sim/finder/witness.ts';
import { errorText } from '../../../src/wording/error.ts';
import { checkDoes, checkTitle, complaintText, outcomeText, spotOf } from '../../../src/wording/index.ts';
import { thrownBy } from '../../shared/thrown.ts';
import { boxed } from '../../sim/finder/boxed.ts';
import { led, mixed } from '../../sim/rig/sheets.ts';
import { kept, sheets } from './finderSheets.ts';
import { hasNoSeams, isShort, readsWell } from './wording.ts';

const meant = new Map(sheets.map((sheet) => [sheet, meantWitness(sheet)]));
const meantOf = (sheet: (typeof sheets)[number]): Witness => meant.get(sheet) as Witness;

/** Words of a check that any of its answers may be shown beside. */
function readsWellAsked(sheet: (typeof sheets)[number], check: Check): void {
	const title = checkTitle(sheet, meantOf(sheet).rig, check);
	hasNoSeams(title);
	expect(title).toMatch(/^[A-Z].*[^.]$/);
	const does = checkDoes(sheet, meantOf(sheet).rig, check);
	readsWell(does);
	// who is asked, and what is looked at, come before hands
	isShort(does, check.cautions.length > 0 ? 8 : 6);
	expect(SPOTS).toContain(spotOf(check));
}

function readsWellAnswered(sheet: (typeof sheets)[number], check: Check, outcomes: readonly string[]): void {
	const said = outcomes.map((outcome) => outcomeText(sheet, meantOf(sheet).rig, check, outcome));
	for (const text of said) {
		hasNoSeams(text);
		expect(text).toMatch(/^[A-Z0-9].*[^.]$/);
		expect(text.split(' ').length).toBeLessThanOrEqual(30);
	}
	expect(new Set(said).size, check.id).toBe(said.length);
}

describe('the words of a check', () => {
	// one fixture of each kind: every check of a rig is asked of the one complained of
	const places = [
		[mixed, 'wash-1'],
		[mixed, 'bar-1'],
		[mixed, 'old-1'],
		[led, 'lead'],
		[led, 'f-2'],
		[kept, 'q-1'],
		[kept, 'q-2'],
		[kept, 'q-3'],
		[kept, 'q-4'],
		[boxed, 'wash-1'],
	] as const;
	const everyCheck = places.map(([sheet, fixture]) => {
		const faults = placedFaults(sheet).map(({ placed }) => placed);
		const repairs = new Map(
			faults.map(({ fault, place }) => [`${faultOf(fault).repair}@${place}`, { id: faultOf(fault).repair, place }]),
		);
		const all = checksOf(sheet, meantOf(sheet), { kind: 'dark', fixture }, [...repairs.values()]);
		return { sheet, faults, checks: all };
	});

	it('read well, and no two checks of a rig have one title', () => {
		for (const { sheet, checks: all } of everyCheck) {
			for (const check of all) readsWellAsked(sheet, check);
			const titles = all.map((check) => checkTitle(sheet, meantOf(sheet).rig, check));
			expect(titles.filter((title, i) => titles.indexOf(title) !== i)).toEqual([]);
		}
	});

	it('have an answer for all that any fault can make it show, no two alike, and for nothing that none can', () => {
		const shown = new Set<string>();
		for (const { sheet, faults, checks: all } of everyCheck) {
			const rigs = faults.map((fault) => faultyWitness(meantOf(sheet), [fault]));
			const own = all.filter(({ kind }) => !kind.startsWith('mend-'));
			for (const check of own) {
				const outcomes = [...new Set(rigs.map((rig) => check.read(rig)))];
				readsWellAnswered(sheet, check, outcomes);
				for (const outcome of outcomes) shown.add(`${check.kind}: ${outcome}`);
			}
		}
		const worded = Object.entries(checks).flatMap(([kind, { outcomes }]) =>
			Object.keys(outcomes).map((outcome) => `${kind}: ${outcome}`),
		);
		const never = worded.filter((each) => !shown.has(each));
		// lit with its data indicator out or blinking takes two faults, or a look kept from before
		expect(['line-straight: out', 'line-straight: blinking']).toEqual(expect.arrayContaining(never));
	});

	it('have an answer for two faults at once that no single one gives', () => {
		const check = checksOf(mixed, meantOf(mixed), { kind: 'dark', fixture: 'wash-1' }, []).find(
			({ kind }) => kind === 'line-straight',
		) as Check;
		const both = faultyWitness(meantOf(mixed), [
			{ fault: 'receiver-dead', place: 'wash-1' },
			{ fault: 'left-on-held', place: 'wash-1', detail: 'held' },
		]);
		expect(outcomeText(mixed, meantOf(mixed).rig, check, check.read(both))).toBe('Lit, data indicator out');
	});

	it.each([
		[mixed, { kind: 'dark', fixture: 'bar-1' }],
		[mixed, { kind: 'no-answer', fixture: 'wash-1' }],
		[mixed, { kind: 'flicker', fixture: 'old-1' }],
		[led, { kind: 'follower-silent', fixture: 'f-3' }],
		[kept, { kind: 'remote-moves-wrong', fixture: 'q-1' }],
	] as const)('stand for the whole outcome table of a complaint: %#', (sheet, complaint) => {
		const bench = tableFor(sheet, complaint, { meant: meantOf(sheet) });
		expect(bench.checks.length).toBeGreaterThan(0);
		for (const [i, check] of bench.checks.entries()) {
			readsWellAsked(sheet, check);
			readsWellAnswered(sheet, check, [...new Set(bench.outcomes[i])]);
		}
	});
});

describe('what a check says', () => {
	const says = (sheet: (typeof sheets)[number], kind: string, place: string, outcome: string, other?: string): string =>
		outcomeText(sheet, meantOf(sheet).rig, other === undefined ? { kind, place } : { kind, place, other }, outcome);
	const does = (sheet: (typeof sheets)[number], kind: string, place: string): string =>
		checkDoes(sheet, meantOf(sheet).rig, { kind, place });

	it.each([
		[mixed, 'panel-address', 'bar-1', 'It reads 11'],
		[mixed, 'panel-mode', 'wash-1', 'It reads SL 9 (9 channels)'],
		[mixed, 'panel-work', 'bar-1', 'It reads Desk'],
		[led, 'panel-held', 'lead', 'It reads ROSE'],
		[mixed, 'switches', 'old-1', '1, 3 and 5 up, the others down'],
		[mixed, 'slides', 'old-1', 'Slots at 5, Data gone at Dark and Dimming at Straight'],
		[mixed, 'colour', 'wash-1', 'Amber, as it should be'],
		[mixed, 'desk-patch', 'bar-1', 'Universe 1, start address 11, mode “Whole bar and functions, 9 channels”'],
		[mixed, 'desk-colour-strips', 'wash-1', 'Amber at 200 (78 %), the others at 0'],
		[mixed, 'desk-universe', 'b', 'Universe 2'],
		[mixed, 'desk-restart', 'wash-1', 'It keeps its look'],
		[mixed, 'desk-restart', 'old-1', 'It’s dark meanwhile'],
		[kept, 'desk-restart', 'q-3', 'It runs its own programme'],
		[mixed, 'cable-length', 'c1', 'About 10 m'],
		[kept, 'remote-code', 'remote', 'Code 3'],
	] as const)('goes by the sheet: %#', (sheet, kind, place, text) => {
		expect(says(sheet, kind, place, 'as-meant')).toBe(text);
	});

	it('follows the sheet when it changes', () => {
		const sheet = readSheet({
			...mixed,
			fixtures: mixed.fixtures.map((each) =>
				each.id === 'bar-1' ? { ...each, settings: { address: 77, mode: 'halves' } } : each,
			),
		});
		const { rig } = meantWitness(sheet);
		expect(outcomeText(sheet, rig, { kind: 'panel-address', place: 'bar-1' }, 'as-meant')).toBe('It reads 77');
		expect(outcomeText(sheet, rig, { kind: 'panel-mode', place: 'bar-1' }, 'as-meant')).toBe('It reads Halves 11');
	});

	it('leads to a setting by what the display shows, and past a lock', () => {
		expect(does(mixed, 'panel-address', 'wash-1')).toMatch(
			/^In a show ask first: .*\. On its display go to “DATA”, then “STRT”\. Press Set/,
		);
		expect(does(mixed, 'panel-mode', 'bar-1')).toBe(
			'In a show ask first: some panels act as you step. On its display go to “Slots used” and read the line below. Change nothing.',
		);
		expect(does(kept, 'panel-work', 'q-1')).toMatch(/If it says it’s locked, hold Set for 2 seconds\. On its display/);
	});

	it('names the cable that comes out and goes back, and none where the line ends', () => {
		expect(does(mixed, 'line-ended', 'wash-1')).toMatch(/^Unplug cable 2 from its data out.*put the cable back\.$/);
		expect(does(mixed, 'line-ended', 'old-1')).not.toMatch(/cable/);
		expect(does(led, 'line-straight', 'f-3')).toMatch(/^Run a known-good data cable from leader, data out to its/);
	});

	it('of two fixtures says which is which', () => {
		const check = { kind: 'neighbour-strips', place: 'bar-1', other: 'old-1' };
		expect(checkTitle(mixed, meantOf(mixed).rig, check)).toBe('Does bar 1 answer faders of old wash?');
		expect(checkDoes(mixed, meantOf(mixed).rig, check)).toMatch(
			/^Say aloud that light is coming, and watch the wall that bar 1 lights\. At the desk, take the faders of old wash/,
		);
	});

	it('of a repair tried is the repair, and whether it cleared it', () => {
		const check = { kind: 'mend-switch-on', place: 'bar-1' };
		expect(checkTitle(mixed, meantOf(mixed).rig, check)).toBe('Switch on bar 1');
		expect(checkDoes(mixed, meantOf(mixed).rig, check)).toBe(
			'Switch it on at its own power switch. Then check if that cleared it.',
		);
		for (const [outcome, text] of Object.entries(mendTried.outcomes))
			expect(says(mixed, 'mend-switch-on', 'bar-1', outcome)).toBe(text);
		expect(spotOf(check)).toBe('power-switch');
	});

	it('is nothing for a kind or an outcome that is not there, and says what is', () => {
		const outcome = thrownBy(() => says(mixed, 'lit', 'bar-1', 'purple'));
		expect([outcome.code, errorText(outcome)]).toEqual([
			'words.outcome',
			"The check 'lit' has no words for 'purple'. It has: lit, dark.",
		]);
		const kind = thrownBy(() => spotOf({ kind: 'mend-nothing', place: 'bar-1' }));
		expect([kind.code, errorText(kind)]).toEqual([
			'words.check',
			"There are no words for a check 'mend-nothing'. Add them to the checks.",
		]);
	});
});

describe('the words of a complaint', () => {
	it('are tried for every complaint there is, and read well', () => {
		const tried = new Set<string>();
		for (const sheet of sheets) {
			for (const complaint of complaintsOf(meantOf(sheet), sheet)) {
				tried.add(complaint.kind);
				const { says, short, asks, more } = complaintText(sheet, complaint);
				hasNoSeams(says);
				expect(says.toLowerCase()).toContain(
					sheet.fixtures.find(({ id }) => id === complaint.fixture)?.name.toLowerCase(),
				);
				expect(asks).toMatch(/^Why .*\b(I|my)\b.*\?$/);
				readsWell(more);
				isShort(more, 1);
				expect(short).toMatch(/^[A-Z][^.{]{2,36}$/);
			}
		}
		expect([...tried].sort()).toEqual(Object.keys(complaints).sort());
	});

	it('ask different things', () => {
		for (const key of ['asks', 'short'] as const) {
			const all = Object.values(complaints).map((each) => each[key]);
			expect(new Set(all).size).toBe(all.length);
		}
	});
});
