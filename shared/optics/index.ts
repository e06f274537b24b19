/**
 * How light spreads: the pool a beam makes, the light that falls on a surface, and how strong a beam is straight ahead. Small
 * formulas in metres, degrees, candela, lumens and lux, each with its source. What is left out: anything near the lens (the
 * inverse square law holds from about five times the source's size) and light that comes off the walls.
 */
export { candelaOf, peakCandela } from './candela.ts';
export { illuminance, poolDiameter } from './throw.ts';
