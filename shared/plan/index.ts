/**
 * A rig as it is planned, before it is a sheet: rows of fixtures with modes and start addresses, by rules that the person picks.
 * Here are the packing of start addresses, all that is wrong with a plan and what one tap does about it, the line along the room, the
 * sums, the light on the wall, the table that is pasted in, the rig sheet that it all comes to, and what a crew ticks off of it at the lights. Pure, plain
 * JSON in and out. Every figure says which of its numbers were given, which a profile says and which are assumed; none is a verdict.
 * Left out: cables that go another way than along the wall, what a hanging point may take.
 */
export { BREAKER_CURVES, type BreakerCurve } from './breaker.ts';
export { type CableEnd, cableKey, dataCables, type NumberedCable, numberedCables } from './cables.ts';
export {
	type CableChange,
	changesOf,
	kindOf,
	type PlanChanges,
	type RowChanges,
	swapped,
} from './changes.ts';
export { patchTable } from './csv.ts';
export {
	DIGEST_LENGTH,
	type DigestVerdict,
	digestsOf,
	type PlanDigests,
	readDigest,
	type SheetDigest,
	type SlipFrom,
	sheetDigests,
	verdictOn,
} from './digests.ts';
export { fedBy, fedWithin, letGo } from './feeds.ts';
export type { Figure, FigureId, FigurePart, How } from './figure.ts';
export { figuresOf, isNear, isOfBattery, isOfLoad, isOver } from './figures.ts';
export { type FoundOff, foundOff, isOff, isSeen, sawPanels, shortestWalk } from './found.ts';
export { type LightChange, type LoneLight, lightChanges, lightOf, lightsOf, type RowLight, wallLux } from './light.ts';
export {
	alongRoom,
	CABLE_SLACK,
	type DataLink,
	type LinePlan,
	type LineRun,
	leaderOf,
	lineOrder,
	linesOf,
	linksOf,
} from './line.ts';
export {
	countsOnBattery,
	DEFAULT_VOLTS,
	emptyPlan,
	isOnBattery,
	type NewRow,
	planFromSheet,
	profileOf,
	UNKNOWN_CIRCUIT,
	withRows,
} from './make.ts';
export { type Packed, type PackItem, packAddresses, packed, placed, rowFootprint } from './pack.ts';
export { canSet, standingAt } from './panel.ts';
export {
	type PlanProblem,
	problemsOf,
	type Repair,
	type RowChange,
	repaired,
	repairsOf,
} from './problems.ts';
export { readTicks } from './readTicks.ts';
export { loadPlan, readPlan } from './schema.ts';
export { askedOf, planSheet, roleOf, settingsOf, sheetBefore } from './sheet.ts';
export {
	circuitKey,
	litCircuits,
	type PlanSays,
	planSays,
	type RowStep,
	type StepStanding,
	stepsOf,
	TICK_STEPS,
	type TickStep,
	type TickWarning,
	walkOf,
	warningsOf,
} from './steps.ts';
export {
	awgFor,
	isOutletRating,
	isPastOnePlug,
	mayBeUs,
	US_VOLTS,
	USUAL_VOLTS,
	usualBreakers,
} from './supply.ts';
export {
	FIELDS,
	type Field,
	guessFields,
	type PastedTable,
	parseTable,
	plainText,
	READ_MOST,
	type ReadRow,
	type RowTrouble,
	readRows,
	type TableWords,
	withCell,
} from './table.ts';
export {
	boardOf,
	goesWith,
	LONGEST_INITIALS,
	LONGEST_NOTE,
	MOST_TICKS,
	mergedTicks,
	NO_TICKS,
	newIn,
	nextOf,
	type RigTicks,
	type Signed,
	type StepState,
	type Tick,
	type TickBoard,
	type TickNote,
	withNote,
	withTick,
} from './ticks.ts';
export {
	PACK_ORDERS,
	type PackOrder,
	type PackRules,
	PLAN_MOST,
	PLAN_PROFILES,
	type Plan,
	type PlanRow,
	type PlanShow,
	type PlanSource,
	type PlanSupply,
} from './types.ts';
