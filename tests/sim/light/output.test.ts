import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Profile } from '../../../shared/profile/index.ts';
import {
	askLevels,
	compileMode,
	curve,
	makeAsk,
	type OutputRequest,
	outputOf,
	STROBE_DUTY,
	wattsOf,
} from '../../../sim/light/index.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';
import { anyLight, fixtures, lab, share, silence } from './lab.ts';

const curves = ['straight', 'square', 'soft'] as const;
const anyCurve = fc.constantFrom(...curves);
const sound = { deadEmitters: [], foldBack: 1 } as const;

function render(profile: Profile, levels: Float32Array, change: Partial<OutputRequest> = {}): Float32Array {
	const plain: OutputRequest = {
		profile,
		levels,
		intensity: new Float32Array(profile.cells).fill(1),
		curve: 'straight',
		limit: 100,
		condition: sound,
		strobe: 1,
	};
	return outputOf({ ...plain, ...change }, new Float32Array(levels.length));
}

describe('dim curves', () => {
	it('run from 0 to 1 and never fall', () => {
		fc.assert(
			fc.property(anyCurve, share, share, (kind, a, b) => {
				const [low, high] = a < b ? [a, b] : [b, a];
				expect(curve(kind, 0)).toBe(0);
				expect(curve(kind, 1)).toBe(1);
				expect(curve(kind, low)).toBeLessThanOrEqual(curve(kind, high));
			}),
			{ numRuns: runs(200) },
		);
	});

	it('bend as they say', () => {
		expect(curves.map((kind) => curve(kind, 0.25))).toEqual([0.25, 0.0625, 0.15625]);
		// soft is the same from either end
		expect(curve('soft', 0.3) + curve('soft', 0.7)).toBeCloseTo(1, 12);
	});
});

describe('output', () => {
	it('is the level itself where nothing stands in its way', () => {
		fc.assert(
			fc.property(anyLight, ({ profile, levels }) => {
				expect(render(profile, levels)).toEqual(levels);
			}),
			{ numRuns: runs(50) },
		);
	});

	it('keeps a colour’s proportions as its intensity falls, whatever the curve', () => {
		fc.assert(
			fc.property(anyLight, anyCurve, between(0.05, 1), ({ profile, levels }, kind, dim) => {
				const full = render(profile, levels, { curve: kind });
				const intensity = new Float32Array(profile.cells).fill(dim);
				const dimmed = render(profile, levels, { curve: kind, intensity });
				const gain = curve(kind, Math.fround(dim));
				for (const [i, output] of dimmed.entries()) expect(output).toBeCloseTo((full[i] ?? 0) * gain, 5);
			}),
			{ numRuns: runs(100) },
		);
	});

	it('is capped in proportion by limit and fold-back, and averaged over a strobe', () => {
		fc.assert(
			fc.property(anyLight, fc.integer({ min: 10, max: 100 }), share, ({ profile, levels }, limit, foldBack) => {
				const got = render(profile, levels, { limit, condition: { deadEmitters: [], foldBack }, strobe: 'mean' });
				for (const [i, output] of got.entries()) {
					expect(output).toBeCloseTo((levels[i] ?? 0) * (limit / 100) * foldBack * STROBE_DUTY, 6);
				}
			}),
			{ numRuns: runs(100) },
		);
	});

	it('is nothing between two flashes', () => {
		expect(Math.max(...render(lab, new Float32Array(12).fill(1), { strobe: 0 }))).toBe(0);
	});

	it('leaves dead emitters out in every cell, and only those', () => {
		const got = render(lab, new Float32Array(12).fill(1), {
			condition: { deadEmitters: ['green', 'violet', 'no-such'], foldBack: 1 },
		});
		expect([...got]).toEqual([1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0]);
	});

	it('takes each cell’s own intensity', () => {
		const got = render(lab, new Float32Array(12).fill(1), { intensity: Float32Array.of(0, 0.5, 1) });
		expect([...got]).toEqual([0, 0, 0, 0, 0.5, 0.5, 0.5, 0.5, 1, 1, 1, 1]);
	});
});

describe('what an ask comes to', () => {
	const ask = () => {
		const it = makeAsk(lab);
		compileMode(lab, 'three').read(new Uint8Array(512).fill(255), 1, it);
		return it;
	};
	const levels = (change: object) => {
		const out = new Float32Array(12).fill(9);
		askLevels(lab, Object.assign(ask(), change), 0, silence, out);
		return [...out.subarray(0, 4)];
	};
	const blue = lab.held.findIndex((it) => it.id === 'blue');
	const hop = lab.programmes.findIndex((it) => it.id === 'lab-change');

	it('dark before programme, programme before held colour, held colour before the slots', () => {
		expect(levels({})).toEqual([1, 1, 1, 0]);
		expect(levels({ held: blue })).toEqual([0, 0, 1, 0]);
		expect(levels({ held: blue, programme: hop })).toEqual([1, 0, 0, 0]);
		expect(levels({ held: blue, programme: hop, dark: true })).toEqual([0, 0, 0, 0]);
	});
});

describe('watts', () => {
	it('are the idle draw when dark, and every emitter’s own more at full', () => {
		for (const profile of fixtures) {
			const none = new Float32Array(profile.cells * profile.emitters.length);
			const all = profile.emitters.reduce((sum, it) => sum + it.watts, 0);
			expect(wattsOf(profile, none)).toBe(profile.power.idleWatts);
			expect(wattsOf(profile, none.fill(1))).toBeCloseTo(profile.power.idleWatts + all, 9);
		}
	});

	it('add up, and never fall as an output rises', () => {
		fc.assert(
			fc.property(anyLight, ({ profile, levels }) => {
				const idle = profile.power.idleWatts;
				const half = levels.map((it) => it / 2);
				expect(wattsOf(profile, half) - idle).toBeCloseTo((wattsOf(profile, levels) - idle) / 2, 3);
			}),
			{ numRuns: runs(50) },
		);
	});
});
