import Color from 'colorjs.io';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BUNDLED, chromaticityOf } from '../../shared/profile/index.ts';
import { lightness, mix } from '../../sim/light/colour.ts';
import { cellLight, colourName } from '../../sim/light/index.ts';
import { linearOf, linearOfHex, shownHue } from '../../sim/light/screen.ts';
import { colourTemperature, distanceFromLocus } from '../../sim/light/words.ts';
import { between } from '../between.ts';
import { runs } from '../runs.ts';

const anyCell = fc.constantFrom(...BUNDLED).chain((profile) =>
	fc
		.array(between(0, 1), {
			minLength: profile.emitters.length,
			maxLength: profile.emitters.length,
		})
		.map((outputs) => ({ profile, outputs })),
);

describe('sRGB (IEC 61966-2-1, read)', () => {
	it.each([
		['red', '#ff0000', [0.4124, 0.2126, 0.0193]],
		['green', '#00ff00', [0.3576, 0.7152, 0.1192]],
		['blue', '#0000ff', [0.1805, 0.0722, 0.9505]],
	] as const)('its matrix: full %s', (_, hex, [x, y, z]) => {
		const [ours, theirs] = [linearOf([x, y, z]), linearOfHex(hex)];
		for (const channel of ['r', 'g', 'b'] as const) expect(ours[channel]).toBeCloseTo(theirs[channel], 3);
	});

	it('its example: (128, 200, 255) is XYZ 47.60334 53.11601 102.3549', () => {
		const [ours, theirs] = [linearOf([0.4760334, 0.5311601, 1.023549]), linearOfHex('#80c8ff')];
		for (const channel of ['r', 'g', 'b'] as const) expect(ours[channel]).toBeCloseTo(theirs[channel], 4);
	});
});

describe('emitters of the bundled fixtures', () => {
	// CIE 1931 locus (read); no public table of stage emitters was found, so they lie at their dominant wavelength
	it.each([
		['blue', 465, 0.1355, 0.0399],
		['green', 525, 0.1142, 0.8262],
		['amber', 590, 0.5752, 0.4242],
		['red', 625, 0.7006, 0.2993],
	] as const)('%s lies on the CIE 1931 locus at %i nm', (id, _, x, y) => {
		const ones = BUNDLED.flatMap((profile) => profile.emitters.filter((it) => it.id === id));
		expect(ones.length).toBeGreaterThan(0);
		for (const { xy } of ones) {
			expect(xy[0]).toBeCloseTo(x, 3);
			expect(xy[1]).toBeCloseTo(y, 3);
		}
	});

	it('whites lie by the Planckian locus, as CIE LED illuminants do (CIE 15:2018; LED-B3, B4, B5 read)', () => {
		for (const illuminant of [
			[0.3756, 0.3723],
			[0.3422, 0.3502],
			[0.3118, 0.3236],
		] as const) {
			expect(Math.abs(distanceFromLocus(illuminant))).toBeLessThan(0.002);
		}
		for (const { id, xy } of BUNDLED.flatMap((it) => it.emitters)) {
			if (id.includes('white')) expect(Math.abs(distanceFromLocus(xy))).toBeLessThan(0.006);
		}
	});
});

describe('colour temperature', () => {
	it('McCamy 1992: D65 (0.31270, 0.32900) is 6505.08 K (read, documentation of a colour-science library)', () => {
		expect(colourTemperature([0.3127, 0.329])).toBeCloseTo(6505.0805913, 5);
	});

	it('illuminant A (0.44758, 0.40745) is 2856 K (from memory, CIE 15)', () => {
		expect(Math.abs(colourTemperature([0.44758, 0.40745]) - 2856)).toBeLessThan(10);
		expect(Math.abs(distanceFromLocus([0.44758, 0.40745]))).toBeLessThan(0.0005);
	});

	it.each([
		['LED-B3', 4103, [0.3756, 0.3723]],
		['LED-B4', 5109, [0.3422, 0.3502]],
		['LED-B5', 6598, [0.3118, 0.3236]],
	] as const)('%s is %i K (temperatures from memory, CIE 15:2018; chromaticities read)', (_, kelvin, xy) => {
		expect(Math.abs(colourTemperature(xy) / kelvin - 1)).toBeLessThan(0.01);
	});

	it('Ohno 2013: u 0.1977999, v 0.3122004 is Duv 0.0032237 (read, documentation of a colour-science library)', () => {
		const [u, v] = [0.1977999, 0.3122004];
		const scale = 2 * u - 8 * v + 4;
		const xy = [(3 * u) / scale, (2 * v) / scale] as const;
		expect(distanceFromLocus(xy)).toBeCloseTo(0.0032237, 4);
	});
});

