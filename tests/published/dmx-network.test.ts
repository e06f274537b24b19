import { describe, expect, test } from 'vitest';
import { E131, e131Lengths, isLate, LAST_UNIVERSE, multicastAddress, toAbsolute } from '../../shared/dmx/index.ts';

// ANSI E1.31 (levels over a network), read in restatements of the standard.

describe('E1.31: where a universe is sent', () => {
	test('port 5568 (read)', () => {
		expect(E131.port).toBe(5568);
	});

	test.each([
		[1, '239.255.0.1'],
		[256, '239.255.1.0'],
		[7962, '239.255.31.26'],
	])('universe %i goes to %s (read)', (universe, address) => {
		expect(multicastAddress(universe)).toBe(address);
	});

	test('the address is 239.255., the high byte, the low byte; the last universe is 239.255.249.255 (recalculated)', () => {
		expect(multicastAddress(63999)).toBe('239.255.249.255');
	});

	test('universes are 1 to 63999 (read)', () => {
		expect(LAST_UNIVERSE).toBe(63999);
		expect(toAbsolute(63999, 512)).toBe(63999 * 512);
		for (const universe of [0, 64000]) expect(() => multicastAddress(universe)).toThrow('from 1 to 63999');
	});
});

describe('E1.31: loss and order', () => {
	test('data on the network is lost after 2.5 s (read)', () => {
		expect(E131.lossSeconds).toBe(2.5);
	});

	test('a packet 0 to 19 steps behind is thrown away: −20 < new − last ≤ 0 (read)', () => {
		expect(isLate(100, 100)).toBe(true);
		expect(isLate(81, 100)).toBe(true);
	});

	test('one 20 steps behind is a fresh start and taken (read)', () => {
		expect(isLate(80, 100)).toBe(false);
	});

	test('the next one is taken, also over the turn from 255 to 0: the difference is a signed byte (read)', () => {
		expect(isLate(101, 100)).toBe(false);
		expect(isLate(0, 255)).toBe(false);
		expect(isLate(255, 0)).toBe(true);
	});
});

describe('E1.31: lengths', () => {
	test('a full packet is 638 bytes (read)', () => {
		expect(e131Lengths(512).packet).toBe(638);
	});

	test('its layers give their lengths as 622, 600 and 523 (read)', () => {
		const { root, framing, levels } = e131Lengths(512);
		expect([root, framing, levels]).toEqual([622, 600, 523]);
	});
});
