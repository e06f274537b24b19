import * as v from 'valibot';
import { idText, readShape } from '../profile/index.ts';
import { MOST_CHARACTERS } from './types.ts';

/**
 * A fixture of the crew's own as a person gave it: its chart as text, and what its label says. Null is what nobody gave. The profile
 * is worked out from this each time, so that a better reading of charts reads old stock better too.
 */

const amount = ([least, most]: readonly [least: number, most: number]) =>
	v.nullable(v.pipe(v.number(), v.finite(), v.minValue(least), v.maxValue(most)));

/** Least and most of each number of a label, both allowed, in its own unit: degrees, watts, lumens, watt-hours. */
export const ENTRY_LIMITS = Object.freeze({
	beam: [1, 170],
	watts: [1, 5000],
	lumens: [1, 100_000],
	wattHours: [1, 2000],
} as const);

/** Permanent. */
export const FEEDS = ['battery', 'mains'] as const;
export const SHAPES = ['wash', 'bar'] as const;

const entrySchema = v.strictObject({
	id: idText,
	/** What the crew calls it. */
	name: v.pipe(v.string(), v.maxLength(40)),
	/** The chart as pasted or typed, every mode. */
	chart: v.pipe(v.string(), v.maxLength(MOST_CHARACTERS)),
	shape: v.picklist(SHAPES),
	/** Beam angle at half the peak, degrees. */
	beam: amount(ENTRY_LIMITS.beam),
	/** Watts at full, off the label. */
	watts: amount(ENTRY_LIMITS.watts),
	/** Lumens at full, off the label or the manual. */
	lumens: amount(ENTRY_LIMITS.lumens),
	/** What feeds it. */
	feed: v.nullable(v.picklist(FEEDS)),
	wattHours: amount(ENTRY_LIMITS.wattHours),
	/** Whether it has a socket that passes mains on. */
	link: v.nullable(v.boolean()),
	/** When it was last changed, ms since 1970. */
	changed: v.pipe(v.number(), v.integer(), v.minValue(0)),
});

export type StockEntry = v.InferOutput<typeof entrySchema>;

/** A new entry, of which nothing is known yet. */
export const blankEntry = (id: string, name: string, changed: number): StockEntry => ({
	id,
	name,
	chart: '',
	shape: 'wash',
	beam: null,
	watts: null,
	lumens: null,
	feed: null,
	wattHours: null,
	link: null,
	changed,
});

/** Reads an entry from outside. @throws InputError `stock.shape` */
export const readEntry = (input: unknown): StockEntry => readShape(entrySchema, input, 'stock.shape');
