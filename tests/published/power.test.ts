import { describe, expect, it } from 'vitest';
import { amps, batteryHours, chainWatts, chargeHours, mostOnChain, wattHours } from '../../shared/power/index.ts';

// `read` means read in a text that works the example, named beside the check; `recalculated` is arithmetic on read values.

describe('energy: Wh = V × Ah', () => {
	it('12 V and 100 Ah are 1200 Wh (read: an explanation of running times)', () => {
		expect(wattHours(12, 100)).toBe(1200);
	});

	it('the 100 Wh that may fly as a spare are 6.94 Ah at 14.4 V (limit read in air carriers’ rules; recalculated)', () => {
		expect(wattHours(14.4, 6.944)).toBeCloseTo(100, 1);
	});
});

describe('hours on a battery: energy × share / watts', () => {
	it('1200 Wh, 80 % of it used, 90 % of that reaching the load, 100 W: 8.64 h (read: an engineer’s worked example)', () => {
		expect(1200 * 0.8 * 0.9).toBeCloseTo(864, 9);
		expect(batteryHours(1200, 100, 0.8 * 0.9)).toBeCloseTo(8.64, 9);
	});

	it('2000 Wh at 500 W: about 4 h (read: an explanation of running times)', () => {
		expect(batteryHours(2000, 500)).toBe(4);
	});
});

describe('hours on charge: what is missing / what goes in', () => {
	it('2 Ah at 1 A: 2 h, and from half full 1 h, losses aside (read: a battery maker’s explanation; here at 3.7 V)', () => {
		expect(chargeHours(wattHours(3.7, 2), 3.7)).toBeCloseTo(2, 12);
		expect(chargeHours(wattHours(3.7, 2) / 2, 3.7)).toBeCloseTo(1, 12);
	});

	it('with losses it takes longer: 2 h at 85 % come to 2.35 h (recalculated from the same texts)', () => {
		expect(chargeHours(2, 1, 0.85)).toBeCloseTo(2.353, 3);
	});
});

describe('current: I = P / V', () => {
	it.each([
		[1000, 230, 4.35],
		[1150, 230, 5],
		[2000, 230, 8.7],
		[2300, 230, 10],
		[1200, 120, 10],
		[1200, 240, 5],
	])('%i W at %i V: %f A (read: school and technicians’ pages on fuses)', (watts, volts, current) => {
		expect(amps(watts, volts)).toBeCloseTo(current, 1);
	});

	it('with a power factor: 120 W at 230 V and 0.9 are 0.58 A (formula I = P / (V × PF) read; recalculated)', () => {
		expect(amps(120, 230, 0.9)).toBeCloseTo(0.58, 2);
	});

	it('a chain adds up: five heaters of 1150 W are 25 A, and 13 A carry two (recalculated)', () => {
		expect(amps(chainWatts(new Array<number>(5).fill(1150)), 230)).toBe(25);
		expect(mostOnChain(1150, 13, 230)).toBe(2);
	});
});
