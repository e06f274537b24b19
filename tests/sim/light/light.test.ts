import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BUNDLED, type Profile } from '../../../shared/profile/index.ts';
import { mix } from '../../../sim/light/colour.ts';
import { cellLight, staticLevels, wholeLight } from '../../../sim/light/index.ts';
import { linearOf, linearOfHex, shownHue } from '../../../sim/light/screen.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';
import { anyLight, fixtures, lab, levelsFor } from './lab.ts';

const anyCell = fc
	.constantFrom(...fixtures)
	.chain((profile) => levelsFor({ ...profile, cells: 1 }).map((outputs) => ({ profile, outputs })));
const tallow = BUNDLED[0] as Profile;

describe('the light of a cell', () => {
	it('is whole: in range, a colour, a name; dark in every way or in none', () => {
		fc.assert(
			fc.property(anyCell, ({ profile, outputs }) => {
				const light = cellLight(profile, outputs);
				expect(light.levels).toEqual([...outputs]);
				expect(light.colour).toMatch(/^#[0-9a-f]{6}$/);
				expect(light.brightness).toBeGreaterThanOrEqual(0);
				expect(light.brightness).toBeLessThanOrEqual(1 + 1e-9);
				expect(light.words).not.toBe('');
				const dark = light.xy === null;
				expect(light.words === 'dark').toBe(dark);
				if (dark) expect(light).toMatchObject({ brightness: 0, colour: '#000000', ultraviolet: 0 });
			}),
			{ numRuns: runs(500) },
		);
	});

	it('adds: brightness never falls as an emitter comes up', () => {
		fc.assert(
			fc.property(anyCell, fc.nat(), between(0, 1), ({ profile, outputs }, which, more) => {
				const brighter = outputs.slice();
				const e = which % outputs.length;
				brighter[e] = Math.max(brighter[e] ?? 0, more);
				expect(cellLight(profile, brighter).brightness).toBeGreaterThanOrEqual(cellLight(profile, outputs).brightness);
			}),
			{ numRuns: runs(200) },
		);
	});

	it('keeps its chromaticity, and its hue on screen, as it dims', () => {
		fc.assert(
			fc.property(anyCell, between(0.1, 1), ({ profile, outputs }, dim) => {
				const [full, dimmed] = [
					cellLight(profile, outputs),
					cellLight(
						profile,
						outputs.map((it) => it * dim),
					),
				];
				if (!full.xy || !dimmed.xy) return;
				expect(dimmed.xy[0]).toBeCloseTo(full.xy[0], 5);
				expect(dimmed.xy[1]).toBeCloseTo(full.xy[1], 5);
				const [a, b] = [linearOfHex(full.colour), linearOfHex(dimmed.colour)];
				expect(Math.max(b.r, b.g, b.b)).toBeLessThanOrEqual(Math.max(a.r, a.g, a.b) + 1e-9);
			}),
			{ numRuns: runs(200) },
		);
	});

	it('shows on screen the chromaticity it has, where the screen can', () => {
		fc.assert(
			fc.property(anyCell, ({ profile, outputs }) => {
				const light = cellLight(profile, outputs);
				const { r, g, b } = linearOf(mix(profile, outputs));
				const peak = Math.max(r, g, b);
				fc.pre(light.xy !== null && Math.min(r, g, b) > 0.01 * peak && light.brightness > 0.3);
				const shown = linearOfHex(light.colour);
				const scale = Math.max(shown.r, shown.g, shown.b) / peak;
				for (const channel of ['r', 'g', 'b'] as const) {
					expect(Math.abs(shown[channel] - { r, g, b }[channel] * scale)).toBeLessThan(0.012);
				}
			}),
			{ numRuns: runs(200) },
		);
	});

	it('keeps hue within 20 degrees where the screen cannot', () => {
		fc.assert(
			fc.property(anyCell, ({ profile, outputs }) => {
				const xyz = mix(profile, outputs);
				fc.pre(xyz[1] > 0.001);
				const { r, g, b } = linearOf(xyz);
				// as much white added as brings it onto the screen: the colour of its dominant wavelength
				const least = Math.min(r, g, b, 0);
				const pure = [r - least, g - least, b - least] as const;
				const toXyz = ([x, y, z]: readonly [number, number, number]) =>
					[
						0.4124 * x + 0.3576 * y + 0.1805 * z,
						0.2126 * x + 0.7152 * y + 0.0722 * z,
						0.0193 * x + 0.1192 * y + 0.9505 * z,
					] as const;
				const apart = Math.abs(shownHue(toXyz(pure)) - shownHue(xyz));
				if (Math.max(...pure) - Math.min(...pure) < 0.05 * Math.max(...pure)) return;
				expect(Math.min(apart, 360 - apart)).toBeLessThan(20);
			}),
			{ numRuns: runs(300) },
		);
	});

	it('seems half as bright at 18 % of the flux, as lightness goes', () => {
		const full = new Float32Array(6).fill(1);
		expect(cellLight(tallow, full).brightness).toBeCloseTo(1, 9);
		expect(
			cellLight(
				tallow,
				full.map((it) => it * 0.184),
			).brightness,
		).toBeCloseTo(0.5, 2);
	});

	it('shows nothing under a cover', () => {
		fc.assert(
			fc.property(anyCell, ({ profile, outputs }) => {
				const light = cellLight(profile, outputs, true);
				expect(light).toMatchObject({ brightness: 0, colour: '#000000', words: 'dark', xy: null, ultraviolet: 0 });
				expect(Math.max(...light.levels)).toBe(0);
			}),
			{ numRuns: runs(50) },
		);
	});
});

describe('ultraviolet', () => {
	const only = (level: number) => cellLight(tallow, [0, 0, 0, 0, 0, level]);

	it('shows as a faint violet, and says how strong it really is', () => {
		const light = only(1);
		expect(light).toMatchObject({ ultraviolet: 1, words: 'violet glow (ultraviolet)' });
		expect(light.brightness).toBeLessThan(0.05);
		const { r, g, b } = linearOfHex(light.colour);
		expect(b).toBeGreaterThan(r);
		expect(r).toBeGreaterThan(g);
	});

	it('is said however faint, and beside whatever else is lit', () => {
		fc.assert(
			fc.property(anyCell, ({ profile, outputs }) => {
				const light = cellLight(profile, outputs);
				expect(light.words.includes('ultraviolet')).toBe(light.ultraviolet > 0);
			}),
			{ numRuns: runs(200) },
		);
		expect(only(1 / 255).words).toBe('faint violet glow (ultraviolet)');
		expect(cellLight(tallow, [1, 0, 0, 0, 0, 0.5]).words).toBe('deep red with ultraviolet');
	});
});

describe('all cells together', () => {
	it('is a cell’s light where all cells are alike', () => {
		fc.assert(
			fc.property(anyCell, ({ profile, outputs }) => {
				const all = Array.from({ length: profile.cells }, () => [...outputs]).flat();
				const [whole, cell] = [wholeLight(profile, all), cellLight(profile, outputs)];
				expect(whole.words).toBe(cell.words);
				expect(whole.brightness).toBeCloseTo(cell.brightness, 9);
			}),
			{ numRuns: runs(100) },
		);
	});

	it('is the mean of its cells in levels and in flux', () => {
		fc.assert(
			fc.property(anyLight, ({ profile, levels }) => {
				const width = profile.emitters.length;
				const whole = wholeLight(profile, levels);
				for (const e of profile.emitters.keys()) {
					const cells = Array.from({ length: profile.cells }, (_, cell) => levels[cell * width + e] ?? 0);
					expect(whole.levels[e]).toBeCloseTo(cells.reduce((sum, it) => sum + it, 0) / profile.cells, 6);
				}
			}),
			{ numRuns: runs(100) },
		);
	});

	it('mixes red and blue cells to what neither is', () => {
		const outputs = new Float32Array(12);
		outputs[0] = 1;
		outputs[6] = 1;
		expect(wholeLight(lab, outputs).words).toMatch(/magenta|purple|violet/);
	});
});

describe('held colours of the bundled fixtures', () => {
	it.each(['red', 'green', 'blue'])('%s is called so on each', (name) => {
		for (const profile of BUNDLED) {
			const index = profile.held.findIndex((it) => it.id === name);
			if (index < 0) continue;
			const out = new Float32Array(profile.cells * profile.emitters.length);
			staticLevels(profile, index, out);
			expect(wholeLight(profile, out).words, profile.id).toBe(`deep ${name}`);
		}
	});
});
