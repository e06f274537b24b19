/**
 * The bare solver of the finder: which check to make next, and the whole tree of checks, so that the guilty suspect is
 * found in the fewest expected seconds. It knows nothing of rigs: weights, seconds and a table of outcomes go in.
 *
 * It models one guilty suspect, checks with several outcomes and unequal seconds, repairs that clear several suspects,
 * checks that are the repair itself and give its seconds back (`Refund`), walking from place to place, and wrong answers:
 * one that is wrong stays wrong when asked again, each wrong one is as likely as the next, and errors of different
 * checks have nothing to do with each other. It leaves out two faults at once (give each pair as a suspect of its own),
 * checks whose seconds change with what was found, and checks that change the rig. `sequence` finds the optimum up to
 * 30 suspects and stands a thousandth above it with 60 (at worst three hundredths). `askNext`, with wrong answers, follows every answer where
 * few are left, and stands within 1.001 of the optimum over all histories there (20 problems a row of 7 and 8 suspects and 6 to 8 checks,
 * answers wrong at .02, .05 and .15; at worst 1.01, where information a second means 1.00 to 1.08). With more it is a rollout with no
 * proof: on 150 walks over 30 suspects and 50 checks, seconds priced with wrong ends are 76.2, 114.9 and 275.8 at those rates, by
 * information a second 76.0, 124.7 and 368.1. `bestCheck` is the one or the other, by whether answers may be wrong. tests/sim/sequence
 * measures all three (`npm run soak` prints the tables), tests/speed how long they take.
 */
export { shareApart } from './apart.ts';
export { askNext, bestCheck } from './ask.ts';
export { askFirstEdition } from './edition-1.ts';
export type { NextStep } from './plan.ts';
export { type RankedCheck, type RankOptions, rankChecks } from './rank.ts';
export { orderRepairs, type RepairOrder } from './repairs.ts';
export { sequence } from './sequence.ts';
export {
	classesOf,
	makeOutcomeTable,
	numberRepairs,
	type OutcomeTable,
	pickSuspects,
	suspectsByRepair,
	type TableSearch,
} from './table.ts';
export {
	type AskOptions,
	type CheckNode,
	type LeafNode,
	makeSeconds,
	type Outcome,
	type Places,
	type Policy,
	type Refund,
	type Seconds,
	type SequenceOptions,
	secondsFrom,
	type TestBranch,
	type TestNode,
	type TestProblem,
	type TestTree,
} from './types.ts';
export { entropyOf, outcomesOf, sharesByRepair, splitBy, updateWeights } from './weights.ts';
