import { InputError, requireNumber, shown } from '../error/index.ts';
import type { Profile } from '../profile/index.ts';

/** Steps of the sum over the beam (Simpson's rule; even). */
const STEPS = 400;
/** The sum ends where intensity has halved this many times: a millionth of the peak. */
const HALVINGS = 20;

/**
 * Luminous intensity straight ahead, in candela, of a round beam.
 *
 * Assumption: intensity falls off from the axis as `I₀ · 2^−(2θ / beam)^k`, the smooth bell that is at half the peak at the
 * beam angle and at a tenth at the field angle (that fixes k). All lumens leave through it, none behind. Where the field
 * is not wider than the beam the light is taken as even over the cone of the beam angle: `Φ / (2π (1 − cos(beam / 2)))`.
 * @param lumens luminous flux, 0 or more
 * @param beam degrees to half the peak, more than 0 and less than 180
 * @param field degrees to a tenth of the peak
 * @throws InputError `optics.range`
 */
export function peakCandela(lumens: number, beam: number, field: number): number {
	if (!(lumens >= 0 && beam > 0 && beam < 180 && Number.isFinite(lumens))) {
		throw new InputError('optics.range', '', { expected: 'beam', lumens: shown(lumens), degrees: shown(beam) });
	}
	const half = (beam * Math.PI) / 360;
	if (!(field > beam)) return lumens / (2 * Math.PI * (1 - Math.cos(half)));
	const k = steepness(beam, field);
	const end = Math.min(Math.PI / 2, half * HALVINGS ** (1 / k));
	let sum = 0;
	for (let i = 0; i <= STEPS; i++) {
		const angle = (end * i) / STEPS;
		const weight = i === 0 || i === STEPS ? 1 : i % 2 === 1 ? 4 : 2;
		sum += weight * Math.sin(angle) * 2 ** -((angle / half) ** k);
	}
	const solidAngle = (2 * Math.PI * sum * end) / (3 * STEPS);
	return lumens / solidAngle;
}

/** The bell's exponent: at a tenth of the peak at the field angle. */
const steepness = (beam: number, field: number): number => Math.log(Math.log2(10)) / Math.log(field / beam);

/** `peakCandela` of a fixture with every emitter at full, all cells together, as from afar. */
export function candelaOf(profile: Profile): number {
	const lumens = profile.emitters.reduce((sum, emitter) => sum + emitter.lumens, 0);
	return peakCandela(lumens, profile.optics.beam, profile.optics.field);
}

/** Half angle in degrees, at most 90, past which a beam gives less than a ten-thousandth of its peak. */
export function reachOf({ beam, field }: Beam): number {
	return field > beam ? Math.min(90, (beam / 2) * Math.log2(1e4) ** (1 / steepness(beam, field))) : beam / 2;
}

/** A round beam: candela straight ahead, degrees to half the peak, degrees to a tenth of it. */
export type Beam = { readonly peak: number; readonly beam: number; readonly field: number };

/** A fixture's beam with every emitter at full. */
export function beamOf(profile: Profile): Beam {
	return { peak: candelaOf(profile), beam: profile.optics.beam, field: profile.optics.field };
}

/**
 * Intensity in candela off the axis, by the bell of `peakCandela`: half the peak at half the beam angle, a tenth at half the
 * field angle. Where the field is not wider than the beam, the peak within the cone and 0 outside.
 * @param beam peak 0 or more; beam angle more than 0 and less than 180 degrees
 * @param angle degrees from the axis, 0 to 180; behind the lens (90 and more) it is 0
 * @throws InputError `optics.range`
 */
export function candelaAt({ peak, beam, field }: Beam, angle: number): number {
	const limits = { code: 'optics.range', lo: 0 } as const;
	requireNumber(peak, { ...limits, hi: Number.MAX_VALUE, path: 'peak', of: 'intensity' });
	requireNumber(angle, { ...limits, hi: 180, path: 'angle', of: 'axis-angle' });
	if (!(beam > 0 && beam < 180)) {
		throw new InputError('optics.range', 'beam', { expected: 'beam-angle', found: shown(beam) });
	}
	if (angle >= 90) return 0;
	const offset = (2 * angle) / beam;
	if (!(field > beam)) return offset <= 1 ? peak : 0;
	return peak * 2 ** -(offset ** steepness(beam, field));
}
