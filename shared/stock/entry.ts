import * as v from 'valibot';
import { ASKED_CODES, LEFT_CODES, type ProfileFromFile } from '../gdtf/index.ts';
import { checkProfile, idText, profileSchema, readShape, whole } from '../profile/index.ts';
import { panelSchema } from './panel/entry.ts';
import { MOST_CHARACTERS } from './types.ts';

/**
 * A fixture of the crew's own as a person gave it: its chart as text, or what an open fixture file says; and what its label says.
 * Null is what nobody gave. The profile is worked out from this each time, so that a better reading of charts reads old stock better
 * too. Of a file its profile is kept, and not the file: that may be some megabytes.
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

/** What any entry says besides what it was made from. */
const common = {
	id: idText,
	/** What the crew calls it. */
	name: v.pipe(v.string(), v.maxLength(40)),
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
	/** Its panel, as its crew wrote it; null: another stands in. */
	panel: v.nullable(panelSchema),
	/** When it was last changed, ms since 1970. */
	changed: v.pipe(v.number(), v.integer(), v.minValue(0)),
};

const chartSchema = v.strictObject({
	kind: v.literal('chart'),
	...common,
	/** The chart as pasted or typed, every mode. */
	chart: v.pipe(v.string(), v.maxLength(MOST_CHARACTERS)),
});

const place = v.pipe(v.string(), v.maxLength(400));
const facts = v.record(v.pipe(v.string(), v.maxLength(40)), v.union([v.string(), v.number(), v.array(v.string())]));

const fileSchema = v.strictObject({
	kind: v.literal('file'),
	...common,
	/** What kind of file it was read from, and by which reader: a later one may read more of the same file. */
	format: v.literal('gdtf'),
	reader: whole(1, 999),
	/** As the file has it: name and label stand over it. */
	profile: profileSchema,
	/** What was lost as it was read, and what was assumed: see `shared/gdtf`. */
	left: v.array(
		v.strictObject({
			path: place,
			code: v.picklist(LEFT_CODES),
			facts,
			because: v.exactOptional(v.strictObject({ code: place, path: place, facts })),
		}),
	),
	asked: v.array(v.strictObject({ path: place, code: v.picklist(ASKED_CODES), facts })),
});

const entrySchema = v.variant('kind', [chartSchema, fileSchema]);

/** A fixture made from a chart. */
export type ChartEntry = v.InferOutput<typeof chartSchema>;
/** A fixture read from an open fixture file. */
export type FileEntry = v.InferOutput<typeof fileSchema>;
export type StockEntry = ChartEntry | FileEntry;

/** The reader of open fixture files as it is now. Count it up when it reads more. */
const FILE_READER = 1;

/** Characters that an entry may come to as JSON: a device keeps some five million for the whole site. */
export const MOST_ENTRY = 600_000;

const blank = (id: string, name: string, changed: number) => ({
	id,
	name,
	shape: 'wash' as const,
	beam: null,
	watts: null,
	lumens: null,
	feed: null,
	wattHours: null,
	link: null,
	panel: null,
	changed,
});

/** A new entry, of which nothing is known yet. */
export const blankEntry = (id: string, name: string, changed: number): ChartEntry => ({
	kind: 'chart',
	...blank(id, name, changed),
	chart: '',
});

/** A new entry out of what was read from a file. @param changed ms since 1970 */
export const entryFromFile = (
	id: string,
	{ profile, left, asked }: Pick<ProfileFromFile, 'profile' | 'left' | 'asked'>,
	changed: number,
): FileEntry =>
	readEntry({
		kind: 'file',
		...blank(id, profile.name, changed),
		shape: profile.shape,
		format: 'gdtf',
		reader: FILE_READER,
		profile,
		left,
		asked,
	}) as FileEntry;

/**
 * Reads an entry from outside.
 * @throws InputError `stock.shape`, or as `readProfile` for the profile of one that was read from a file
 */
export function readEntry(input: unknown): StockEntry {
	const entry = readShape(entrySchema, input, 'stock.shape');
	if (entry.kind === 'file') checkProfile(entry.profile);
	return entry;
}
