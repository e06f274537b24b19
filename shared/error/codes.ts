/**
 * Every code of an error and the facts it carries. Codes are permanent. Those of `shared/` stand here; `sim/codes.d.ts` and
 * `src/codes.d.ts` add those thrown there. Words for each are in `content/en/errors`; the type check holds the two to each other.
 *
 * Names that mean the same everywhere:
 * - `expected`: what it should have been, as an id (`whole`, `number`, `one-of`); its limits stand beside it: `lo` and `hi`
 *   (both allowed), `known` (what there is to choose from), `limit`
 * - `found`: what was there instead, as `shown` gives it
 * - `trouble`: what is wrong, as an id, where one code stands for several troubles or no expectation says it
 * - `of`: which number, where it is one out of its limits
 */
export interface ErrorFacts {
	'level.range': OutOfLimits<'level'> | Past<'level-past' | 'percent-past'>;
	'level.text':
		| { readonly trouble: 'not-text' | 'not-whole' | 'looks-hexadecimal' | 'no-level'; readonly found: string }
		| { readonly trouble: 'nothing-typed' };
	'level.mismatch': {
		readonly trouble: 'value-and-percent-differ';
		readonly level: number;
		readonly percent: number;
		readonly right: number;
	};
	'percent.range': OutOfLimits<'percent' | 'shown-percent'>;
	'fraction.range': OutOfLimits<'fraction'>;
	'word.range': OutOfLimits<'word'>;
	'byte.range': OutOfLimits<'byte'>;
	'address.range': OutOfLimits<'start-address' | 'slot'>;
	'footprint.range': OutOfLimits<'footprint'>;
	'slot.range': OutOfLimits<'fixture-slot'>;
	'slots.range': OutOfLimits<'data-slots' | 'levels'>;
	'count.range': OutOfLimits<'place-in-row'>;
	'universe.range': OutOfLimits<'universe'>;
	'absolute.range': OutOfLimits<'absolute-address'>;
	'pin.range': OutOfLimits<'pin'>;
	'load.range': OutOfLimits<'unit-load' | 'unit-loads'>;
	'terminator.range': OutOfLimits<'terminators'>;
	'timing.range': OutOfLimits<'break' | 'mark-after-break' | 'between-slots' | 'before-break'>;
	'address.past-end':
		| {
				readonly trouble: 'slot-past-end';
				readonly n: number;
				readonly start: number;
				readonly slot: number;
				readonly last: number;
				readonly highest: number;
		  }
		| {
				readonly trouble: 'fixture-past-end';
				readonly n: number;
				readonly first: number;
				readonly footprint: number;
				readonly last: number;
				readonly fit: number;
		  };
	'band.range': { readonly expected: 'band'; readonly from: number; readonly to: number; readonly hi: number };
	'band.outside': {
		readonly trouble: 'outside-the-band';
		readonly level: number;
		readonly from: number;
		readonly to: number;
	};
	'dip.count': Length<'switches'>;
	'dip.unreachable': { readonly trouble: 'past-the-switches'; readonly address: number; readonly highest: number };
	'dip.switch': OutOfLimits<'address-switch'>;
	'id.twice': Twice;

	'optics.range':
		| OutOfLimits<'intensity' | 'axis-angle' | 'spacing' | 'diameter' | 'uniformity' | 'tilt' | 'incidence'>
		| Over0<'throw' | 'distance' | 'beam-angle'>
		| Below<'beam-angle'>
		| { readonly expected: 'beam'; readonly lumens: string; readonly degrees: string }
		| { readonly expected: 'beam-angle'; readonly found: string }
		| { readonly expected: 'illuminances' }
		| { readonly expected: 'spacing'; readonly metres: number; readonly lo: number; readonly found: string };
	'power.range':
		| OutOfLimits<Share | 'output'>
		| Over0<Share | 'voltage' | 'ampere-hours' | 'watts' | 'charging-watts' | 'amperes'>
		| OutOfLimits<'celsius'>
		| From0<'watt-hours' | 'watts' | 'hours' | 'amperes' | 'metres'>;
	'power.area': NotAmong;
	'rig-plan.shape': Shape;
	'rig-ticks.shape': Shape;
	'rig-plan.row': { readonly trouble: 'id-twice' | 'no-such-profile'; readonly id: string };
	'rig-plan.universes': { readonly trouble: 'too-many-universes'; readonly found: number; readonly limit: number };
	'power.emitter': NotAmong & { readonly profile: string };

