import { describe, expect, test } from 'vitest';
import {
	EIA485,
	isOverloaded,
	lineOhms,
	mostReceivers,
	totalUnitLoads,
	unitLoadsLeft,
} from '../../shared/dmx/index.ts';

// EIA-485 as E1.11 uses it. `read` means read in a text that restates the standard, named beside the check.

describe('EIA-485: loads', () => {
	test('32 unit loads on one line (read: interface makers’ notes)', () => {
		expect(EIA485.mostUnitLoads).toBe(32);
		expect(isOverloaded(new Array<number>(32).fill(1))).toBe(false);
		expect(isOverloaded(new Array<number>(33).fill(1))).toBe(true);
	});

	test('receivers of an eighth of a unit load: 256 (read: a transceiver’s manual)', () => {
		expect(mostReceivers(1 / 8)).toBe(256);
		expect(totalUnitLoads(new Array<number>(256).fill(1 / 8))).toBe(32);
	});

	test('sixteen whole loads and sixty-four eighths: 8 loads of 32 are left (recalculated)', () => {
		const loads = [...new Array<number>(16).fill(1), ...new Array<number>(64).fill(1 / 8)];
		expect(unitLoadsLeft(loads)).toBe(8);
		expect(unitLoadsLeft(new Array<number>(40).fill(1))).toBe(0);
		expect(unitLoadsLeft([])).toBe(EIA485.mostUnitLoads);
	});

	test('receivers of a quarter and a half: 128 and 64 (recalculated)', () => {
		expect([mostReceivers(1 / 4), mostReceivers(1 / 2)]).toEqual([128, 64]);
	});

	test('a unit load is at least 12 kΩ (read: a journal’s table of the standard)', () => {
		expect(EIA485.unitLoadOhms).toBe(12_000);
	});

	test('an eighth of a unit load is 96 kΩ (read: a transceiver’s manual)', () => {
		expect(lineOhms(0, 1 / 8)).toBeCloseTo(96_000, 6);
	});
});

describe('E1.11: the terminator', () => {
	test('is 120 Ω across pins 2 and 3 at the far end (read: tables that quote the standard)', () => {
		expect(EIA485.terminatorOhms).toBe(120);
		expect(lineOhms(1, 0)).toBeCloseTo(120, 9);
	});

	test('two of them and a full line of receivers come near the 54 Ω that drivers are tested into (recalculated: 51.7)', () => {
		expect(EIA485.testLoadOhms).toBe(54);
		expect(lineOhms(2, 32)).toBeCloseTo(1 / (2 / 120 + 32 / 12_000), 9);
		expect(lineOhms(2, 32)).toBeCloseTo(51.72, 2);
	});
});

describe('EIA-485: volts (read: a journal’s table of the standard)', () => {
	test('a driver makes at least 1.5 V into 54 Ω', () => {
		expect([EIA485.leastDriveVolts, EIA485.testLoadOhms]).toEqual([1.5, 54]);
	});

	test('a receiver is sure of a bit from 200 mV', () => {
		expect(EIA485.receiverVolts).toBe(0.2);
	});

	test('common mode of −7 to +12 V is borne', () => {
		expect(EIA485.commonModeVolts).toEqual({ lowest: -7, highest: 12 });
	});
});
