/**
 * How light spreads: the pool a beam makes square on or at an angle, the light that falls on a surface, how strong a beam is straight
 * ahead and off its axis, and how even a row of them lights a wall. Small formulas in metres, degrees, candela, lumens and lux,
 * each with its source. What is left out: anything near the lens (the inverse square law holds from about five times the source's
 * size, and from further off for a narrow beam) and light that comes off the walls.
 */

export {
	type Bay,
	bayOf,
	edgeSpacing,
	luxAside,
	poolOverlap,
	rowLux,
	uniformity,
	widestSpacing,
} from './row.ts';
export {
	aimLux,
	type Beam,
	beamOf,
	candelaAt,
	candelaOf,
	illuminance,
	type Pool,
	peakCandela,
	poolDiameter,
	poolOnWall,
} from './throw.ts';
