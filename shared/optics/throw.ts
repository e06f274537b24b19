import { InputError, requireNumber, shown } from '../error/index.ts';
import type { Profile } from '../profile/index.ts';

/**
 * Diameter in metres of the pool a round beam makes square on a wall: `2 d tan(θ / 2)`.
 * @param metres from lens to wall, more than 0
 * @param degrees beam angle (to half the peak) or field angle (to a tenth), more than 0 and less than 180
 * @throws InputError `optics.range`
 */
export function poolDiameter(metres: number, degrees: number): number {
	above0(metres, 'metres', 'throw');
	return 2 * metres * Math.tan(radians(requireBeam(degrees)) / 2);
}

/** A round beam's pool on a flat wall, in metres. */
export type Pool = {
	/** Its edges along the wall, from the foot of the square throw, on the side the beam is aimed to; the near one may lie behind it. */
	readonly near: number;
	/** Infinity where the light at this edge runs along the wall and never meets it. */
	readonly far: number;
	/** Where the middle of the beam lands; Infinity where it never does. */
	readonly aim: number;
	/** From near to far. */
	readonly long: number;
	/** Across that, at the pool's widest. */
	readonly wide: number;
};

/**
 * The pool of a round beam that meets a wall at an angle. A cone cut by a plane is an ellipse: its edges are at
 * `d tan(tilt ± θ / 2)`, and its width is `2 d sin(θ/2) / √(cos²(θ/2) − sin²(tilt))` (plane geometry of the cone, recalculated;
 * the edge is read in an antenna maker's note on beams that touch the ground). Square on, both are the diameter.
 * @param metres from lens to wall, square to it, more than 0
 * @param degrees beam angle or field angle, more than 0 and less than 180
 * @param tilt degrees between the beam's axis and the wall's normal, 0 (square on) to 90 (along the wall)
 * @throws InputError `optics.range`
 */
export function poolOnWall(metres: number, degrees: number, tilt: number): Pool {
	above0(metres, 'metres', 'throw');
	const half = radians(requireBeam(degrees)) / 2;
	const turn = radians(requireTilt(tilt));
	const at = (angle: number): number =>
		angle >= Math.PI / 2 - 1e-9 ? Number.POSITIVE_INFINITY : metres * Math.tan(angle);
	const near = metres * Math.tan(turn - half);
	const far = at(turn + half);
	const spread = Math.cos(half) ** 2 - Math.sin(turn) ** 2;
	return {
		near,
		far,
		aim: at(turn),
		long: far - near,
		wide: far === Number.POSITIVE_INFINITY ? far : (2 * metres * Math.sin(half)) / Math.sqrt(spread),
	};
}

/**
 * Lux where the middle of a turned beam meets a flat wall: `I cos³ t / d²`. The light goes `d / cos t` to get there and meets the
 * wall at `t`, so this is `I cos t / r²` (CIE e-ILV 912, recalculated). As good as 0 where the beam runs along the wall.
 * @param candela along the beam's axis, 0 or more
 * @param metres from lens to wall, square to it, more than 0
 * @param tilt degrees between the beam's axis and the wall's normal, 0 (square on) to 90 (along the wall)
 * @throws InputError `optics.range`
 */
export function aimLux(candela: number, metres: number, tilt: number): number {
	above0(metres, 'metres', 'throw');
	return illuminance(candela, metres / Math.cos(radians(requireTilt(tilt))), tilt);
}

const requireTilt = (tilt: number): number =>
	requireNumber(tilt, { lo: 0, hi: 90, code: 'optics.range', path: 'tilt', of: 'tilt' });

/**
 * Illuminance in lux: `I cos θ / d²` (CIE e-ILV 912, read). Holds from about five times the size of the source, for a wide beam (read); a narrow one needs more (from memory).
 * @param candela towards the surface, 0 or more
 * @param metres from source to surface, more than 0
 * @param incidence degrees between the light and the surface's normal, 0 (square on) to 90
 * @throws InputError `optics.range`
 */
export function illuminance(candela: number, metres: number, incidence = 0): number {
	const limits = { code: 'optics.range', lo: 0 } as const;
	requireNumber(candela, { ...limits, hi: Number.MAX_VALUE, path: 'candela', of: 'intensity' });
	requireNumber(incidence, { ...limits, hi: 90, path: 'incidence', of: 'incidence' });
	above0(metres, 'metres', 'distance');
	return (candela * Math.cos(radians(incidence))) / metres ** 2;
}

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

/** Hands a number back if it is over 0 and finite. Throws `optics.range`. */
export function above0(found: number, path: string, of: 'throw' | 'distance' | 'beam-angle'): number {
	if (!(found > 0 && found < Number.POSITIVE_INFINITY)) {
		throw new InputError('optics.range', path, { expected: 'over-0', of, found: shown(found) });
	}
	return found;
}

/** Hands an angle of a beam, in degrees, back if it is over 0 and under 180. Throws `optics.range`. */
function requireBeam(degrees: number, path = 'degrees'): number {
	above0(degrees, path, 'beam-angle');
	if (degrees >= 180) {
		throw new InputError('optics.range', path, {
			expected: 'below',
			of: 'beam-angle',
			limit: 180,
			found: shown(degrees),
		});
	}
	return degrees;
}

/** Degrees in radians. */
export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
