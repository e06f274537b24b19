import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faults } from '#words/faults/index.ts';
import { repairs } from '#words/repairs/index.ts';
import { readSheet } from '../../../shared/sheet/index.ts';
import type { PlacedFault } from '../../../sim/event/index.ts';
import { faultOf, MENDS, placedFaults, REPAIR_IDS } from '../../../sim/fault/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { faultFacts } from '../../../src/wording/fault.ts';
import {
	faultCause,
	faultName,
	faultTape,
	placeName,
	placeText,
	repairConfirm,
	repairText,
	repairTitle,
} from '../../../src/wording/index.ts';
import { settingFacts } from '../../../src/wording/sheetFacts.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../../shared/thrown.ts';
import { led, mixed } from '../../sim/rig/sheets.ts';
import { kept, sheets } from './finderSheets.ts';
import { hasNoSeams, isShort, readsWell } from './wording.ts';

const everywhere = sheets.flatMap((sheet) => placedFaults(sheet).map(({ placed }) => ({ sheet, placed })));
const at = (fault: string, place: string, detail?: string): PlacedFault => ({
	fault,
	place,
	...(detail === undefined ? {} : { detail }),
});

describe('the words of a fault', () => {
	it('are tried for every fault there is', () => {
		expect([...new Set(everywhere.map(({ placed }) => placed.fault))].sort()).toEqual(Object.keys(faults).sort());
	});

	it('read well wherever it can sit', () => {
		for (const { sheet, placed } of everywhere) {
			const [name, cause, tape] = [faultName(sheet, placed), faultCause(sheet, placed), faultTape(sheet, placed)];
			for (const line of [name, tape]) {
				hasNoSeams(line);
				expect(line).toMatch(/^[A-Z0-9].*[^.]$/);
			}
			expect(name.split(' ').length).toBeLessThanOrEqual(12);
			expect(tape.length).toBeLessThanOrEqual(40);
			readsWell(cause);
			isShort(cause, 2);
		}
	});

	// symptom: 'Switch 4 is down. That makes the start address 1' with all nine down; cause: one maker's custom told as a sum
	it('tell of all nine switches down as what differs by maker', () => {
		const sheet = readSheet({
			...mixed,
			fixtures: mixed.fixtures.map((each) =>
				each.id === 'old-1' ? { ...each, switches: Array.from({ length: 10 }, (_, i) => i === 3) } : each,
			),
		});
		expect(faultCause(sheet, at('one-switch-wrong', 'old-1', '4'))).toBe(
			'All nine address switches are down: here that is start address 1, and another maker’s reads it otherwise. It should be 8, with switch 4 up.',
		);
		expect(faultCause(sheet, at('one-switch-wrong', 'old-1', '1'))).toBe(
			'Switch 1 is up. That makes the start address 9, and it should be 8.',
		);
	});

	it('tell the ways apart in which one place can have it, by its name or by its cause', () => {
		for (const sheet of sheets) {
			const told = placedFaults(sheet).map(({ placed }) =>
				[placed.place, faultName(sheet, placed), faultCause(sheet, placed)].join(' | '),
			);
			expect(told.length - new Set(told).size).toBe(0);
		}
	});

	it('say of a setting what the rig with that fault has, and what the sheet means', () => {
		const ofFixtures = everywhere.filter(({ sheet, placed }) => sheet.fixtures.some(({ id }) => id === placed.place));
		expect(ofFixtures.length).toBeGreaterThan(200);
		for (const { sheet, placed } of ofFixtures) {
			const now = openRig(sheet, { faults: [placed] }).gear.units.get(placed.place)?.state.context.settings;
			const was = openRig(sheet).gear.units.get(placed.place)?.state.context.settings;
			if (!now || !was) throw new Error(`no ${placed.place}`);
			expect(faultFacts(sheet, placed)).toMatchObject({ ...settingFacts('is', now), ...settingFacts('meant', was) });
		}
	});

	it('name the start address that stands there and the one that should, whatever it is', () => {
		fc.assert(
			fc.property(fc.integer({ min: 2, max: 500 }), (address) => {
				const sheet = readSheet({
					...mixed,
					fixtures: mixed.fixtures.map((each) => (each.id === 'bar-1' ? { ...each, settings: { address } } : each)),
				});
				const cause = faultCause(sheet, at('wrong-address', 'bar-1', 'one-up'));
				expect(cause).toContain(`set to start address ${address + 1} and should be at ${address}.`);
				expect(faultTape(sheet, at('wrong-address', 'bar-1', 'one-up'))).toBe(`Address ${address}, 9 channels`);
			}),
			{ numRuns: runs(50) },
		);
	});

	it.each([
		[mixed, at('wrong-address', 'bar-1', 'one-up'), 'Start address one channel out'],
		[mixed, at('one-switch-wrong', 'old-1', '4'), 'Switch 4 up, and should be down'],
		[mixed, at('emitter-dead', 'bar-1', 'warm-white'), 'Warm white emitter dead'],
		[mixed, at('cable-out', 'c2', 'to'), 'Plug out of bar 1, data in'],
		[led, at('level-down', 'lead', 'low'), 'Own brightness at 5 %'],
	] as const)('go by the rig: %#', (sheet, placed, name) => {
		expect(faultName(sheet, placed)).toBe(name);
	});

	it.each([
		[
			mixed,
			at('one-switch-wrong', 'old-1', '4'),
			'Switch 4 is up. That makes the start address 29, and it should be 21.',
		],
		[mixed, at('cable-out', 'c2', 'to'), /^One of its plugs is out: the one that belongs in bar 1, data in\./],
		[mixed, at('function-left-up', 'wash-1'), /“Function” is at 32 \(13 %\), in the band “Colour change”\./],
		[kept, at('universes-exchanged', 'rig'), /It should be cable 1 in output A and cable 2 in output B\.$/],
		[kept, at('wrong-universe', 'b'), /^Output B sends universe 18 and should send 8\./],
		[mixed, at('too-many-loads', 'bar-1'), /weighs on the line like 30 more fixtures\./],
		[led, at('split-without-splitter', 'c3'), /^It starts from leader, data out, beside another plug/],
	] as const)('tell what happened: %#', (sheet, placed, cause) => {
		expect(faultCause(sheet, placed)).toMatch(cause);
	});

	it('cut what would run over the tape', () => {
		const tape = faultTape(kept, at('emitter-dead', 'q-4', 'red'));
		expect(tape).toMatch(/^BAD: the longest name/);
		expect(tape.length).toBeLessThanOrEqual(40);
	});

	it('are none for what is no fault, or cannot sit there', () => {
		expect(thrownBy(() => faultName(mixed, at('gremlins', 'bar-1'))).code).toBe('fault.unknown');
		expect(thrownBy(() => faultCause(mixed, at('battery-flat', 'bar-1'))).code).toBe('fault.place');
	});
});

