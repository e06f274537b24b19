import * as v from 'valibot';
import { InputError, shown } from '../error/index.ts';
import { readShape, whole } from '../profile/index.ts';
import { sheetSchema } from '../sheet/index.ts';
import { KIND_IDS, LEVELS, MISTAKE_IDS, TOPIC_IDS } from './ids.ts';
import { requirePlain } from './json.ts';
import { type PaperRecipe, recipeSchema } from './recipe.ts';
import type { Answer, Answers, Paper } from './types.ts';

const short = v.pipe(v.string(), v.maxLength(200));
const itemId = v.pipe(v.string(), v.regex(/^[a-z][a-z-]{0,30}-[0-9a-f]{8}$/, 'question-id'));
const optionId = v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{0,39}$/, 'option-id'));
const optionIds = v.pipe(v.array(optionId), v.maxLength(60));
const pairs = v.pipe(
	v.record(optionId, optionId),
	v.check((held) => Object.keys(held).length <= 60, 'most-pairs'),
);
const number = whole(-1_000_000, 1_000_000);
const switches = v.pipe(v.array(whole(1, 64)), v.maxLength(64));

const answerSchema = v.variant('form', [
	v.strictObject({ form: v.literal('one'), chose: optionId }),
	v.strictObject({ form: v.literal('several'), chose: optionIds }),
	v.strictObject({ form: v.literal('number'), value: number }),
	v.strictObject({ form: v.literal('order'), order: optionIds }),
	v.strictObject({ form: v.literal('switches'), up: switches }),
	v.strictObject({ form: v.literal('match'), pairs }),
	v.strictObject({ form: v.literal('practical'), log: v.pipe(v.array(v.unknown()), v.maxLength(20_000)) }),
]);

/** Answers by question id, at most 100. */
const answersSchema = v.pipe(
	v.custom<object>((held) => typeof held === 'object' && held !== null && !Array.isArray(held), 'answers-by-id'),
	v.record(itemId, answerSchema),
	v.check((held) => Object.keys(held).length <= 100, 'most-answers'),
);

const told = v.union([
	v.pipe(v.string(), v.maxLength(2000)),
	v.pipe(v.number(), v.finite()),
	v.boolean(),
	v.null(),
	v.pipe(v.array(v.union([short, v.pipe(v.number(), v.finite())])), v.maxLength(2000)),
]);
const facts = v.record(v.pipe(v.string(), v.regex(/^[A-Za-z]\w{0,39}$/)), told);
const say = v.strictObject({ say: short, facts });
const options = v.pipe(v.array(v.strictObject({ id: optionId, label: say })), v.minLength(1), v.maxLength(60));

const askSchema = v.variant('form', [
	v.strictObject({ form: v.literal('one'), options }),
	v.strictObject({ form: v.literal('several'), options }),
	v.strictObject({
		form: v.literal('number'),
		least: number,
		most: number,
		base: v.picklist([10, 16]),
		unit: v.pipe(v.string(), v.maxLength(20)),
	}),
	v.strictObject({ form: v.literal('order'), options }),
	v.strictObject({ form: v.literal('switches'), count: whole(1, 64) }),
	v.strictObject({ form: v.literal('match'), left: options, right: options }),
	v.strictObject({
		form: v.literal('practical'),
		drill: v.strictObject({ kind: short, seed: whole(0, Number.MAX_SAFE_INTEGER) }),
	}),
]);

const keySchema = v.variant('form', [
	v.strictObject({ form: v.literal('one'), right: optionId }),
	v.strictObject({ form: v.literal('several'), right: optionIds }),
	v.strictObject({
		form: v.literal('number'),
		within: v.pipe(v.array(v.strictObject({ from: number, to: number })), v.minLength(1), v.maxLength(60)),
	}),
	v.strictObject({ form: v.literal('order'), right: optionIds }),
	v.strictObject({ form: v.literal('switches'), up: switches }),
	v.strictObject({ form: v.literal('match'), right: pairs }),
	v.strictObject({ form: v.literal('practical') }),
]);

const paperSchema = v.strictObject({
	version: v.literal(1),
	recipe: recipeSchema,
	seed: whole(0, 0xffffffff),
	items: v.pipe(
		v.array(
			v.strictObject({
				id: itemId,
				kind: v.picklist(KIND_IDS),
				topic: v.picklist(TOPIC_IDS),
				level: v.picklist(LEVELS),
				facts,
				ask: askSchema,
				key: keySchema,
				mistakes: v.pipe(
					v.array(v.strictObject({ mistake: v.picklist(MISTAKE_IDS), answer: answerSchema })),
					v.maxLength(60),
				),
				bench: v.nullable(sheetSchema),
			}),
		),
		v.minLength(1),
		v.maxLength(100),
	),
	mark: v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/, 'hex-16')),
});

/** A recipe as it came from outside, its optional parts filled in. @throws InputError `paper.recipe`, naming the place. */
export function readRecipe(input: unknown): PaperRecipe {
	requirePlain(input, 'paper.recipe');
	return readShape(recipeSchema, input, 'paper.recipe');
}

/**
 * A paper as it came from outside: its shape and bounds. Whether it is the paper that its recipe and seed set, `markPaper` says.
 * @throws InputError `paper.shape`, naming the place.
 */
export function readPaper(input: unknown): Paper {
	requirePlain(input, 'paper.shape');
	return readShape(paperSchema, input, 'paper.shape') as Paper;
}

/** Answers as they came from outside: shapes and bounds. @throws InputError `paper.answers`, naming the place. */
export function readAnswers(input: unknown): Answers {
	requirePlain(input, 'paper.answers');
	const answers = readShape(answersSchema, input, 'paper.answers');
	wellShaped.add(answers);
	return answers;
}

const wellShaped = new WeakSet<Answers>();

/** What can be judged at all; what is out of bounds the marker says, question by question. */
const judgeable = v.variant('form', [
	v.object({ form: v.literal('one'), chose: v.string() }),
	v.object({ form: v.literal('several'), chose: v.array(v.string()) }),
	v.object({ form: v.literal('number'), value: v.number() }),
	v.object({ form: v.literal('order'), order: v.array(v.string()) }),
	v.object({ form: v.literal('switches'), up: v.array(v.number()) }),
	v.object({ form: v.literal('match'), pairs: v.record(v.string(), v.string()) }),
	v.object({ form: v.literal('practical'), log: v.array(v.unknown()) }),
]);

/**
 * Answers by question id as they can be judged; null for one that is none. Those that {@link readAnswers} read are taken as they
 * are.
 * @throws InputError `paper.answers` for what holds no answers at all
 */
export function answersGiven(answers: Answers): Map<string, Answer | null> {
	if (typeof answers !== 'object' || answers === null)
		throw new InputError('paper.answers', 'answers', { expected: 'answers', found: shown(answers) });
	const entries = Object.entries(answers);
	return new Map(
		wellShaped.has(answers) ? entries : entries.map(([id, each]) => [id, v.is(judgeable, each) ? each : null]),
	);
}
