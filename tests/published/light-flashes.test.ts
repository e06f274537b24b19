import Color from 'colorjs.io';
import { wcagLuminance } from 'culori';
import { describe, expect, it } from 'vitest';
import { limitFlashes, MOST_FLASHES, watchFlashes } from '../../sim/light/index.ts';
import { mostGeneralFlashes, mostRedFlashes, type Seen, seen } from './wcag-flashes.ts';

/** A second and a half of two colours in turn, `hz` pairs a second, at 60 pictures a second. */
function alternate(hz: number, one: string, other: string, seconds = 1.5): { ms: number; colour: string }[] {
	return Array.from({ length: Math.round(seconds * 60) }, (_, i) => {
		const ms = (i * 1000) / 60;
		return { ms, colour: ((ms / 1000) * hz) % 1 < 0.5 ? one : other };
	});
}

const asSeen = (pictures: readonly { ms: number; colour: string }[]): Seen[] =>
	pictures.map(({ ms, colour }) => seen(ms, colour));
const general = (hz: number, one: string, other: string) => mostGeneralFlashes(asSeen(alternate(hz, one, other)));
const red = (hz: number, one: string, other: string) => mostRedFlashes(asSeen(alternate(hz, one, other)));

describe('relative luminance (WCAG 2.2)', () => {
	it.each(['#000000', '#ffffff', '#ff0000', '#80c8ff', '#0b0b0b', '#123456'])(
		'of %s, as two libraries have it',
		(hex) => {
			expect(seen(0, hex).luminance).toBeCloseTo(wcagLuminance(hex), 3);
			expect(seen(0, hex).luminance).toBeCloseTo(new Color(hex).luminance, 3);
		},
	);
});

describe('general flash (WCAG 2.2, 2.3.1 and its thresholds, read)', () => {
	it('is a pair of opposing changes: three a second pass, four do not', () => {
		expect(general(3, '#000000', '#ffffff')).toBe(3);
		expect(general(4, '#000000', '#ffffff')).toBe(4);
		expect(general(20, '#000000', '#ffffff')).toBe(20);
	});

	it('is 10 % or more of maximum relative luminance', () => {
		// grey #5a5a5a has luminance 0.1022, #595959 0.0998
		expect(general(10, '#000000', '#5a5a5a')).toBe(10);
		expect(general(10, '#000000', '#595959')).toBe(0);
	});

	it('has a darker side below 0.80', () => {
		// grey #e7e7e7 has luminance 0.799, #e8e8e8 0.807
		expect(general(10, '#e7e7e7', '#ffffff')).toBe(10);
		expect(general(10, '#e8e8e8', '#ffffff')).toBe(0);
	});

	it('does not come of one fade up and down, however many pictures it takes', () => {
		const fade = Array.from({ length: 120 }, (_, i) => {
			const level = Math.round(255 * (1 - Math.abs(i / 60 - 1)));
			return seen((i * 1000) / 60, `#${level.toString(16).padStart(2, '0').repeat(3)}`);
		});
		expect(mostGeneralFlashes(fade)).toBe(1);
	});
});

describe('red flash (WCAG 2.2 working definition, read)', () => {
	it('is to or from R / (R + G + B) of 0.8 or more, by more than 0.2 in CIE 1976 u′ v′', () => {
		expect(red(5, '#ff0000', '#0000ff')).toBe(5);
		expect(red(5, '#ff0000', '#000000')).toBe(5);
		expect(red(5, '#00ff00', '#0000ff')).toBe(0);
		// linear 1 : 0.25 is R / (R + G + B) = 0.8 and still red, but only 0.1 from pure red
		expect(red(5, '#ff0000', '#ff8900')).toBe(0);
	});

	it('u′ v′ of the sRGB primaries: red 0.4507 0.5229, green 0.1250 0.5625, blue 0.1754 0.1579 (recalculated)', () => {
		for (const [hex, u, v] of [
			['#ff0000', 0.4507, 0.5229],
			['#00ff00', 0.125, 0.5625],
			['#0000ff', 0.1754, 0.1579],
		] as const) {
			expect(seen(0, hex).uv[0]).toBeCloseTo(u, 3);
			expect(seen(0, hex).uv[1]).toBeCloseTo(v, 3);
		}
	});
});

describe('the limiter under the analyser', () => {
	it.each([
		['white and black', '#ffffff', '#000000'],
		['red and black', '#ff0000', '#000000'],
		['red and blue of much the same luminance', '#ff0000', '#0000ff'],
		['dim red and black', '#400000', '#000000'],
	])('%s at 12 a second come out at three at most', (_, one, other) => {
		let watch = watchFlashes(one);
		const out = alternate(12, one, other, 4).map(({ ms, colour }) => {
			watch = limitFlashes(watch, ms, colour);
			return seen(ms, watch.shown);
		});
		expect(mostGeneralFlashes(out)).toBeLessThanOrEqual(MOST_FLASHES);
		expect(mostRedFlashes(out)).toBeLessThanOrEqual(MOST_FLASHES);
		expect(mostGeneralFlashes(asSeen(alternate(12, one, other, 4))) + red(12, one, other)).toBeGreaterThan(
			MOST_FLASHES,
		);
	});
});
