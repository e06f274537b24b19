import { describe, expect, test } from 'vitest';
import {
	addressOf,
	DIP_REACH,
	DIP_WEIGHTS,
	type DipWiring,
	switchesFor,
	switchesUp,
	upSwitches,
} from '../../../shared/dmx/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { saidBy, thrownBy } from '../thrown.ts';

const wirings: DipWiring[] = ['sum', 'sum-plus-one'];
const addresses = Array.from({ length: 512 }, (_, i) => i + 1);

describe.each(wirings)('switches wired as %s', (wiring) => {
	test('every address they reach comes back as itself', () => {
		const { lowest, highest } = DIP_REACH[wiring];
		for (const address of addresses.filter((it) => it >= lowest && it <= highest)) {
			expect(addressOf(switchesFor(address, wiring), wiring)).toBe(address);
		}
	});

	test('all 512 settings give an address, and no two of them the same, but for all down by the plain sum', () => {
		const read = Array.from({ length: 512 }, (_, bits) =>
			addressOf(
				DIP_WEIGHTS.map((weight) => (bits & weight) > 0),
				wiring,
			),
		);
		expect(new Set(read).size).toBe(wiring === 'sum' ? 511 : 512);
		expect(read[0]).toBe(DIP_REACH[wiring].allDown);
		expect(Math.max(...read)).toBe(DIP_REACH[wiring].highest);
	});

	test.each([0, 513, 1.5])('%s is no address', (address) => {
		expect(thrownBy(() => switchesFor(address, wiring)).code).toBe('address.range');
	});
});

test('the same switches read one apart by the two wirings, but for all down', () => {
	for (const address of addresses.slice(0, 511)) {
		expect(addressOf(switchesFor(address, 'sum'), 'sum-plus-one')).toBe(address + 1);
	}
	expect(addressOf(switchesUp([]), 'sum')).toBe(addressOf(switchesUp([]), 'sum-plus-one'));
});

test('512 cannot be set by the plain sum, and that is said', () => {
	const error = thrownBy(() => switchesFor(512, 'sum'));
	expect([error.code, errorText(error)]).toEqual([
		'dip.unreachable',
		'Nine switches read as a plain sum end at 511; 512 can’t be set. Take a lower start address.',
	]);
	expect(upSwitches(switchesFor(512, 'sum-plus-one'))).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
});

test('lists of raised switches come back as themselves', () => {
	for (const address of addresses.slice(0, 511)) {
		const switches = switchesFor(address, 'sum');
		expect(switchesUp(upSwitches(switches))).toEqual(switches);
	}
});

test('ten switches are not taken for nine, and there is no switch 0 or 10 in an address', () => {
	const ten = thrownBy(() => addressOf(new Array<boolean>(10).fill(false), 'sum'));
	expect([ten.code, errorText(ten)]).toEqual([
		'dip.count',
		'An address is read from 9 switches; found 10. Leave out those with other jobs.',
	]);
	expect(thrownBy(() => switchesUp([1, 10])).path).toBe('[1]');
	expect(saidBy(() => switchesUp([0]))).toBe('An address switch is a whole number from 1 to 9; found 0.');
});

test('the tables cannot be changed by a caller', () => {
	expect([DIP_WEIGHTS, DIP_REACH, DIP_REACH.sum].every(Object.isFrozen)).toBe(true);
});