	'random.whole': { readonly expected: 'whole-number'; readonly found: string };
	'random.seed': OutOfLimits<'seed'>;
	'random.int': {
		readonly expected: 'two-whole-numbers';
		readonly apart: number;
		readonly lo: string;
		readonly hi: string;
	};
	'random.empty': { readonly trouble: 'empty-list' };
	'invent.words': { readonly trouble: 'none-left'; readonly of: string };
	'random.chance': OutOfLimits<'chance'>;

	'statistics.share': OutOfLimits<'share-of' | 'share-hits'>;
	'statistics.length':
		| { readonly expected: 'score-for-each' }
		| { readonly expected: 'same-length'; readonly xs: number; readonly ys: number };
	'statistics.right': { readonly expected: 'right-or-wrong' };

	'mode.unknown': NoMode;
	'profile.shape': Shape;
	'profile.id': Twice | { readonly trouble: 'menu-id-twice'; readonly id: string };
	'profile.reference': Unfit | { readonly trouble: 'sound-and-answer'; readonly id: string; readonly kind: string };
	'profile.default':
		| Unfit
		| { readonly trouble: 'unshown'; readonly item: string; readonly value: string; readonly known: string };
	'profile.slot':
		| { readonly trouble: 'taken-twice'; readonly slot: number; readonly other: string; readonly id: string }
		| { readonly trouble: 'no-such-cell'; readonly cells: number; readonly id: string; readonly cell: number }
		| { readonly trouble: 'bands-and-fine'; readonly id: string }
		| { readonly trouble: 'left-out'; readonly slot: number; readonly last: number };
	'profile.band':
		| { readonly trouble: 'strobe-falls'; readonly id: string; readonly slow: number; readonly fast: number }
		| (BandTrouble & { readonly id: string });
	'profile.panel':
		| { readonly trouble: 'switch-twice'; readonly switch: number; readonly other: string; readonly id: string }
		| {
				readonly trouble: 'choices-off';
				readonly switches: number;
				readonly wanted: number;
				readonly id: string;
				readonly choices: number;
		  }
		| { readonly trouble: 'key-missing' | 'key-twice'; readonly key: string }
		| { readonly trouble: 'law-unplayed'; readonly shape: string; readonly part: string }
		| { readonly trouble: 'item-and-law'; readonly id: string; readonly shape: string }
		| { readonly trouble: 'idle-off'; readonly id: string; readonly at: number }
		| { readonly trouble: 'least-over-most'; readonly id: string; readonly least: number; readonly most: number }
		| { readonly trouble: 'value-twice'; readonly id: string; readonly value: string }
		| { readonly trouble: 'too-wide'; readonly text: string; readonly columns: number };

	'gdtf.archive': ArchiveTrouble;
	'gdtf.xml': XmlTrouble;
	'gdtf.tree':
		| { readonly trouble: 'no-fixture-type'; readonly found: string }
		| { readonly trouble: 'no-modes' }
		| { readonly trouble: 'too-many-modes'; readonly count: number; readonly limit: number }
		| { readonly trouble: 'bad-value'; readonly attribute: string; readonly found: string };
	'gdtf.mode':
		| { readonly trouble: 'no-geometry' | 'circle'; readonly name: string }
		| { readonly trouble: 'too-many-channels'; readonly limit: number }
		| {
				readonly trouble: 'missing-break';
				readonly name: string;
				readonly channel: string;
				readonly break: number | 'overwrite';
		  }
		| { readonly trouble: 'slot-outside'; readonly channel: string; readonly slot: number; readonly limit: number }
		| { readonly trouble: 'slot-twice'; readonly slot: number; readonly one: string; readonly other: string }
		| { readonly trouble: 'no-slots' }
		| { readonly trouble: 'several-breaks'; readonly count: number }
		| { readonly trouble: 'too-many-cells' | 'too-many-emitters'; readonly count: number; readonly limit: number }
		| { readonly trouble: 'none-chosen'; readonly known: readonly string[] };

