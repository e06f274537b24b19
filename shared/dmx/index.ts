/**
 * The arithmetic of the line: levels, percent and hexadecimal; 16-bit pairs; start addresses, footprints and overlaps,
 * in one universe and across many; bands of values; DIP switches; and the numbers of the standards (E1.11, E1.20,
 * E1.31, EIA-485), each in one frozen place with its source. Pure functions and constants, no state; nonsense throws an
 * `InputError`. What it leaves out: anything electrical beyond a sum of loads, which is `sim/line`'s.
 */
export {
	backToBack,
	fromAbsolute,
	highestStart,
	howManyFit,
	LAST_SLOT,
	LAST_UNIVERSE,
	lastSlot,
	nthAddress,
	type Row,
	requireAddress,
	requireFootprint,
	runsPast,
	type Spot,
	slotOf,
	slotsPast,
	spread,
	toAbsolute,
} from './address.ts';
export {
	type Band,
	type BandProblem,
	type BandProblemKind,
	bandOf,
	checkBands,
	levelAt,
	middleOf,
	positionInBand,
	valuesOf,
	widthOf,
} from './bands.ts';
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
	type CoarseFine,
	formatLevel,
	formatWord,
	fractionOf,
	fractionOfWord,
	hexOf,
	joinWord,
	levelOfFraction,
	levelOfPercent,
	levelsShownAs,
	percentOf,
	percentOfWord,
	type Rounding,
	splitWord,
	TOP_LEVEL,
	TOP_WORD,
	widenLevel,
	wordOfFraction,
	wordOfPercent,
} from './level.ts';
export {
	type Conductor,
	conductorOf,
	EIA485,
	isOverloaded,
	lineOhms,
	mostReceivers,
	PINS,
	pinOf,
	totalUnitLoads,
	unitLoadsLeft,
} from './line.ts';
export {
	breakToBreak,
	carriesLevels,
	isDataLost,
	type PacketShape,
	packetMicroseconds,
	refreshRate,
	START_CODES,
	type StartCode,
	type StartCodeId,
	startCodeOf,
	TIMING,
} from './packet.ts';
export { parseLevel } from './parse-level.ts';
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
