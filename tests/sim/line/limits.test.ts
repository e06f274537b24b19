import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { LINE_KINDS } from '../../../sim/line/devices.ts';
import { LINE_LIMITS, LINE_RATES } from '../../../sim/line/index.ts';
import { ramp } from '../../../sim/line/limits.ts';

describe('the numbers', () => {
	test('in the table of the door’s page are those in force, all of them', () => {
		const page = readFileSync(new URL('../../../sim/line/index.ts', import.meta.url), 'utf8');
		const rows = [...page.matchAll(/^ \* \| (\w+) \| ([\d.]+) \|$/gm)].map((row) => [row[1], Number(row[2])]);
		expect(Object.fromEntries(rows)).toEqual(LINE_LIMITS);
	});

	test('of a kind of box: what its input puts on the line, and what it needs', () => {
		const kinds = Object.entries(LINE_KINDS).map(([kind, { input, needsPower, earthed }]) => [
			kind,
			{ ...input, needsPower, earthed },
		]);
		expect(Object.fromEntries(kinds)).toEqual({
			splitter: { loads: 1, terminators: 1, needsPower: true, earthed: true },
		});
	});

	test('cannot be changed', () => {
		expect(Object.isFrozen(LINE_LIMITS) && Object.isFrozen(LINE_RATES)).toBe(true);
	});

	test('are shares, and stand in the order that is meant', () => {
		for (const rate of Object.values(LINE_RATES)) expect(rate > 0 && rate <= 1).toBe(true);
		expect(LINE_RATES.oneWireTerminated).toBeGreaterThan(LINE_RATES.oneWire);
		expect(LINE_RATES.collision).toBe(1);
		expect(Math.min(...Object.values(LINE_RATES))).toBe(LINE_RATES.least);
		// About one frame a second is the least that a person would see as a flicker.
		expect(LINE_RATES.least * 44).toBeCloseTo(1, 0);
	});

	test('a ramp is nothing up to its limit, jumps to the least that shows, and rises straight to its most', () => {
		expect([ramp(0, 10, 20, 0.5), ramp(10, 10, 20, 0.5)]).toEqual([0, 0]);
		expect(ramp(10 + 1e-9, 10, 20, 0.5)).toBeCloseTo(LINE_RATES.least, 6);
		expect(ramp(15, 10, 20, 0.5)).toBeCloseTo((LINE_RATES.least + 0.5) / 2, 12);
		expect([ramp(20, 10, 20, 0.5), ramp(99, 10, 20, 0.5)]).toEqual([0.5, 0.5]);
	});
});
