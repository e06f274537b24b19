/**
 * The finder: from what somebody complains of to the cause and the repair. A check's outcome under a suspect is whatever the rig,
 * opened with that suspect's fault, shows; from that table come the weights after each answer and the next check, by
 * `sim/sequence`. On a large rig the first check is chosen on part of that table (`openPart`), which the whole then takes in.
 *
 * Modelled: one fault, two at once (laid out again at each repair that fails), and one suspect more for what the model does not know; answers that are now and then wrong;
 * walks between fixtures, desk and cables, and climbs to what hangs; what a gig does not allow. Left out: faults that come and go, and what a check
 * wears out. Seconds, weights and slips are common practice with no source; they move the order of the checks and not what a check shows.
 */
export { sequence } from '../sequence/index.ts';
export { CHECK_KINDS, type Check, type CheckSort } from './checks/index.ts';
export { COMPLAINT_KINDS, type Complaint, type ComplaintKind, complaintsOf } from './complaints.ts';
export { finderOn, openFinder, openOutcomes, openPart } from './finder.ts';
export { type FaultDrill, hiddenRig, hideFaults, makeFaultDrill, type ReviewedStep, reviewWalk } from './hidden.ts';
export { ELSE } from './layout.ts';
export { CLIMB } from './route.ts';
export { type Candidate, offeredBy, type RigOutcomes, tableFor } from './table.ts';
export { type FaultTree, faultTree, type PrintedTree } from './tree.ts';
export { isRepair, repairEvents, repairTriedBy, triedBy, triesKind } from './tried.ts';
export {
	type Finder,
	type FinderOptions,
	type Learnt,
	learn,
	type NextCheck,
	type PlacedRepair,
	type Suspect,
	type Verdict,
	type WalkAnswer,
} from './types.ts';
export { together } from './widen.ts';
export { type Came, faultyWitness, meantWitness, type Witness, witness } from './witness.ts';
