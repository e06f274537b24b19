import { describe, expect, test } from 'vitest';
import { E120, EIA485, highestStart, howManyFit, isOverloaded, joinWord, runsPast } from '../../shared/dmx/index.ts';
import { BUNDLED, footprintOf, type Mode, type Profile, slotAt } from '../../shared/profile/index.ts';

// What a desk would be told of the bundled fixtures by ANSI E1.20 (RDM): mode is its personality, and so on.

const modes = BUNDLED.flatMap((profile) =>
	profile.modes.map((mode): [string, Profile, Mode] => [`${profile.id} ${mode.id}`, profile, mode]),
);

/** Slot types of E1.20, table C-1 (read: two open-source responders' copies of the table, word for word alike). */
const SLOT_TYPE = { primary: 0x00, secondaryFine: 0x01 } as const;

/** SLOT_INFO of a mode: an entry for each slot in order, its offset counted from 0; a secondary slot names its primary's offset. */
function slotInfo(mode: Mode): { offset: number; type: number; of: number | null }[] {
	return Array.from({ length: footprintOf(mode) }, (_, offset) => {
		const found = slotAt(mode, offset + 1);
		if (!found) throw new Error(`no slot at offset ${offset}`);
		if (found.part === 'fine') return { offset, type: SLOT_TYPE.secondaryFine, of: found.slot.at - 1 };
		return { offset, type: SLOT_TYPE.primary, of: null };
	});
}

describe('E1.20: personality', () => {
	test('modes are numbered from 1, at most 255 in one byte (255 from memory; that the current one is at most the count: read in a responder’s source)', () => {
		for (const { modes: all, defaults } of BUNDLED) {
			const current = all.findIndex(({ id }) => id === defaults.mode) + 1;
			expect(current).toBeGreaterThanOrEqual(E120.personality.lowest);
			expect(current).toBeLessThanOrEqual(all.length);
			expect(all.length).toBeLessThanOrEqual(E120.personality.highest);
		}
		// as the desk would show them: current of count
		const shown = BUNDLED.map(
			({ modes: all, defaults }) => `${all.findIndex(({ id }) => id === defaults.mode) + 1}/${all.length}`,
		);
		expect(shown).toEqual(['2/3', '2/4', '1/3', '2/3']);
	});

	test.each(modes)(
		'%s: its description is ASCII of 1 to 32 characters (read: comments of two open-source drivers)',
		(_, __, mode) => {
			expect(mode.name).toMatch(/^[\x20-\x7e]{1,32}$/);
		},
	);

	test.each(modes)(
		'%s: its footprint is 1 to 512 (range from memory) and counts every slot of SLOT_INFO once',
		(_, __, mode) => {
			const footprint = footprintOf(mode);
			expect(footprint).toBeGreaterThanOrEqual(1);
			expect(footprint).toBeLessThanOrEqual(E120.footprint.highest);
			expect(slotInfo(mode).map(({ offset }) => offset)).toEqual([...Array(footprint).keys()]);
			// every slot number the chart names is one of them, coarse and fine
			const named = mode.slots.flatMap(({ at, fine }) => (fine === undefined ? [at] : [at, fine]));
			expect(named.length).toBe(footprint);
		},
	);
});

describe('E1.20: slots', () => {
	test('a 16-bit slot is a primary, the coarse half, and a secondary that names it (read: table C-1 as above; a responder’s example)', () => {
		const pairs = modes.flatMap(([name, , mode]) =>
			slotInfo(mode)
				.filter(({ type }) => type === SLOT_TYPE.secondaryFine)
				.map(({ offset, of }) => [name, of, offset, slotInfo(mode)[of ?? -1]?.type]),
		);
		expect(pairs).toEqual([
			['tallow-6 long', 0, 1, SLOT_TYPE.primary],
			['picket-8 whole-plus', 5, 6, SLOT_TYPE.primary],
			['picket-8 halves', 8, 9, SLOT_TYPE.primary],
			['picket-8 cells', 1, 2, SLOT_TYPE.primary],
			['cobble seven', 3, 4, SLOT_TYPE.primary],
			['thimble-4 nine', 4, 5, SLOT_TYPE.primary],
		]);
	});

	test('the coarse half is the first on the line and the high byte (read: makers’ manuals; 256 fine steps to a coarse one recalculated)', () => {
		for (const [, , mode] of modes) {
			for (const { at, fine } of mode.slots) if (fine !== undefined) expect(fine).toBe(at + 1);
		}
		expect(joinWord(1, 0) - joinWord(0, 0)).toBe(256);
		expect(joinWord(255, 255)).toBe(65535);
	});
});

describe('E1.20 and E1.11: start addresses', () => {
	test('a panel with keys offers 1 to 512, no more and no less (read: a maker’s list of parameters)', () => {
		const offered = BUNDLED.flatMap(({ panel }) =>
			panel.kind === 'dip'
				? []
				: panel.menu
						.flatMap((item) => (item.kind === 'menu' ? item.items : [item]))
						.flatMap((item) => (item.kind === 'number' && item.setting === 'address' ? [[item.least, item.most]] : [])),
		);
		expect(offered).toEqual([
			[E120.startAddress.lowest, E120.startAddress.highest],
			[E120.startAddress.lowest, E120.startAddress.highest],
			[E120.startAddress.lowest, E120.startAddress.highest],
		]);
	});

	test.each(modes)(
		'%s: the last start at which it fits is 513 less its footprint, and one higher runs past 512 (recalculated)',
		(_, __, mode) => {
			const footprint = footprintOf(mode);
			expect(highestStart(footprint)).toBe(513 - footprint);
			expect(runsPast(513 - footprint, footprint)).toBe(false);
			if (footprint > 1) expect(runsPast(514 - footprint, footprint)).toBe(true);
		},
	);

	test('how many fit back to back in one universe: 512 over the footprint, rounded down (recalculated)', () => {
		expect(modes.map(([name, , mode]) => [name, howManyFit(footprintOf(mode))])).toEqual([
			['tallow-6 short', 85],
			['tallow-6 middle', 56],
			['tallow-6 long', 42],
			['picket-8 whole', 128],
			['picket-8 whole-plus', 56],
			['picket-8 halves', 46],
			['picket-8 cells', 14],
			['cobble three', 170],
			['cobble five', 102],
			['cobble seven', 73],
			['thimble-4 four', 128],
			['thimble-4 six', 85],
			['thimble-4 nine', 56],
		]);
	});
});

test('EIA-485: 32 of any bundled fixture load a line fully, and a 33rd is too many (read: 32 unit loads)', () => {
	for (const { unitLoads } of BUNDLED) {
		expect(isOverloaded(Array(EIA485.mostUnitLoads).fill(unitLoads))).toBe(false);
		expect(isOverloaded(Array(EIA485.mostUnitLoads + 1).fill(unitLoads))).toBe(true);
	}
});

test('beam angle is taken at 50 % of the peak and field angle at 10 % (read), so no beam is wider than its field', () => {
	for (const { optics } of BUNDLED) expect(optics.beam).toBeLessThan(optics.field);
});