	'mvr.archive': ArchiveTrouble;
	'mvr.xml': XmlTrouble;
	'mvr.scene':
		| { readonly trouble: 'no-scene'; readonly found: string }
		| { readonly trouble: 'no-fixtures' }
		| { readonly trouble: 'too-many-fixtures'; readonly count: number; readonly limit: number };

	'stock.shape': Shape;
	'sheet.shape': Shape;
	'sheet.id': { readonly trouble: 'id-taken'; readonly id: string; readonly of: SheetPart };
	'sheet.socket':
		| { readonly trouble: 'no-such-socket'; readonly port: string }
		| { readonly trouble: 'both-ends-in-one-socket'; readonly cable: string; readonly port: string };
	'sheet.settings':
		| Unfit
		| { readonly trouble: 'no-switches' | 'switches-alone'; readonly profile: string }
		| { readonly trouble: 'slides-off'; readonly profile: string; readonly slides: number; readonly given: number }
		| { readonly trouble: 'no-such-position'; readonly last: number; readonly position: number };
	'sheet.mains':
		| { readonly trouble: 'no-such-fixture'; readonly id: string }
		| { readonly trouble: 'no-link-socket' | 'circle'; readonly name: string };
	'sheet.reference':
		| NoMode
		| { readonly trouble: 'no-such-profile' | 'patch-to-none'; readonly id: string }
		| { readonly trouble: 'patched-twice'; readonly name: string };
	'quick.linked': { readonly expected: 'one-of'; readonly known: readonly string[] };
	'quick.count': OutOfLimits<'fixtures'>;
	'quick.profile': { readonly trouble: 'no-such-profile'; readonly id: string };

	'paper.recipe': Shape | NotPlain;
	'paper.shape': Shape | NotPlain | { readonly expected: 'paper'; readonly found: string };
	'paper.answers': Shape | NotPlain | { readonly expected: 'answers'; readonly found: string };
	'paper.seed': OutOfLimits<'paper-seed'>;
	'paper.profile': { readonly trouble: 'no-such-profile'; readonly id: string; readonly known: readonly string[] };
	'paper.rig': { readonly trouble: 'no-such-rig'; readonly id: string; readonly known: readonly string[] };
	'paper.needs-rig': { readonly trouble: 'no-rig-at-hand' };
	'paper.unseen': { readonly trouble: 'other-words'; readonly id: string };
	'paper.empty': { readonly trouble: 'nothing-to-ask' };
	'analyse.none': { readonly trouble: 'no-marks' };
	'analyse.papers': { readonly trouble: 'different-papers' };
	'analyse.marks': { readonly expected: 'list' | 'mark'; readonly found: string };
}

/** A permanent code, e.g. `level.range`. */
export type ErrorCode = keyof ErrorFacts;

/** A number that is not within its limits, both allowed; `whole` where only whole ones are. */
export interface OutOfLimits<Of extends string = string> {
	readonly expected: 'whole' | 'number';
	readonly of: Of;
	readonly lo: number;
	readonly hi: number;
	readonly found: string;
}

/** A number that is not more than 0. */
interface Over0<Of extends string> {
	readonly expected: 'over-0';
	readonly of: Of;
	readonly found: string;
}

/** A number that is less than 0, or is none. */
export interface From0<Of extends string> {
	readonly expected: 'from-0';
	readonly of: Of;
	readonly found: string;
}

/** A number that should be less than this. */
interface Below<Of extends string> {
	readonly expected: 'below';
	readonly of: Of;
	readonly limit: number;
	readonly found: string;
}

/** A typed number past the end. */
interface Past<Trouble extends string> {
	readonly trouble: Trouble;
	readonly hi: number;
	readonly found: string;
}

/** A list of another length than it must have. */
export interface Length<Of extends string> {
	readonly expected: 'length';
	readonly of: Of;
	readonly length: number;
	readonly found: string;
}

