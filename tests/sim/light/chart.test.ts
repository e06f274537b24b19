import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../shared/error/index.ts';
import { modeOf, type Profile } from '../../../shared/profile/index.ts';
import { compileMode, makeAsk, type SlotRequest } from '../../../sim/light/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { anyFrame, anyMode, fixtures, lab } from './lab.ts';

/** A chart read the slow way, slot by slot as a person would, to hold the fast way to. */
function readSlowly(profile: Profile, modeId: string, frame: Uint8Array, start: number): SlotRequest {
	const ask = makeAsk(profile);
	const level = (n: number) => (start + n - 1 > 512 ? 0 : (frame[start + n - 2] ?? 0));
	const slots = modeOf(profile, modeId).slots.toSorted((a, b) => a.at - b.at);
	for (const slot of slots) {
		const value = slot.fine === undefined ? level(slot.at) / 255 : (level(slot.at) * 256 + level(slot.fine)) / 65535;
		const cells = slot.cells ?? Array.from({ length: profile.cells }, (_, i) => i + 1);
		const { drives } = slot;
		if (drives.kind === 'speed') ask.speed = 1 + Math.round((level(slot.at) * 99) / 255);
		for (const cell of cells) {
			if (drives.kind === 'intensity') ask.intensity[cell - 1] = Math.fround((ask.intensity[cell - 1] ?? 0) * value);
			if (drives.kind === 'emitter') {
				const at = (cell - 1) * profile.emitters.length + profile.emitters.findIndex((it) => it.id === drives.emitter);
				ask.levels[at] = Math.max(ask.levels[at] ?? 0, value);
			}
		}
		if (drives.kind !== 'bands') continue;
		const at = level(slot.at);
		const band = drives.bands.find((it) => at >= it.from && at <= it.to);
		const effect = band?.effect;
		if (effect?.do === 'dark') ask.dark = true;
		if (effect?.do === 'strobe' && band && ask.strobe === 0) {
			const part = band.to > band.from ? (at - band.from) / (band.to - band.from) : 0;
			ask.strobe = Math.fround(effect.slow + (effect.fast - effect.slow) * part);
		}
		const free = ask.held < 0 && ask.programme < 0;
		if (effect?.do === 'held' && free) ask.held = profile.held.findIndex((it) => it.id === effect.held);
		if (effect?.do === 'programme' && free) {
			ask.programme = profile.programmes.findIndex((it) => it.id === effect.programme);
		}
	}
	return ask;
}

/** A frame with some slots set: `{ 3: 255 }` is slot 3 at full. */
function frameWith(levels: Readonly<Record<number, number>>): Uint8Array {
	const frame = new Uint8Array(512);
	for (const [slot, level] of Object.entries(levels)) frame[Number(slot) - 1] = level;
	return frame;
}

const readOdd = (levels: Readonly<Record<number, number>>): SlotRequest => {
	const ask = makeAsk(lab);
	compileMode(lab, 'odd').read(frameWith(levels), 1, ask);
	return ask;
};
const openOdd = { 2: 50, 3: 255, 4: 255, 5: 255 };
const held = (id: string) => lab.held.findIndex((it) => it.id === id);
const programme = (id: string) => lab.programmes.findIndex((it) => it.id === id);

describe('reading a frame through a chart', () => {
	it('says what a slow reader says, for any frame, start and mode', () => {
		fc.assert(
			fc.property(anyMode, anyFrame, fc.integer({ min: 1, max: 512 }), ({ profile, mode }, frame, start) => {
				const ask = makeAsk(profile);
				compileMode(profile, mode).read(frame, start, ask);
				expect(ask).toEqual(readSlowly(profile, mode, frame, start));
			}),
			{ numRuns: runs(400) },
		);
	});

	it('leaves nothing of the frame before', () => {
		fc.assert(
			fc.property(anyMode, anyFrame, anyFrame, ({ profile, mode }, before, frame) => {
				const used = makeAsk(profile);
				const fresh = makeAsk(profile);
				const chart = compileMode(profile, mode);
				chart.read(before, 1, used);
				chart.read(frame, 1, used);
				chart.read(frame, 1, fresh);
				expect(used).toEqual(fresh);
			}),
			{ numRuns: runs(100) },
		);
	});

	it('reads only its own slots', () => {
		fc.assert(
			fc.property(anyMode, anyFrame, anyFrame, fc.integer({ min: 1, max: 512 }), ({ profile, mode }, a, b, start) => {
				const chart = compileMode(profile, mode);
				const mixed = b.slice();
				const own = a.subarray(start - 1, start - 1 + chart.footprint);
				mixed.set(own, start - 1);
				const [one, other] = [makeAsk(profile), makeAsk(profile)];
				chart.read(a, start, one);
				chart.read(mixed, start, other);
				expect(other).toEqual(one);
			}),
			{ numRuns: runs(100) },
		);
	});

	it('takes slots past 512, and past the end of a short frame, as 0', () => {
		const full = new Uint8Array(512).fill(255);
		const chart = compileMode(lab, 'odd');
		const [past, short] = [makeAsk(lab), makeAsk(lab)];
		// slots 1 to 6 are there: the red pair has its coarse half alone
		chart.read(full, 507, past);
		chart.read(full.subarray(0, 6), 1, short);
		expect(past.levels[0]).toBeCloseTo((255 * 256) / 65535, 6);
		expect(past.levels[2]).toBe(0);
		expect(past).toEqual(short);
	});

	it('never reads a 513th level that a longer frame holds', () => {
		const ask = makeAsk(lab);
		compileMode(lab, 'odd').read(new Uint8Array(600).fill(255), 512, ask);
		expect([...ask.levels]).toEqual(Array(12).fill(0));
		expect(ask.speed).toBe(100);
	});
});

