import * as v from 'valibot';
import { readAnswers, readRecipe, TOP_SEED } from '../../../../shared/paper/index.ts';
import { readShape } from '../../../../shared/profile/index.ts';
import { migrated } from './bounds.ts';
import type { KeptCount, KeptName, KeptPaper, KeptResult, PaperResult, PaperSlip } from './types.ts';

/** Most characters of a name. */
const LONGEST_NAME = 80;

const count = (most: number) => v.pipe(v.number(), v.safeInteger(), v.minValue(0), v.maxValue(most));
const hex16 = v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/, 'hex-16'));
/** To the end of the year 9999. */
const time = count(253_402_300_799_999);
// what steers a line of text, and does not show, has no place in a name
const unseen = /[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu;
const name = v.pipe(
	v.string(),
	v.maxLength(LONGEST_NAME),
	v.transform((text) => text.toWellFormed().replace(unseen, ' ').trim()),
);

const resultShape = v.object({
	version: v.literal(1),
	recipe: v.unknown(),
	seed: count(TOP_SEED),
	paper: hex16,
	name,
	answers: v.unknown(),
	claimed: count(100),
	started: v.nullable(time),
	ended: v.nullable(time),
	attempt: hex16,
});
const slipShape = v.object({ recipe: v.unknown(), seed: count(TOP_SEED) });
const keptPaperShape = v.object({ ...slipShape.entries, version: v.literal(1), mark: hex16, kept: time });
const keptResultShape = v.object({ version: v.literal(1), result: v.unknown(), whole: v.boolean(), kept: time });
const keptNameShape = v.object({ version: v.literal(1), attempt: hex16, name });

const keptCountShape = v.object({ version: v.literal(1), attempt: hex16, counts: v.boolean() });

/** @throws InputError `handed.shape`, and what `readRecipe` throws */
export function readSlip(input: unknown): PaperSlip {
	const { recipe, seed } = held(slipShape, input);
	return { recipe: readRecipe(recipe), seed };
}

/** @throws InputError `handed.shape`, and what `readRecipe` and `readAnswers` throw */
export function readResult(input: unknown): PaperResult {
	const shape = held(resultShape, input);
	return { ...shape, recipe: readRecipe(shape.recipe), answers: readAnswers(shape.answers) };
}

/** A paper as it is kept. @throws as `readSlip` */
export function readKeptPaper(input: unknown): KeptPaper {
	const shape = held(keptPaperShape, input);
	return { ...shape, recipe: readRecipe(shape.recipe) };
}

/** A result as it is kept. @throws as `readResult` */
export function readKeptResult(input: unknown): KeptResult {
	const shape = held(keptResultShape, input);
	return { ...shape, result: readResult(shape.result) };
}

/** A name as it is kept. @throws InputError `handed.shape` */
export function readKeptName(input: unknown): KeptName {
	return held(keptNameShape, input);
}

/** Whether a result counts, as it is kept. @throws InputError `handed.shape` */
export function readKeptCount(input: unknown): KeptCount {
	return held(keptCountShape, input);
}

/** A name as it may be kept, from what was typed: nothing unseen in it, and cut at `LONGEST_NAME`. */
export const tidyName = (typed: string): string => v.parse(name, typed.slice(0, LONGEST_NAME));

function held<S extends v.GenericSchema>(schema: S, input: unknown): v.InferOutput<S> {
	return readShape(schema, migrated(input), 'handed.shape');
}
