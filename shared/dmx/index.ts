/**
 * The arithmetic of the line: levels, percent and hexadecimal; 16-bit pairs; start addresses, footprints and overlaps,
 * in one universe and across many; bands of values; DIP switches; and the numbers of the standards (E1.11, E1.20,
 * E1.31, EIA-485), each in one frozen place with its source. Pure functions and constants, no state; nonsense throws an
 * `InputError`. What it leaves out: anything electrical beyond a sum of loads, which is `sim/line`'s.
 */
export {
	backToBack,
	highestStart,
	howManyFit,
	LAST_SLOT,
	lastSlot,
	nthAddress,
	type Row,
	requireAddress,
	requireFootprint,
	runsPast,
	slotOf,
	slotsPast,
} from './address.ts';
export { type Band, bandOf, levelAt, middleOf, positionInBand, valuesOf, widthOf } from './bands.ts';
export { type BandProblem, type BandProblemKind, checkBands } from './check-bands.ts';
export {
	addressOf,
	DIP_REACH,
	DIP_WEIGHTS,
	type DipWiring,
	switchesFor,
	switchesUp,
	upSwitches,
} from './dip.ts';
export { E120, rdmChecksum } from './e120.ts';
export { E131, type E131Lengths, e131Lengths, isLate, multicastAddress } from './e131.ts';
export {
	formatLevel,
	fractionOf,
	hexOf,
	levelOfFraction,
	levelOfPercent,
	levelsShownAs,
	percentOf,
	type Rounding,
	TOP_LEVEL,
} from './level.ts';
export { EIA485, isOverloaded, lineOhms, mostReceivers, totalUnitLoads, unitLoadsLeft } from './loads.ts';
export { parseLevel } from './parse-level.ts';
export { type Conductor, conductorOf, PINS, pinOf } from './pins.ts';
export {
	howManyMore,
	type NamedPlacement,
	nextFreeAddress,
	type Overlap,
	overlaps,
	type Placement,
	type Search,
	slotsLeft,
	slotsTaken,
} from './placement.ts';
export {
	carriesLevels,
	START_CODES,
	type StartCode,
	type StartCodeId,
	startCodeOf,
} from './startcodes.ts';
export { breakToBreak, isDataLost, type PacketShape, packetMicroseconds, refreshRate, TIMING } from './timing.ts';
export { fromAbsolute, LAST_UNIVERSE, type Spot, spread, toAbsolute } from './universe.ts';
export {
	type CoarseFine,
	formatWord,
	fractionOfWord,
	joinWord,
	percentOfWord,
	splitWord,
	TOP_WORD,
	widenLevel,
	wordOfFraction,
	wordOfPercent,
} from './word16.ts';