describe('the words of a mend', () => {
	const placed = everywhere.map(({ sheet, placed: { fault, place } }) => ({
		sheet,
		repair: faultOf(fault).repair,
		place,
	}));

	it('are tried for every repair that some fault has', () => {
		const tried = new Set(placed.map(({ repair }) => repair));
		// no fault yet is repaired by taking a terminator out
		expect(REPAIR_IDS.filter((id) => !tried.has(id))).toEqual([]);
		expect(Object.keys(repairs).sort()).toEqual([...REPAIR_IDS].sort());
	});

	it('read well wherever it is done', () => {
		for (const { sheet, repair, place } of placed) {
			const title = repairTitle(sheet, repair, place);
			hasNoSeams(title);
			expect(title).toMatch(/^[A-Z].*[^.]$/);
			for (const text of [repairText(sheet, repair, place), repairConfirm(sheet, repair, place)]) {
				readsWell(text);
				// who is asked, and what is looked at, come before hands
				isShort(text, MENDS[repair].cautions.length > 0 ? 7 : 4);
			}
		}
	});

	it.each([
		[
			'set-panel',
			mixed,
			'bar-1',
			/start address 11, mode “Whole bar and functions, 9 channels”\. Then hold its other settings to the sheet\.$/,
		],
		['set-panel', led, 'lead', /static colour rose, at 100 % brightness, steady\. Set it to lead\./],
		['set-panel', led, 'f-1', /^At its panel, set it to follow a leader, in mode “9 channels”\./],
		['set-panel', kept, 'q-2', /^At its panel, set its own programme “Sound: next colour”/],
		['set-switches', mixed, 'old-1', /^Put switches 1, 3 and 5 up and the others down, and the slides so: Slots at 5/],
		['set-levels', mixed, 'wash-1', /Intensity at 255 \(100 %\) and Amber at 200 \(78 %\); the others at 0\.$/],
		[
			'plug-mains',
			mixed,
			'old-1',
			/^Isolate first: .* plug it into the mains link of bar 1\. The plug at the wall goes in last, once all hands are off the leads\.$/,
		],
		['right-way-round', kept, 'rig', /in its own output: cable 1 in output A and cable 2 in output B\.$/],
		['let-cool', mixed, 'bar-1', /for 10 minutes, in clear air/],
		['open-sensor', kept, 'q-1', 'At its panel, set “Remote sensor” to shut.'],
	] as const)('of %s go by the sheet: %#', (repair, sheet, place, text) => {
		expect(repairText(sheet, repair, place)).toMatch(text);
	});
});

describe('a place', () => {
	it.each([
		['wash-1', 'wash 1, house left', 'wash 1, house left'],
		['c2', 'cable 2 (from wash 1, house left, data out to bar 1, data in)', 'cable 2'],
		['old-1:out', 'old wash, data out', 'old wash, data out'],
		['a', 'desk, output A', 'output A'],
		['desk', 'desk', 'desk'],
		['remote', 'the remote', 'the remote'],
		['rig', 'the rig', 'the rig'],
	])('%s is told as %s', (place, text, name) => {
		expect(placeText(mixed, place)).toBe(text);
		expect(placeName(mixed, place)).toBe(name);
	});
});
