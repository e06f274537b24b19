import { describe, expect, test } from 'vitest';
import {
	breakToBreak,
	carriesLevels,
	conductorOf,
	isDataLost,
	LAST_SLOT,
	packetMicroseconds,
	refreshRate,
	START_CODES,
	startCodeOf,
	TIMING,
	TOP_LEVEL,
} from '../../shared/dmx/index.ts';

// ANSI E1.11 (DMX512-A). The standard itself was not to be had: `read` means read in a text that restates it, named beside
// the check; `recalculated` is arithmetic on read values.

describe('E1.11: bits and slots', () => {
	test('250 kbit/s, so a bit is 4 µs (read: tables of makers and drivers that quote the standard)', () => {
		expect(TIMING.bitRate).toBe(250_000);
		expect(1_000_000 / TIMING.bitRate).toBe(4);
		expect(TIMING.bitUs).toBe(4);
	});

	test('a slot is 1 start, 8 data and 2 stop bits, 44 µs (read: the same tables)', () => {
		expect(TIMING.slotUs).toBe(44);
		expect((1 + 8 + 2) * TIMING.bitUs).toBe(TIMING.slotUs);
	});

	test('at most 512 data slots of 0 to 255 behind the start code (read: the same tables)', () => {
		expect(LAST_SLOT).toBe(512);
		expect(TOP_LEVEL).toBe(2 ** 8 - 1);
		expect(() => packetMicroseconds(513)).toThrow('from 0 to 512');
	});
});

describe('E1.11: what a transmitter keeps to', () => {
	test('break at least 92 µs (read: a maker’s table of least values)', () => {
		expect(TIMING.transmitter.shortestBreakUs).toBe(92);
		expect(() => packetMicroseconds(1, { break: 91 })).toThrow('from 92');
	});

	test('mark after break at least 12 µs (read: the same table)', () => {
		expect(TIMING.transmitter.shortestMarkAfterBreakUs).toBe(12);
		expect(() => packetMicroseconds(1, { markAfterBreak: 11 })).toThrow('from 12');
	});

	test('packet 1204 µs to 1 s (read: a test instrument’s manual and a driver’s constants)', () => {
		expect(TIMING.transmitter.shortestPacketUs).toBe(1204);
		expect(TIMING.transmitter.longestPacketUs).toBe(1_000_000);
	});

	test('a full packet takes 92 + 12 + 513 × 44 = 22,676 µs (recalculated)', () => {
		expect(packetMicroseconds(512)).toBe(22_676);
		expect(breakToBreak(512)).toBe(22_676);
	});

	test('a full universe goes out 44.10 times a second (recalculated)', () => {
		expect(refreshRate(512)).toBeCloseTo(44.1, 2);
	});

	test('24 slots take exactly the least packet time, 1204 µs (recalculated)', () => {
		expect(packetMicroseconds(24)).toBe(1204);
		expect(packetMicroseconds(23)).toBeLessThan(1204);
	});

	test('below 24 slots the rate rises no further: 830.56 a second (recalculated; the 24-slot rule of thumb read in a manual)', () => {
		expect(refreshRate(24)).toBeCloseTo(830.565, 3);
		expect(refreshRate(6)).toBe(refreshRate(24));
	});

	test('a retimer with break 176, mark 12, 4 µs between slots and 1 ms before the break gives 25.8 ms (read: its manual)', () => {
		const slow = { break: 176, markAfterBreak: 12, betweenSlots: 4, beforeBreak: 1000 };
		expect(breakToBreak(512, slow) / 1000).toBeCloseTo(25.8, 1);
	});

	test('a test packet at its slowest (break 120, mark 16) is done within 25 ms (read: a driver that restates the annex)', () => {
		expect(packetMicroseconds(512, { break: 120, markAfterBreak: 16 })).toBeLessThanOrEqual(25_000);
	});
});

