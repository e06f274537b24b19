import { describe, expect, test } from 'vitest';
import { E120, rdmChecksum, requireAddress, requireFootprint, startCodeOf } from '../../shared/dmx/index.ts';

// ANSI E1.20 (RDM): where the words personality, footprint and start address are pinned down.

describe('E1.20: parameter ids (read: a network dissector’s table)', () => {
	test.each([
		{ name: 'DEVICE_INFO', id: 0x0060, ours: E120.parameters.deviceInfo },
		{ name: 'DMX_PERSONALITY', id: 0x00e0, ours: E120.parameters.personality },
		{ name: 'DMX_PERSONALITY_DESCRIPTION', id: 0x00e1, ours: E120.parameters.personalityDescription },
		{ name: 'DMX_START_ADDRESS', id: 0x00f0, ours: E120.parameters.startAddress },
		{ name: 'SLOT_INFO', id: 0x0120, ours: E120.parameters.slotInfo },
		{ name: 'IDENTIFY_DEVICE', id: 0x1000, ours: E120.parameters.identify },
	])('$name is $id', ({ id, ours }) => {
		expect(ours).toBe(id);
	});
});

describe('E1.20: ranges', () => {
	test('start addresses are 1 to 512 (read: a maker’s list of parameters)', () => {
		expect(E120.startAddress).toEqual({ lowest: 1, highest: 512 });
		expect([1, 512].map((address) => requireAddress(address))).toEqual([1, 512]);
		for (const address of [0, 513, 0xffff]) expect(() => requireAddress(address)).toThrow('from 1 to 512');
	});

	test('a device without slots gives FFFF (read: two threads of an open-source RDM project)', () => {
		expect(E120.noStartAddress).toBe(0xffff);
	});

	test('a footprint is 0 to 512, and 0 means no slots (read as above for 0; 512 from memory)', () => {
		expect(E120.footprint).toEqual({ lowest: 0, highest: 512 });
		expect(requireFootprint(E120.footprint.highest)).toBe(512);
		expect(() => requireFootprint(E120.footprint.highest + 1)).toThrow('from 1 to 512');
	});

	test('personalities are numbered 1 to 255 (from memory)', () => {
		expect(E120.personality).toEqual({ lowest: 1, highest: 255 });
	});
});

describe('E1.20: the example message', () => {
	const message = 'CC 01 19 12 34 56 78 9A BC CB A9 87 65 43 21 00 01 00 00 00 20 00 30 01 04'
		.split(' ')
		.map((byte) => Number.parseInt(byte, 16));

	test('has the checksum 06 6A (read: the standard’s errata; the sum recalculated)', () => {
		expect(rdmChecksum(message)).toBe(0x066a);
	});

	test('is as long as its third byte says, checksum not counted (read: a driver’s table of the message)', () => {
		expect(message).toHaveLength(message[2] ?? 0);
	});

	test('starts with the start code CC, so no fixture takes levels from it (read: the same table)', () => {
		expect(startCodeOf(message[0] ?? 0)?.id).toBe('rdm');
	});
});