/** What is no list. */
export interface NotAList<Of extends string> {
	readonly expected: 'list';
	readonly of: Of;
	readonly found: string;
}

/** A number that stands for nothing of a fixture's list, which runs from 0 to `last`. */
export interface NoIndex {
	readonly expected: 'place-in-list';
	readonly profile: string;
	readonly last: number;
	readonly found: string;
}

/** What is not among what there is. */
export interface NotAmong {
	readonly expected: 'one-of';
	readonly known: readonly string[];
	readonly found: string;
}

/** An id that stands twice where each stands once. */
interface Twice {
	readonly trouble: 'id-twice';
	readonly id: string;
}

/** Shares that `shared/power` takes. */
type Share = 'power-factor' | 'energy-share' | 'charging-share';

/** Parts of a rig sheet that have ids of their own. */
type SheetPart = 'profile' | 'device' | 'cable' | 'output';

/**
 * A place that a schema does not take: the rule it breaks, the rule's limit, what there is to choose from (empty where the rule
 * names none), and what was there.
 */
export interface Shape {
	readonly expected: 'shape';
	readonly rule: string;
	readonly limit: string | number | null;
	readonly known: readonly string[];
	readonly found: string;
}

/** What is wrong with an archive from outside. */
export type ArchiveTrouble =
	| {
			readonly trouble:
				| 'empty'
				| 'no-archive'
				| 'no-description'
				| 'two-descriptions'
				| 'locked'
				| 'damaged'
				/** ZIP64: of 4 GB and more, or of 65,535 files and more. */
				| 'wide'
				| 'size-false'
				| 'sum-false'
				| 'not-utf-8';
	  }
	| { readonly trouble: 'method'; readonly method: number }
	| { readonly trouble: 'name-outside'; readonly found: string }
	| { readonly trouble: 'too-large'; readonly what: 'archive' | 'description' | 'list'; readonly megabytes: number };

/** What is wrong with XML from outside. */
type XmlTrouble =
	| { readonly trouble: 'malformed'; readonly line: number; readonly column: number }
	| { readonly trouble: 'document-type' }
	| { readonly trouble: 'too-deep'; readonly limit: number };

/** What is no plain JSON of modest size. */
export type NotPlain =
	| { readonly trouble: 'too-many-values' | 'too-deep'; readonly limit: number }
	| { readonly trouble: 'text-too-long'; readonly length: number }
	| { readonly trouble: 'not-finite' | 'barred-name'; readonly found: string };

/** A mode that a fixture does not have. */
interface NoMode {
	readonly trouble: 'no-such-mode';
	readonly id: string;
	readonly profile: string;
	readonly known: readonly string[];
}

/** A setting that cannot be so on this fixture: no value of it at all, or an id that the fixture does not have. */
export type Unfit =
	| { readonly trouble: 'no-such-value'; readonly key: string; readonly value: string }
	| {
			readonly trouble: 'not-of-the-fixture';
			readonly of: PartOfFixture;
			readonly id: string;
			readonly known: readonly string[];
	  };

/** What a profile names by id. */
export type PartOfFixture = 'emitter' | 'held' | 'programme' | 'mode';

/** What is wrong with a slot's bands, counted from 1. */
export type BandTrouble =
	| { readonly trouble: 'no-bands' }
	| {
			readonly trouble: 'band-not-whole' | 'band-reversed' | 'band-below-zero' | 'band-past-end';
			readonly band: number;
			readonly from: number;
			readonly to: number;
	  }
	| {
			readonly trouble: 'band-out-of-order';
			readonly band: number;
			readonly from: number;
			readonly to: number;
			readonly before: number;
			readonly beforeFrom: number;
	  }
	| ({ readonly trouble: 'band-overlap'; readonly one: number; readonly other: number } & ValueRun)
	| ({ readonly trouble: 'band-gap' } & ValueRun);

/** So many values in a row; `to` is null where it is one alone. */
interface ValueRun {
	readonly from: number;
	readonly to: number | null;
	readonly count: number;
}