describe('E1.11: what a receiver must take', () => {
	test('break from 88 µs and mark from 8 µs (read: a driver’s constants)', () => {
		expect(TIMING.receiver.shortestBreakUs).toBe(88);
		expect(TIMING.receiver.shortestMarkAfterBreakUs).toBe(8);
	});

	test('packets of 1196 µs to 1.25 s (read: the same constants)', () => {
		expect(TIMING.receiver.shortestPacketUs).toBe(1196);
		expect(TIMING.receiver.longestPacketUs).toBe(1_250_000);
	});

	test('1196 is 24 slots at the receiver’s own least, 88 + 8 + 25 × 44 (recalculated; 1196 µs, 836 Hz read in a manual)', () => {
		const { shortestBreakUs, shortestMarkAfterBreakUs, shortestPacketUs } = TIMING.receiver;
		expect(shortestBreakUs + shortestMarkAfterBreakUs + 25 * TIMING.slotUs).toBe(shortestPacketUs);
		expect(Math.round(1_000_000 / shortestPacketUs)).toBe(836);
	});

	test('512 slots at the receiver’s least take 22,668 µs (recalculated; the figure read in the same manual)', () => {
		const { shortestBreakUs, shortestMarkAfterBreakUs } = TIMING.receiver;
		const { transmitter } = TIMING;
		const sooner =
			transmitter.shortestBreakUs + transmitter.shortestMarkAfterBreakUs - shortestBreakUs - shortestMarkAfterBreakUs;
		expect(packetMicroseconds(512) - sooner).toBe(22_668);
	});
});

describe('E1.11: loss of data', () => {
	// a maker's manual, read, says one second of the standard: that is the most of a transmitter, and leaves a receiver no room
	test('no sooner than the longest gap a receiver must take, 1.25 s (from memory)', () => {
		expect(TIMING.lossOfDataMs * 1000).toBeGreaterThanOrEqual(TIMING.receiver.longestPacketUs);
		expect(TIMING.lossOfDataMs).toBe(1250);
		expect(isDataLost(1249)).toBe(false);
		expect(isDataLost(1250)).toBe(true);
	});

	test('a transmitter at its slowest, a second from break to break (read), is never taken for lost', () => {
		expect(isDataLost(TIMING.transmitter.longestPacketUs / 1000)).toBe(false);
	});
});

describe('E1.11 and E1.20: start codes (read: a driver that restates the annex)', () => {
	test.each([
		{ code: 0x00, id: 'levels', name: 'the null start code, levels' },
		{ code: 0x17, id: 'text', name: 'ASCII text' },
		{ code: 0x55, id: 'test', name: 'test packet' },
		{ code: 0x90, id: 'utf8-text', name: 'UTF-8 text' },
		{ code: 0x91, id: 'maker', name: 'a maker’s own, by its two-byte id' },
		{ code: 0xcc, id: 'rdm', name: 'remote device management' },
		{ code: 0xcf, id: 'system-information', name: 'system information packet' },
	])('$code is $name', ({ code, id }) => {
		expect(startCodeOf(code)?.id).toBe(id);
		expect(carriesLevels(code)).toBe(code === 0);
	});

	test('none of ours lies in the reserved 92 to A9 or the prototypes’ F0 to F7 (read: the same driver)', () => {
		for (const { code } of START_CODES) {
			expect(code >= 0x92 && code <= 0xa9).toBe(false);
			expect(code >= 0xf0 && code <= 0xf7).toBe(false);
		}
	});

	test('a receiver takes no levels from a start code other than 0 (read: a maker’s and a test instrument’s manual)', () => {
		for (let code = 1; code < 256; code++) expect(carriesLevels(code)).toBe(false);
	});
});

describe('E1.11: pins (read: tables that quote the standard)', () => {
	test.each([
		{ pin: 1, conductor: 'common' },
		{ pin: 2, conductor: 'data-minus' },
		{ pin: 3, conductor: 'data-plus' },
		{ pin: 4, conductor: 'second-minus' },
		{ pin: 5, conductor: 'second-plus' },
	])('pin $pin is $conductor', ({ pin, conductor }) => {
		expect(conductorOf(pin)).toBe(conductor);
	});
});
