import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { cellLight } from '../../../sim/light/index.ts';
import { linearOf } from '../../../sim/light/screen.ts';
import { BORDERS, type Chroma, chromaOf, colourName, FAMILIES, lightWords } from '../../../sim/light/words.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';

const chromaticity = fc
	// evenly: doubles by chance are nearly all next to nothing
	.tuple(fc.integer({ min: 0, max: 75_000 }), fc.integer({ min: 0, max: 85_000 }))
	.map(([x, y]): [number, number] => [x / 100_000, y / 100_000])
	.filter(([x, y]) => x + y <= 1);

/** What is said of strength and colour: all the words there are. */
const spoken = new RegExp(
	`^(faint |dim )?(warm white|cool white|white|(deep |pale )?(${FAMILIES.map((it) => it.name).join('|')})|violet glow \\(ultraviolet\\))( with ultraviolet)?$`,
);

/** How near a chromaticity is to a border, as a share of what is measured. */
function nearest({ hue, purity, kelvin, duv }: Chroma): number {
	const ratio = (a: number, b: number) => Math.abs(a / b - 1);
	return Math.min(
		...FAMILIES.map(({ from }) => Math.abs(hue - from) / 360),
		...[BORDERS.pale, ...FAMILIES.flatMap(({ pale, deep }) => [pale, deep])].flatMap((it) =>
			it === undefined ? [] : [ratio(purity, it)],
		),
		...[BORDERS.warmHues.from, BORDERS.warmHues.to].map((it) => Math.abs(hue - it) / 360),
		...[BORDERS.warmest, BORDERS.white, BORDERS.neutral, BORDERS.cool, BORDERS.coolest].map((it) => ratio(kelvin, it)),
		ratio(Math.abs(duv), BORDERS.nearLocus),
	);
}

