import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	breakToBreak,
	carriesLevels,
	conductorOf,
	E120,
	E131,
	EIA485,
	e131Lengths,
	isDataLost,
	isLate,
	isOverloaded,
	lineOhms,
	mostReceivers,
	multicastAddress,
	PINS,
	packetMicroseconds,
	pinOf,
	rdmChecksum,
	refreshRate,
	START_CODES,
	startCodeOf,
	TIMING,
	totalUnitLoads,
} from '../../../shared/dmx/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { saidBy, thrownBy } from '../thrown.ts';

// How the numbers of the standards behave here; whether they are the right numbers is for tests/published/.

function isDeepFrozen(value: unknown): boolean {
	return (
		typeof value !== 'object' || value === null || (Object.isFrozen(value) && Object.values(value).every(isDeepFrozen))
	);
}

test('no table of the standards can be changed by a caller', () => {
	for (const table of [TIMING, START_CODES, PINS, EIA485, E120, E131]) expect(isDeepFrozen(table)).toBe(true);
});

describe('timing', () => {
	test('each slot more adds a slot time, and idle times add up', () => {
		const shape = { break: 176, markAfterBreak: 20, betweenSlots: 3, beforeBreak: 100 };
		for (let slots = 1; slots <= 512; slots++) {
			expect(packetMicroseconds(slots) - packetMicroseconds(slots - 1)).toBe(TIMING.slotUs);
			expect(packetMicroseconds(slots, shape) - packetMicroseconds(slots - 1, shape)).toBe(TIMING.slotUs + 3);
		}
		expect(packetMicroseconds(0, shape)).toBe(176 + 20 + 44 + 100);
	});

	test('a short packet waits for the least time from break to break; a longer one never does', () => {
		for (let slots = 0; slots <= 512; slots++) {
			const waits = packetMicroseconds(slots) < TIMING.transmitter.shortestPacketUs;
			expect(breakToBreak(slots)).toBe(waits ? TIMING.transmitter.shortestPacketUs : packetMicroseconds(slots));
			expect(waits).toBe(slots < 24);
			expect(refreshRate(slots) * breakToBreak(slots)).toBeCloseTo(1_000_000, 6);
		}
	});

	test('data is lost at 1.25 seconds to the millisecond', () => {
		expect([0, 1000, 1249, 1250, 5000].map(isDataLost)).toEqual([false, false, false, true, true]);
	});

	test.each([
		[() => packetMicroseconds(513), 'slots', 'The number of data channels is a whole number from 0 to 512; found 513.'],
		[
			() => packetMicroseconds(1, { break: 88 }),
			'break',
			'A break, in microseconds, is a number from 92 to 1000000; found 88.',
		],
		[
			() => refreshRate(1, { markAfterBreak: 8 }),
			'markAfterBreak',
			'A mark after break, in microseconds, is a number from 12 to 1000000; found 8.',
		],
		[
			() => breakToBreak(1, { betweenSlots: -1 }),
			'betweenSlots',
			'An idle time between channels, in microseconds, is a number from 0 to 1000000; found -1.',
		],
	])('refuses what a transmitter may not send, in words (%#)', (act, path, sentence) => {
		const error = thrownBy(act);
		expect([error.path, errorText(error)]).toEqual([path, sentence]);
	});
});

describe('start codes', () => {
	test('levels come with 0 alone, of all 256', () => {
		const carrying = Array.from({ length: 256 }, (_, code) => code).filter(carriesLevels);
		expect(carrying).toEqual([0]);
		expect(startCodeOf(0)?.id).toBe('levels');
	});

	test('each name and each code stands once', () => {
		expect(new Set(START_CODES.map(({ id }) => id)).size).toBe(START_CODES.length);
		expect(new Set(START_CODES.map(({ code }) => code)).size).toBe(START_CODES.length);
		for (const known of START_CODES) expect(startCodeOf(known.code)).toBe(known);
	});

	test('a code without a name has none, and 256 is no code', () => {
		expect(startCodeOf(0x01)).toBe(undefined);
		expect(thrownBy(() => startCodeOf(256)).path).toBe('code');
	});
});

