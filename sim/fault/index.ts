/**
 * The fault catalogue: each kind of fault is a small change to a rig that is as its sheet says, with where it can sit, how
 * common it is (a weight; common practice, no source), what mends it, how long that takes and what caution goes with it.
 * A mend puts one place back to what the sheet says. Nothing here says what a fault looks like: the rig does.
 *
 * Modelled: what a crew meets at a gig, one change each. Left out: faults inside a desk's software, of the network before it,
 * and those that come and go by themselves; a wire that breaks now and then is treated as broken.
 */
export { FAULTS, faultEvents, faultOf, placedFaults } from './catalogue.ts';
export { MENDS } from './mends.ts';
export { type Fault, type FaultFamily, MEND_IDS, type Mend, type MendId, type Need, type Spot } from './types.ts';
