import { requireNumber } from '../error/index.ts';
import { above0, radians, requireBeam } from './limits.ts';

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