describe('pins', () => {
	test('pin and conductor come back from each other', () => {
		for (const pin of [1, 2, 3, 4, 5]) expect(pinOf(conductorOf(pin))).toBe(pin);
		expect(new Set(PINS).size).toBe(5);
	});

	test('there is no pin 0 or 6', () => {
		expect(saidBy(() => conductorOf(0))).toBe('A pin is a whole number from 1 to 5; found 0.');
		expect(thrownBy(() => conductorOf(6)).code).toBe('pin.range');
	});
});

describe('loads', () => {
	test('as many receivers as are allowed are no overload, and one more is', () => {
		for (const load of [1, 1 / 2, 1 / 4, 1 / 8]) {
			const many = new Array<number>(mostReceivers(load)).fill(load);
			expect(isOverloaded(many)).toBe(false);
			expect(isOverloaded([...many, load])).toBe(true);
		}
	});

	test('unit loads add up in any order', () => {
		fc.assert(
			fc.property(fc.array(fc.constantFrom(1, 0.5, 0.25, 0.125), { maxLength: 60 }), (loads) => {
				expect(totalUnitLoads(loads)).toBe(totalUnitLoads(loads.slice().reverse()));
			}),
			{ numRuns: runs(100) },
		);
	});

	test('the line gets heavier with each terminator and each load, and is open with neither', () => {
		expect(lineOhms(0, 0)).toBe(Number.POSITIVE_INFINITY);
		expect(lineOhms(1, 0)).toBeCloseTo(120, 9);
		expect(lineOhms(2, 0)).toBeCloseTo(60, 9);
		expect(lineOhms(0, 32)).toBeCloseTo(375, 9);
		for (let loads = 1; loads <= 32; loads++) expect(lineOhms(1, loads)).toBeLessThan(lineOhms(1, loads - 1));
	});

	test('refuses a load of nothing by its place', () => {
		expect(thrownBy(() => totalUnitLoads([1, 0])).path).toBe('loads[1]');
		expect(thrownBy(() => mostReceivers(33)).code).toBe('load.range');
		expect(saidBy(() => lineOhms(-1, 0))).toContain('The number of terminators is a whole number from 0');
	});
});

describe('levels over a network', () => {
	test('every universe has an address of its own', () => {
		const all = new Set<string>();
		for (let universe = 1; universe <= 63999; universe++) all.add(multicastAddress(universe));
		expect(all.size).toBe(63999);
		expect(thrownBy(() => multicastAddress(64000)).code).toBe('universe.range');
	});

	test('late is the same rule at every last number: of the 256 next ones, 20 are late', () => {
		for (let last = 0; last < 256; last++) {
			const late = Array.from({ length: 256 }, (_, sequence) => sequence).filter((sequence) => isLate(sequence, last));
			const expected = Array.from({ length: 20 }, (_, back) => (last - back + 256) % 256).sort((a, b) => a - b);
			expect(late).toEqual(expected);
		}
		expect(thrownBy(() => isLate(256, 0)).path).toBe('sequence');
	});

	test('a packet has at least one level', () => {
		expect(saidBy(() => e131Lengths(0))).toBe('The number of levels is a whole number from 1 to 512; found 0.');
	});
});

describe('the checksum of an RDM message', () => {
	test('is the sum of its bytes, modulo 65536, and does not hang on their order', () => {
		fc.assert(
			fc.property(fc.uint8Array({ maxLength: 600 }), (bytes) => {
				const sum = bytes.reduce((total, byte) => total + byte, 0);
				expect(rdmChecksum(bytes)).toBe(sum % 65536);
				expect(rdmChecksum([...bytes].reverse())).toBe(sum % 65536);
			}),
			{ numRuns: runs(100) },
		);
	});

	test('wraps at 65536', () => {
		expect(rdmChecksum(new Uint8Array(257).fill(255))).toBe(65535);
		expect(rdmChecksum([...new Uint8Array(257).fill(255), 1])).toBe(0);
	});

	test('names the byte that is none', () => {
		const error = thrownBy(() => rdmChecksum([1, 2, 256]));
		expect([error.path, errorText(error)]).toEqual(['bytes[2]', 'A byte is a whole number from 0 to 255; found 256.']);
	});
});