describe('how slots meet', () => {
	it('multiplies intensities over one cell', () => {
		expect([...readOdd({ ...openOdd, 5: 51 }).intensity]).toEqual([Math.fround(0.2), 1, 1]);
		expect([...readOdd({ ...openOdd, 3: 0, 4: 0 }).intensity]).toEqual([0, 0, 0]);
	});

	it('lets the highest of two slots for one emitter win', () => {
		const red = (levels: SlotRequest['levels']) => [levels[0], levels[4], levels[8]];
		expect(red(readOdd({ ...openOdd, 6: 255, 7: 255, 9: 10 }).levels)).toEqual([1, 1, 1]);
		expect(red(readOdd({ ...openOdd, 9: 255 }).levels)).toEqual([0, 0, 1]);
	});

	it('reads a 16-bit slot to a 65535th', () => {
		expect(readOdd({ ...openOdd, 6: 1, 7: 2 }).levels[0]).toBe(Math.fround(258 / 65535));
	});

	it('takes intensity as full and speed as 50 where a mode has neither', () => {
		const ask = makeAsk(lab);
		compileMode(lab, 'three').read(new Uint8Array(512), 1, ask);
		expect([...ask.intensity]).toEqual([1, 1, 1]);
		expect(ask.speed).toBe(50);
	});

	it('runs speed from 1 at 0 to 100 at 255, never falling', () => {
		const speeds = Array.from({ length: 256 }, (_, value) => readOdd({ ...openOdd, 1: value }).speed);
		expect([speeds[0], speeds[255]]).toEqual([1, 100]);
		expect(speeds).toEqual(speeds.toSorted((a, b) => a - b));
		expect(new Set(speeds).size).toBe(100);
	});
});

describe('bands', () => {
	it('lets the first in chart order of two that take the light over win, whatever the order it was written in', () => {
		expect(readOdd({ ...openOdd, 2: 0, 8: 150 })).toMatchObject({ programme: programme('swap'), held: -1 });
		expect(readOdd({ ...openOdd, 2: 255, 8: 150 })).toMatchObject({ programme: -1, held: held('glow') });
		expect(readOdd({ ...openOdd, 2: 60, 8: 150 })).toMatchObject({ programme: -1, held: held('yellow') });
	});

	it('leaves the light alone where open, or where nothing is meant', () => {
		expect(readOdd({ ...openOdd, 8: 99 })).toMatchObject({ programme: -1, held: -1, strobe: 0, dark: false });
	});

	it('closes the light, whatever another band says', () => {
		expect(readOdd({ ...openOdd, 2: 255, 8: 200 })).toMatchObject({ dark: true, held: held('glow') });
	});

	it('raises a strobe in a straight line from slow at its first value to fast at its last', () => {
		const rates = Array.from({ length: 101 }, (_, i) => readOdd({ ...openOdd, 2: 150 + i }).strobe);
		expect([rates[0], rates[100]]).toEqual([2, 12]);
		for (const [i, rate] of rates.entries()) expect(rate).toBeCloseTo(2 + i / 10, 5);
	});

	it('gives a strobe band of one value its slow rate, and the first of two strobes the say', () => {
		expect(readOdd({ ...openOdd, 8: 100 }).strobe).toBe(7);
		expect(readOdd({ ...openOdd, 2: 250, 8: 100 }).strobe).toBe(12);
	});
});

describe('compiling', () => {
	it('is done once for a profile object and a mode', () => {
		for (const profile of fixtures) {
			for (const mode of profile.modes) {
				expect(compileMode(profile, mode.id)).toBe(compileMode(profile, mode.id));
			}
		}
		expect(compileMode(structuredClone(lab), 'odd')).not.toBe(compileMode(lab, 'odd'));
	});

	it('says the footprint', () => {
		expect(compileMode(lab, 'odd').footprint).toBe(10);
	});
});

describe('nonsense is refused', () => {
	const refusal = (act: () => void): InputError => {
		try {
			act();
		} catch (error) {
			if (error instanceof InputError) return error;
			throw error;
		}
		throw new Error('nothing was refused');
	};

	it('a mode the fixture lacks', () => {
		const error = refusal(() => compileMode(lab, 'wide'));
		expect(error.code).toBe('mode.unknown');
		expect(errorText(error)).toBe("Lab has no mode 'wide'. Its modes: three, five, seven, odd.");
	});

	it.each([0, 513, 1.5, Number.NaN])('a start address of %s', (start) => {
		const { code } = refusal(() => compileMode(lab, 'odd').read(new Uint8Array(512), start, makeAsk(lab)));
		expect(code).toBe('address.range');
	});

	it('an ask made for another fixture', () => {
		const other = makeAsk(fixtures[0] as Profile);
		const error = refusal(() => compileMode(lab, 'odd').read(new Uint8Array(512), 1, other));
		expect(error.code).toBe('ask.shape');
		expect(errorText(error)).toBe(
			'An ask for Lab holds 3 cells of 4 emitters; this one is of another size. Make it with makeAsk.',
		);
	});
});
