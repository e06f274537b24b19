/**
 * Ids of the kinds of question, permanent and never used again: papers, links and results are keyed by them. The first group
 * is pure arithmetic on profiles and sheets; the second is read from a rig and comes from `sim/paper`.
 */
const FIRST_PLAIN_IDS = [
	'value-function',
	'function-values',
	'band-edge',
	'band-middle',
	'percent-of-value',
	'value-of-percent',
	'hex-of-value',
	'value-of-hex',
	'slot-does',
	'match-slots',
	'bands-in-order',
	'desk-slot',
	'footprint',
	'last-slot',
	'next-free',
	'nth-address',
	'overlaps',
	'runs-past',
	'how-many-fit',
	'dip-to-address',
	'address-to-dip',
	'coarse-fine',
	'value-of-pair',
] as const;
export const PLAIN_KIND_IDS = [
	...FIRST_PLAIN_IDS,
	'band-of-percent',
	'percent-in-band',
	'park-value',
	'fader-passes',
	'gap-values',
	'hours-left',
	'fit-on-circuit',
	'row-amps',
	'splitter-after',
	'terminator-place',
	'lux-at-throw',
	'pool-at-throw',
	'row-spacing',
	'bond-check',
	'patch-against-panel',
] as const;

const FIRST_RIG_IDS = [
	'frame-look',
	'follow-setting',
	'row-roles',
	'display-says',
	'first-check',
	'caution-here',
	'on-the-bench',
] as const;
export const RIG_KIND_IDS = [...FIRST_RIG_IDS, 'gate-slot'] as const;

export const KIND_IDS = [...PLAIN_KIND_IDS, ...RIG_KIND_IDS] as const;

/** The kinds that a recipe of version 1 means by all: it stays the paper it was. */
export const FIRST_KIND_IDS: readonly KindId[] = Object.freeze([...FIRST_PLAIN_IDS, ...FIRST_RIG_IDS]);
/** Kinds asked where they are named and not among all: what crews read and type is values and percent. */
export const WHEN_NAMED: readonly KindId[] = Object.freeze(['hex-of-value', 'value-of-hex']);

/**
 * Kinds whose answers hang on a chart and on numbers alone: what can be asked of a fixture from outside, whose panel is a stand-in and
 * whose power, light and settings are assumed.
 */
export const CHART_KIND_IDS: readonly KindId[] = Object.freeze([
	...FIRST_PLAIN_IDS.filter((id) => ![...WHEN_NAMED, 'dip-to-address', 'address-to-dip'].includes(id)),
	'band-of-percent',
	'percent-in-band',
]);

/**
 * Kinds that print a chart and ask what it says: these can be asked on a fixture that is made up for the question. `gate-slot` is none:
 * where names are as long as they come, the longest option was right far too often.
 */
export const UNSEEN_KIND_IDS: readonly KindId[] = Object.freeze([
	'value-function',
	'function-values',
	'band-edge',
	'band-middle',
	'slot-does',
	'match-slots',
	'bands-in-order',
	'desk-slot',
	'band-of-percent',
	'percent-in-band',
	'park-value',
	'fader-passes',
	'gap-values',
	'frame-look',
]);

/** Most fixtures of the crew's own that a recipe carries whole. */
export const OWN_MOST = 8;

export type PlainKindId = (typeof PLAIN_KIND_IDS)[number];
export type RigKindId = (typeof RIG_KIND_IDS)[number];
export type KindId = PlainKindId | RigKindId;

/** What a question is about, for a recipe, a table and the next paper. Permanent. */
export const TOPIC_IDS = [
	'levels',
	'bands',
	'modes',
	'addresses',
	'switches',
	'linking',
	'panel',
	'faults',
	'care',
	'power',
	'lines',
	'light',
] as const;
export type TopicId = (typeof TOPIC_IDS)[number];