describe('mixing', () => {
	it('of two lights of equal flux, by hand (Grassmann; CIE 15; recalculated)', () => {
		// red 0.7006 0.2993 and blue 0.1355 0.0399: weights Y / y are 1 / 0.2993 and 1 / 0.0399
		const profile = structuredClone(BUNDLED.find((it) => it.id === 'cobble') as (typeof BUNDLED)[number]);
		const [red, , blue] = profile.emitters;
		if (!red || !blue) throw new Error('red and blue are gone');
		red.lumens = blue.lumens = 100;
		red.xy = [0.7006, 0.2993];
		blue.xy = [0.1355, 0.0399];
		const [x, y] = chromaticityOf(mix(profile, [1, 0, 1])) ?? [];
		expect(x).toBeCloseTo(0.20197, 4);
		expect(y).toBeCloseTo(0.07041, 4);
	});

	it('adds what a general colour library adds, in linear light (colorjs.io, reference library)', () => {
		fc.assert(
			fc.property(anyCell, ({ profile, outputs }) => {
				const flux = profile.emitters.reduce((sum, it) => sum + it.lumens, 0);
				const sum = [0, 0, 0];
				for (const [e, { xy, lumens }] of profile.emitters.entries()) {
					const one = new Color('xyz-d65', [xy[0] / xy[1], 1, (1 - xy[0] - xy[1]) / xy[1]]).to('srgb-linear');
					const gain = ((outputs[e] ?? 0) * lumens) / flux;
					for (const [i, value] of one.coords.entries()) sum[i] = (sum[i] ?? 0) + (value ?? 0) * gain;
				}
				const { r, g, b } = linearOf(mix(profile, outputs));
				for (const [i, value] of [r, g, b].entries()) expect(value).toBeCloseTo(sum[i] ?? 0, 4);
			}),
			{ numRuns: runs(200) },
		);
	});

	it('has the lightness a general colour library gives (CIELAB L*; colorjs.io, reference library)', () => {
		fc.assert(
			fc.property(between(0, 1), (Y) => {
				const grey = new Color('xyz-d65', [0.95047 * Y, Y, 1.08883 * Y]);
				expect(lightness(Y) * 100).toBeCloseTo(grey.to('lab-d65').coords[0] ?? 0, 6);
			}),
			{ numRuns: runs(100) },
		);
	});

	it('CIE 1976: half the flux has lightness 76.07, 18.42 % has 50 (recalculated)', () => {
		expect(lightness(0.5)).toBeCloseTo(0.76069, 4);
		expect(lightness(0.18419)).toBeCloseTo(0.5, 4);
	});
});

describe('on the screen', () => {
	it('every pool is a colour the screen has (colorjs.io, reference library)', () => {
		fc.assert(
			fc.property(anyCell, ({ profile, outputs }) => {
				expect(new Color(cellLight(profile, outputs).colour).inGamut('srgb')).toBe(true);
			}),
			{ numRuns: runs(100) },
		);
	});

	it('the hue judged is OKLCH’s, where nothing needs mapping (colorjs.io, reference library)', () => {
		const level = fc.integer({ min: 20, max: 255 });
		fc.assert(
			fc.property(level, level, level, (r, g, b) => {
				fc.pre(Math.max(r, g, b) - Math.min(r, g, b) > 20);
				const colour = new Color('srgb', [r / 255, g / 255, b / 255]);
				const [x, y, z] = colour.to('xyz-d65').coords;
				const apart = Math.abs(shownHue([x ?? 0, y ?? 0, z ?? 0]) - (colour.to('oklch').coords[2] ?? 0));
				expect(Math.min(apart, 360 - apart)).toBeLessThan(0.5);
			}),
			{ numRuns: runs(200) },
		);
	});

	it('a spectral colour strays no farther from its hue than 15 degrees (hues by colorjs.io, reference library)', () => {
		// CIE 1931 locus, read for 465, 525, 590 and 625 nm
		for (const [x, y] of [
			[0.1355, 0.0399],
			[0.1142, 0.8262],
			[0.5752, 0.4242],
			[0.7006, 0.2993],
		] as const) {
			const xyz = [x / y, 1, (1 - x - y) / y] as const;
			const apart = Math.abs(shownHue(xyz) - (new Color('xyz-d65', [...xyz]).to('oklch').coords[2] ?? 0));
			expect(Math.min(apart, 360 - apart)).toBeLessThan(15);
		}
	});

	// CSS Color 4, named colours (from memory): what they are called there is what they are called here
	it.each([
		['red', '#ff0000', 'red'],
		['lime', '#00ff00', 'green'],
		['blue', '#0000ff', 'blue'],
		['cyan', '#00ffff', 'cyan'],
		['magenta', '#ff00ff', 'magenta'],
		['yellow', '#ffff00', 'yellow'],
		['white', '#ffffff', 'white'],
		['turquoise', '#40e0d0', 'turquoise'],
		['blueviolet', '#8a2be2', 'violet'],
		['deepskyblue', '#00bfff', 'sky blue'],
		['hotpink', '#ff69b4', 'pink'],
	])('%s', (_, hex, name) => {
		const [x, y, z] = new Color(hex).to('xyz-d65').coords;
		expect(colourName(chromaticityOf([x ?? 0, y ?? 0, z ?? 0]) ?? [0, 0])).toBe(name);
	});
});
