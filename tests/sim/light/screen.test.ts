import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	type FlashWatch,
	limitFlashes,
	MOST_FLASHES,
	programmeLevels,
	screenFlashes,
	screenPace,
	strobeGate,
	watchFlashes,
	wholeLight,
} from '../../../sim/light/index.ts';
import { between } from '../../between.ts';
import { mostGeneralFlashes, mostRedFlashes, type Seen, seen } from '../../published/wcag-flashes.ts';
import { runs } from '../../runs.ts';
import { fixtures, silence } from './lab.ts';

const hex = fc.integer({ min: 0, max: 0xffffff }).map((it) => `#${it.toString(16).padStart(6, '0')}`);
const vivid = fc.constantFrom('#000000', '#ffffff', '#ff0000', '#0000ff', '#00ff00', '#300000', '#808080');

/** What a limiter lets through of colours that come `gap` milliseconds apart. */
function drawn(colours: readonly string[], gap: number): { series: Seen[]; watch: FlashWatch } {
	let watch = watchFlashes(colours[0] ?? '#000000');
	const series = colours.map((colour, i) => {
		watch = limitFlashes(watch, i * gap, colour);
		return seen(i * gap, watch.shown);
	});
	return { series, watch };
}

const expectQuiet = (series: readonly Seen[]) => {
	expect(mostGeneralFlashes(series)).toBeLessThanOrEqual(MOST_FLASHES);
	expect(mostRedFlashes(series)).toBeLessThanOrEqual(MOST_FLASHES);
};

describe('the rate a screen draws', () => {
	it('is the fixture’s own, but at most three a second unless asked for', () => {
		expect([0, 2, 3, 3.1, 20].map((hz) => screenFlashes(hz))).toEqual([0, 2, 3, 3, 3]);
		expect(screenFlashes(20, true)).toBe(20);
	});

	it('keeps any strobe to three flashes in any second', () => {
		fc.assert(
			fc.property(between(0.1, 30), fc.nat(1000), (hz, from) => {
				const drawnHz = screenFlashes(hz);
				const series = Array.from({ length: 300 }, (_, i) => {
					const ms = from + (i * 1000) / 60;
					return seen(ms, strobeGate(drawnHz, ms) === 1 ? '#ffffff' : '#000000');
				});
				expectQuiet(series);
			}),
			{ numRuns: runs(100) },
		);
	});

	it('slows any programme to three flashes in any second', () => {
		for (const profile of fixtures) {
			for (const [i, programme] of profile.programmes.entries()) {
				if (programme.kind === 'sound') continue;
				for (const speed of [1, 60, 100]) {
					const pace = screenPace(profile, i, speed);
					expect(pace).toBeLessThanOrEqual(1);
					expect(screenPace(profile, i, speed, true)).toBe(1);
					const levels = new Float32Array(profile.cells * profile.emitters.length);
					const series = Array.from({ length: 240 }, (_, n) => {
						const ms = (n * 1000) / 60;
						programmeLevels(profile, { index: i, elapsedMs: ms * pace, speed, heard: silence }, levels);
						return seen(ms, wholeLight(profile, levels).colour);
					});
					expectQuiet(series);
				}
			}
		}
	});
});

describe('the flash limiter', () => {
	it('lets no stream of colours pass three flashes in any second, general or red', () => {
		fc.assert(
			fc.property(
				fc.array(fc.oneof(hex, vivid), { minLength: 2, maxLength: 200 }),
				fc.integer({ min: 5, max: 250 }),
				(colours, gap) => expectQuiet(drawn(colours, gap).series),
			),
			{ numRuns: runs(300) },
		);
	});

	it('is needed: the same streams unlimited do pass it', () => {
		const series = Array.from({ length: 60 }, (_, i) => seen((i * 1000) / 60, i % 4 < 2 ? '#ff0000' : '#000000'));
		expect(mostGeneralFlashes(series)).toBeGreaterThan(MOST_FLASHES);
		expect(mostRedFlashes(series)).toBeGreaterThan(MOST_FLASHES);
	});

	it('leaves alone what is slow enough', () => {
		const colours = Array.from({ length: 400 }, (_, i) => (strobeGate(2.9, i * 16) === 1 ? '#ffffff' : '#000000'));
		expect(drawn(colours, 16).series.map((it) => it.luminance)).toEqual(
			colours.map((it) => (it === '#ffffff' ? 1 : 0)),
		);
	});

	it('lets a fade through whole', () => {
		const colours = Array.from({ length: 256 }, (_, i) => `#${i.toString(16).padStart(2, '0').repeat(3)}`);
		const { watch, series } = drawn(colours, 8);
		expect(watch.shown).toBe('#ffffff');
		expect(new Set(series.map((it) => it.luminance)).size).toBe(256);
	});

	it('comes to the true colour within a second once the light stands still', () => {
		fc.assert(
			fc.property(fc.array(vivid, { minLength: 2, maxLength: 60 }), hex, (colours, last) => {
				const still = Array.from({ length: 70 }, () => last);
				expect(drawn([...colours, ...still], 16).watch.shown).toBe(last);
			}),
			{ numRuns: runs(200) },
		);
	});
});