/** What each kind is about: the one place that says so; a kind takes its topic from here. */
export const KIND_TOPICS: Readonly<Record<KindId, TopicId>> = Object.freeze({
	'value-function': 'bands',
	'function-values': 'bands',
	'band-edge': 'bands',
	'band-middle': 'bands',
	'percent-of-value': 'levels',
	'value-of-percent': 'levels',
	'hex-of-value': 'levels',
	'value-of-hex': 'levels',
	'slot-does': 'modes',
	'match-slots': 'modes',
	'bands-in-order': 'bands',
	'desk-slot': 'addresses',
	footprint: 'modes',
	'last-slot': 'addresses',
	'next-free': 'addresses',
	'nth-address': 'addresses',
	overlaps: 'addresses',
	'runs-past': 'addresses',
	'how-many-fit': 'addresses',
	'dip-to-address': 'switches',
	'address-to-dip': 'switches',
	'coarse-fine': 'levels',
	'value-of-pair': 'levels',
	'frame-look': 'bands',
	'follow-setting': 'linking',
	'row-roles': 'linking',
	'display-says': 'panel',
	'first-check': 'faults',
	'caution-here': 'care',
	'on-the-bench': 'panel',
	'gate-slot': 'bands',
	'band-of-percent': 'levels',
	'percent-in-band': 'levels',
	'park-value': 'bands',
	'fader-passes': 'bands',
	'gap-values': 'bands',
	'hours-left': 'power',
	'fit-on-circuit': 'power',
	'row-amps': 'power',
	'splitter-after': 'lines',
	'terminator-place': 'lines',
	'lux-at-throw': 'light',
	'pool-at-throw': 'light',
	'row-spacing': 'light',
	'bond-check': 'care',
	'patch-against-panel': 'addresses',
});

/** How hard. */
export const LEVELS = ['easy', 'middle', 'hard'] as const;
export type PaperLevel = (typeof LEVELS)[number];

/**
 * The real mistakes behind wrong options and wrong answers, permanent. Words for each are in `content/en/papers`. `none-known`
 * is never one: a wrong answer that looks like no mistake has none.
 */
export const MISTAKE_IDS = [
	'off-by-one-low',
	'off-by-one-high',
	'percent-for-value',
	'value-for-percent',
	'hex-read-as-decimal',
	'decimal-read-as-hex',
	'digits-swapped',
	'out-of-256',
	'footprint-not-added',
	'footprint-added-twice',
	'other-modes-chart',
	'other-fixtures-chart',
	'bands-from-the-wrong-end',
	'next-band',
	'other-edge',
	'part-of-a-band',
	'slot-in-fixture-not-on-desk',
	'first-counted-as-zero',
	'one-fixture-too-many',
	'one-fixture-too-few',
	'past-512',
	'wrapped-past-512',
	'switches-reversed',
	'other-wiring',
	'switch-number-for-weight',
	'coarse-and-fine-swapped',
	'fine-ignored',
	'wrong-order',
	'other-role',
	'other-setting',
	'frame-slot-shifted',
	'function-slot-missed',
	'later-check',
	'caution-not-here',
	'some-missed',
	'one-too-many',
	'zero-taken-for-rest',
	'gap-taken-for-band',
	'reserve-forgotten',
	'charge-forgotten',
	'level-forgotten',
	'idle-forgotten',
	'power-factor-forgotten',
	'other-voltage',
	'one-of-the-row',
	'watts-for-amps',
	'rounded-down',
	'splitter-not-counted',
	'unit-load-for-fixture',
	'other-load',
	'other-end-of-the-line',
	'distance-not-squared',
	'squared-the-wrong-way',
	'squared-though-straight',
	'wrong-way-round',
	'throw-forgotten',
	'overlap-for-spacing',
	'overlap-forgotten',
	'overlap-added',
	'bonds-the-other-way',
	'other-way-about',
	'gate-missed',
	'first-ones-forgotten',
	'last-name-for-last-place',
] as const;
export type MistakeId = (typeof MISTAKE_IDS)[number];

/** The newest version of recipes, which a new paper has. */
export const RECIPE_VERSION = 2;
