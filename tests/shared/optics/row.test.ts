import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	type Beam,
	bayOf,
	beamOf,
	candelaAt,
	edgeSpacing,
	illuminance,
	luxAside,
	poolDiameter,
	poolOverlap,
	rowLux,
	uniformity,
	widestSpacing,
} from '../../../shared/optics/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { between } from '../../between.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../thrown.ts';

const anyBeam: fc.Arbitrary<Beam> = fc
	.record({
		peak: between(10, 1e5),
		beam: between(4, 90),
		spill: between(1.2, 1.9),
	})
	.map(({ peak, beam, spill }) => ({ peak, beam, field: Math.min(170, beam * spill) }));
const metres = between(0.5, 30);

describe('intensity off the axis', () => {
	it('is the peak ahead, half at the beam angle, a tenth at the field angle, and falls all the way', () => {
		fc.assert(
			fc.property(anyBeam, (beam) => {
				expect(candelaAt(beam, 0)).toBe(beam.peak);
				expect(candelaAt(beam, beam.beam / 2) / beam.peak).toBeCloseTo(0.5, 9);
				expect(candelaAt(beam, beam.field / 2) / beam.peak).toBeCloseTo(0.1, 9);
				for (let angle = 1; angle < 90; angle++)
					expect(candelaAt(beam, angle)).toBeLessThanOrEqual(candelaAt(beam, angle - 1));
			}),
			{ numRuns: runs(50) },
		);
	});

	it('of an even cone stops at its edge; none goes backwards', () => {
		const cone = { peak: 100, beam: 40, field: 40 };
		expect([0, 19, 20, 21, 90, 180].map((angle) => candelaAt(cone, angle))).toEqual([100, 100, 100, 0, 0, 0]);
		expect(candelaAt({ peak: 100, beam: 120, field: 170 }, 90)).toBe(0);
	});

	it('of no sense is refused', () => {
		expect(thrownBy(() => candelaAt({ peak: -1, beam: 20, field: 30 }, 0))).toMatchObject({ path: 'peak' });
		expect(thrownBy(() => candelaAt({ peak: 1, beam: 180, field: 30 }, 0))).toMatchObject({ path: 'beam' });
		expect(thrownBy(() => candelaAt({ peak: 1, beam: 20, field: 30 }, -1))).toMatchObject({ path: 'angle' });
	});
});

describe('light on a wall', () => {
	it('below the beam is peak over distance squared, and aside it is the cosine law to the letter', () => {
		fc.assert(
			fc.property(anyBeam, metres, between(0, 60), (beam, d, angle) => {
				expect(luxAside(beam, d, 0) / illuminance(beam.peak, d)).toBeCloseTo(1, 9);
				const aside = d * Math.tan((angle * Math.PI) / 180);
				const slant = d / Math.cos((angle * Math.PI) / 180);
				const lux = illuminance(candelaAt(beam, angle), slant, angle);
				expect(luxAside(beam, d, aside)).toBeCloseTo(lux, 6);
				expect(luxAside(beam, d, -aside)).toBe(luxAside(beam, d, aside));
			}),
			{ numRuns: runs(100) },
		);
	});

	it('of a row is the sum of its fixtures', () => {
		const beam = { peak: 1000, beam: 25, field: 42 };
		expect(rowLux(beam, 3, [], 0)).toBe(0);
		expect(rowLux(beam, 3, [0, 1, 2], 0.5)).toBeCloseTo(2 * luxAside(beam, 3, 0.5) + luxAside(beam, 3, 1.5), 9);
	});

	it('where half-peak edges meet comes to cos³ of the half angle, of the light below one', () => {
		fc.assert(
			fc.property(anyBeam, metres, (beam, d) => {
				const spacing = edgeSpacing(d, beam.beam);
				const between = rowLux(beam, d, [0, spacing], spacing / 2) / luxAside(beam, d, 0);
				expect(between).toBeCloseTo(Math.cos((beam.beam * Math.PI) / 360) ** 3, 9);
			}),
			{ numRuns: runs(100) },
		);
	});
});

