import { describe, expect, test } from 'vitest';
import { addressOf, DIP_WEIGHTS, switchesFor, switchesUp, upSwitches } from '../../shared/dmx/index.ts';
import { saidBy } from '../shared/thrown.ts';

// Address tables of the trade, as makers and technicians print them.

describe('DIP switches: worked addresses', () => {
	test.each([
		{ address: 10, up: [2, 4], source: 'read: a maker’s appendix' },
		{ address: 24, up: [4, 5], source: 'read: the same appendix' },
		{ address: 233, up: [1, 4, 6, 7, 8], source: 'read: the same appendix, worked by subtraction' },
		{ address: 247, up: [1, 2, 3, 5, 6, 7, 8], source: 'read: a technicians’ chart' },
		{ address: 6, up: [2, 3], source: 'read: a second maker’s manual' },
		{ address: 11, up: [1, 2, 4], source: 'read: the same manual' },
		{ address: 16, up: [5], source: 'read: the same manual' },
		{ address: 13, up: [1, 3, 4], source: 'read: a third manual' },
	])('$address is $up ($source)', ({ address, up }) => {
		expect(upSwitches(switchesFor(address, 'sum'))).toEqual(up);
		expect(addressOf(switchesUp(up), 'sum')).toBe(address);
	});
});

describe('DIP switches: weights and reach', () => {
	test('switches 1 to 9 are worth 1 2 4 8 16 32 64 128 256 (read: a technicians’ chart)', () => {
		expect(DIP_WEIGHTS).toEqual([1, 2, 4, 8, 16, 32, 64, 128, 256]);
	});

	test.each([1, 2, 4, 8, 16, 32, 64, 128, 256])('one switch alone sets %i (read: a maker’s table)', (address) => {
		const up = upSwitches(switchesFor(address, 'sum'));
		expect(up).toEqual([Math.log2(address) + 1]);
	});

	test('all nine up is 511, the most a plain sum reaches (read; recalculated)', () => {
		expect(addressOf(switchesUp([1, 2, 3, 4, 5, 6, 7, 8, 9]), 'sum')).toBe(511);
		expect(saidBy(() => switchesFor(512, 'sum'))).toContain('512 can’t be set');
	});

	test('all down by the plain sum is read as 1 (read: one of three customs; stand-alone is another)', () => {
		expect(addressOf(switchesUp([]), 'sum')).toBe(1);
	});

	test('by zero-based wiring all down is 1 and all up 512 (read)', () => {
		expect(addressOf(switchesUp([]), 'sum-plus-one')).toBe(1);
		expect(addressOf(switchesUp([1, 2, 3, 4, 5, 6, 7, 8, 9]), 'sum-plus-one')).toBe(512);
	});

	test('by zero-based wiring 10 is what reads 9 by the sum, 1 and 4 (recalculated)', () => {
		expect(upSwitches(switchesFor(10, 'sum-plus-one'))).toEqual([1, 4]);
	});
});