describe('names of colours', () => {
	it('are there for every chromaticity and strength, in words we know', () => {
		fc.assert(
			fc.property(chromaticity, between(0, 1), fc.constantFrom(0, 0.001, 0.5, 1), (xy, level, ultraviolet) => {
				expect(lightWords(xy, level, ultraviolet)).toMatch(spoken);
			}),
			{ numRuns: runs(1000) },
		);
		expect(lightWords(null, 0, 0)).toBe('dark');
	});

	it('stay the same under a tiny change, but at the stated borders', () => {
		fc.assert(
			fc.property(chromaticity, between(-1e-5, 1e-5), between(-1e-5, 1e-5), ([x, y], dx, dy) => {
				fc.pre(y > 0.02 && nearest(chromaOf([x, y])) > 0.01);
				expect(colourName([x + dx, y + dy])).toBe(colourName([x, y]));
			}),
			{ numRuns: runs(1000) },
		);
	});

	it('do not hang on brightness, only on strength', () => {
		fc.assert(
			fc.property(chromaticity, (xy) => {
				const name = colourName(xy);
				expect(lightWords(xy, 1, 0)).toBe(name);
				expect(lightWords(xy, BORDERS.dim, 0)).toBe(name);
				expect(lightWords(xy, BORDERS.dim - 1e-9, 0)).toBe(`dim ${name}`);
				expect(lightWords(xy, BORDERS.faint - 1e-9, 0)).toBe(`faint ${name}`);
			}),
			{ numRuns: runs(200) },
		);
	});

	it('call a lone emitter by its family', () => {
		const family: Readonly<Record<string, RegExp>> = {
			red: /red$/,
			green: /green$/,
			blue: /blue$/,
			amber: /amber$/,
			white: /white$/,
			'warm-white': /white$/,
			ultraviolet: /violet/,
		};
		for (const profile of BUNDLED) {
			for (const [e, emitter] of profile.emitters.entries()) {
				for (const level of [1, 0.5, 0.1, 0.01]) {
					const outputs = profile.emitters.map((_, i) => (i === e ? level : 0));
					expect(cellLight(profile, outputs).words).toMatch(family[emitter.id] as RegExp);
				}
			}
		}
	});

	// Symptom: amber and green, full up, were 'deep green', red with amber 'deep red', and blue with some white 'warm white'. Cause: hue
	// was judged as a screen shows it, where what lies beyond its edge comes out alike, and a formula for whites was asked of blues.
	describe('of two emitters, full up, as a crew would say it (common practice, no source)', () => {
		const pairs: readonly [one: string, other: string, names: readonly string[]][] = [
			['red', 'green', ['yellow']],
			['red', 'blue', ['magenta']],
			['green', 'blue', ['cyan']],
			['red', 'amber', ['orange']],
			['green', 'amber', ['yellow-green']],
			['white', 'amber', ['warm white']],
			['red', 'white', ['pink']],
			['green', 'white', ['pale green']],
			['blue', 'white', ['pale blue', 'pale violet']],
			['red', 'warm-white', ['orange']],
			['green', 'warm-white', ['yellow-green']],
			['blue', 'amber', ['pink', 'pale magenta', 'magenta', 'violet', 'purple']],
		];
		it.each(pairs.flatMap(([one, other, names]) => [[one, other, names] as const, [other, one, names] as const]))(
			'%s and %s: %j',
			(one, other, names) => {
				let found = 0;
				for (const profile of BUNDLED) {
					const ids = profile.emitters.map(({ id }) => id);
					if (!ids.includes(one) || !ids.includes(other)) continue;
					found++;
					const outputs = ids.map((id) => (id === one || id === other ? 1 : 0));
					expect(names, profile.id).toContain(cellLight(profile, outputs).words);
				}
				expect(found).toBeGreaterThan(0);
			},
		);

		it.each([
			['red', 'amber', ['red', 'orange']],
			['amber', 'red', ['orange']],
			['green', 'amber', ['green', 'yellow-green']],
			['amber', 'green', ['yellow-green', 'yellow']],
			['blue', 'white', ['blue', 'pale blue', 'violet', 'pale violet']],
		] as const)('%s full and %s at half: %j', (one, other, names) => {
			for (const profile of BUNDLED) {
				const ids = profile.emitters.map(({ id }) => id);
				if (!ids.includes(one) || !ids.includes(other)) continue;
				const outputs = ids.map((id) => (id === one ? 1 : id === other ? 0.5 : 0));
				expect(names, profile.id).toContain(cellLight(profile, outputs).words);
			}
		});

		it('deep is said of a lone emitter, and of no mix', () => {
			for (const profile of BUNDLED) {
				const seen = profile.emitters.map(({ ultraviolet }) => !ultraviolet);
				for (const [a] of profile.emitters.entries())
					for (const [b] of profile.emitters.entries()) {
						if (a >= b || !seen[a] || !seen[b]) continue;
						const outputs = profile.emitters.map((_, e) => (e === a || e === b ? 1 : 0));
						expect(cellLight(profile, outputs).words, `${profile.id} ${a} ${b}`).not.toMatch(/deep/);
					}
			}
		});
	});

	it('say white of red, green and blue mixed to the white point', () => {
		const profile = BUNDLED[0] as (typeof BUNDLED)[number];
		const [red, green, blue] = [0, 1, 2].map((e) => {
			const [x, y] = profile.emitters[e]?.xy ?? [0, 1];
			const share = (profile.emitters[e]?.lumens ?? 0) / profile.emitters.reduce((sum, it) => sum + it.lumens, 0);
			return linearOf([(x / y) * share, share, ((1 - x - y) / y) * share]);
		}) as [ReturnType<typeof linearOf>, ReturnType<typeof linearOf>, ReturnType<typeof linearOf>];
		// Cramer's rule: the shares of the three that make linear red, green and blue alike
		const det = (a: typeof red, b: typeof red, c: typeof red) =>
			a.r * (b.g * c.b - c.g * b.b) - b.r * (a.g * c.b - c.g * a.b) + c.r * (a.g * b.b - b.g * a.b);
		const grey = { r: 1, g: 1, b: 1 };
		const shares = [det(grey, green, blue), det(red, grey, blue), det(red, green, grey)];
		const most = Math.max(...shares);
		const light = cellLight(profile, [...shares.map((it) => it / most), 0, 0, 0]);
		expect(light.xy?.[0]).toBeCloseTo(0.3127, 3);
		expect(light.xy?.[1]).toBeCloseTo(0.329, 3);
		expect(light.words).toBe('white');
		const { r, g, b } = { r: light.colour.slice(1, 3), g: light.colour.slice(3, 5), b: light.colour.slice(5, 7) };
		expect([g, b]).toEqual([r, r]);
	});

	// Symptom: a border moved by a little left every test green. Cause: the tests asked the borders where they were. Borders are ours, no source.
	it('have their borders here', () => {
		expect(BORDERS).toEqual({
			faint: 0.02,
			dim: 0.2,
			nearLocus: 0.012,
			warmest: 2500,
			white: 4000,
			cool: 7000,
			coolest: 15000,
			neutral: 5000,
			warmHues: { from: 15, to: 120 },
			pale: 0.85,
		});
		expect(FAMILIES.map(({ from, name, deep, pale }) => [from, name, deep, pale])).toEqual([
			[10, 'red', 1.03, undefined],
			[32, 'orange', undefined, undefined],
			[47, 'amber', undefined, undefined],
			[82, 'yellow', undefined, undefined],
			[116, 'yellow-green', undefined, undefined],
			[142, 'green', 1.4, undefined],
			[166, 'turquoise', undefined, undefined],
			[186, 'cyan', undefined, undefined],
			[222, 'sky blue', undefined, undefined],
			[244, 'blue', 1.02, undefined],
			[284, 'violet', undefined, undefined],
			[312, 'purple', undefined, undefined],
			[322, 'magenta', undefined, undefined],
			[344, 'pink', undefined, 0.72],
		]);
	});

	it('are what the borders make of hue, purity, warmth and distance: reckoned a second way', () => {
		const families = [...FAMILIES].sort((a, b) => b.from - a.from);
		fc.assert(
			fc.property(chromaticity, (xy) => {
				const { hue, purity, kelvin, duv } = chromaOf(xy);
				const family = families.find(({ from }) => from <= hue) ?? families[0];
				const name = family?.name ?? '';
				const near = duv < 0.012 && duv > -0.012 && !(kelvin < 2500) && kelvin < 15000;
				const white = near && ((!(hue < 15) && hue < 120) || !(kelvin < 5000));
				const [pale, deep] = [purity < (family?.pale ?? 0.85), !(purity < (family?.deep ?? 1e9))];
				const plain = pale ? (name === 'red' ? 'pink' : `pale ${name}`) : deep ? `deep ${name}` : name;
				const warmth = kelvin < 4000 ? 'warm white' : kelvin < 7000 ? 'white' : 'cool white';
				expect(colourName(xy)).toBe(white ? warmth : plain);
			}),
			{ numRuns: runs(1000) },
		);
	});

	it('are told apart where the trade tells them apart', () => {
		const names = new Map<string, [number, number]>([
			['warm white', [0.4476, 0.4074]],
			['white', [0.3127, 0.329]],
			['cool white', [0.299, 0.3149]],
			['yellow', [0.4193, 0.5053]],
			['cyan', [0.2246, 0.3287]],
			['magenta', [0.3209, 0.1542]],
			['amber', [0.5752, 0.4242]],
			['orange', [0.627, 0.3725]],
			['pink', [0.4, 0.28]],
			['pale green', [0.31, 0.42]],
		]);
		for (const [name, xy] of names) expect(colourName(xy), String(xy)).toBe(name);
	});
});