describe('neighbouring pools', () => {
	it('run into each other by what the spacing lacks of the pool', () => {
		expect(poolOverlap(1, 1.5)).toBeCloseTo(0.5, 12);
		expect(poolOverlap(0, 1.5)).toBe(1.5);
		expect(poolOverlap(2, 1.5)).toBe(0);
		expect(poolOverlap(edgeSpacing(4, 30), poolDiameter(4, 30))).toBe(0);
		expect(thrownBy(() => poolOverlap(-1, 1))).toMatchObject({ code: 'optics.range', path: 'spacing' });
		expect(thrownBy(() => poolOverlap(1, Number.NaN))).toMatchObject({ code: 'optics.range', path: 'diameter' });
	});
});

describe('evenness', () => {
	it('of a bay is what a long row of separate sums gives', () => {
		fc.assert(
			fc.property(anyBeam, metres, between(0.4, 1.6), (beam, d, part) => {
				const spacing = part * edgeSpacing(d, beam.beam);
				const places = Array.from({ length: 401 }, (_, i) => (i - 200) * spacing);
				const lux = Array.from({ length: 200 }, (_, i) => rowLux(beam, d, places, (spacing * i) / 200));
				const bay = bayOf(beam, d, spacing);
				expect(bay.uniformity).toBeCloseTo(uniformity(lux), 2);
				expect(bay.mean / (lux.reduce((sum, each) => sum + each, 0) / lux.length)).toBeCloseTo(1, 2);
				expect(bay.most / Math.max(...lux)).toBeCloseTo(1, 2);
				expect(bay.least).toBeLessThanOrEqual(bay.mean);
				expect(bay.mean).toBeLessThanOrEqual(bay.most);
			}),
			{ numRuns: runs(15) },
		);
	});

	it('is looked for from the middle of one beam to the middle between two', () => {
		const beam = { peak: 1000, beam: 25, field: 42 };
		const spacing = 1.5 * edgeSpacing(3, 25);
		const places = Array.from({ length: 41 }, (_, i) => (i - 20) * spacing);
		const { least, most } = bayOf(beam, 3, spacing);
		expect(most / rowLux(beam, 3, places, 0)).toBeCloseTo(1, 4);
		expect(least / rowLux(beam, 3, places, spacing / 2)).toBeCloseTo(1, 4);
	});

	it('does not hang on the throw, only on spacing over throw', () => {
		fc.assert(
			fc.property(anyBeam, metres, (beam, d) => {
				const near = bayOf(beam, 1, edgeSpacing(1, beam.beam)).uniformity;
				expect(bayOf(beam, d, edgeSpacing(d, beam.beam)).uniformity).toBeCloseTo(near, 6);
			}),
			{ numRuns: runs(20) },
		);
	});

	it('at the widest spacing is what was asked for, and a little wider it is not', () => {
		fc.assert(
			fc.property(fc.constantFrom(...BUNDLED), metres, fc.constantFrom(0.5, 0.7, 0.9), (profile, d, wanted) => {
				const beam = beamOf(profile);
				const spacing = widestSpacing(beam, d, wanted);
				if (spacing === null) throw new Error('there is one');
				expect(bayOf(beam, d, spacing).uniformity).toBeGreaterThanOrEqual(wanted);
				for (const more of [1.01, 1.1, 1.3]) expect(bayOf(beam, d, spacing * more).uniformity).toBeLessThan(wanted);
			}),
			{ numRuns: runs(15) },
		);
	});

	it('asked of too much is null; of nothing, twice the pool', () => {
		const beam = { peak: 1000, beam: 25, field: 25 };
		expect(widestSpacing({ ...beam, field: 42 }, 3, 0)).toBeCloseTo(2 * edgeSpacing(3, 25), 9);
		expect(widestSpacing({ ...beam, peak: 0 }, 3, 0.5)).toBeNull();
	});

	it.each([
		[() => bayOf({ peak: 1, beam: 20, field: 30 }, 10, 0.05), 'spacing'],
		[() => bayOf({ peak: 1, beam: 20, field: 30 }, 0, 1), 'metres'],
		[() => widestSpacing({ peak: 1, beam: 20, field: 30 }, 10, 2), 'wanted'],
		[() => uniformity([]), 'lux'],
		[() => uniformity([1, -1]), 'lux'],
	])('of no sense is refused (%#)', (act, path) => {
		expect(thrownBy(act)).toMatchObject({ code: 'optics.range', path });
	});

	it('of one light level is whole, of darkness none', () => {
		expect(uniformity([5, 5, 5])).toBe(1);
		expect(uniformity([0, 0])).toBe(0);
	});
});
