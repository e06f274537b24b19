import * as v from 'valibot';
import { idText, profileSchema, whole } from '../profile/index.ts';
import { sheetSchema } from '../sheet/index.ts';
import { KIND_IDS, LEVELS, OWN_MOST, TOPIC_IDS } from './ids.ts';

/** What a trainer asks a paper to be: plain JSON. With a seed it is the whole paper, so a link need carry nothing else. */
export const recipeSchema = v.strictObject({
	/**
	 * 1 sets what it set in 2026: all kinds are those there were then, and options are the likeliest mistakes. 2 has every kind but
	 * hexadecimal for all, and draws options so that their look does not tell the right one.
	 */
	version: v.picklist([1, 2]),
	title: v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(60)),
	/** Bundled fixtures it is about, by id; with none and no sheet: all of them. */
	profiles: v.optional(v.pipe(v.array(idText), v.maxLength(40)), []),
	/** The crew's own fixtures, whole. */
	own: v.optional(v.pipe(v.array(profileSchema), v.maxLength(OWN_MOST)), []),
	/**
	 * Questions about a chart are each on a fixture made up for it, in turn with the fixtures named, if any: the list of words that it is
	 * made up with, by its id. Absent in all recipes from before there was such a thing, and so never filled in.
	 */
	unseen: v.optional(idText),
	/** A rig: a bundled one by id, or a sheet, whole. */
	rig: v.optional(v.nullable(v.union([idText, sheetSchema])), null),
	/** Empty: all. */
	topics: v.optional(v.pipe(v.array(v.picklist(TOPIC_IDS)), v.maxLength(TOPIC_IDS.length)), []),
	/** Empty: all that fit the topics. */
	kinds: v.optional(v.pipe(v.array(v.picklist(KIND_IDS)), v.maxLength(KIND_IDS.length)), []),
	count: whole(1, 100),
	/** Levels taken in turn. */
	levels: v.optional(v.pipe(v.array(v.picklist(LEVELS)), v.minLength(1), v.maxLength(3)), ['easy', 'middle', 'hard']),
	/** Minutes for the whole; null: no limit, and none shown. */
	minutes: v.optional(v.nullable(whole(1, 600)), null),
	/** Percent to pass. */
	pass: v.optional(whole(0, 100), 70),
	order: v.optional(v.picklist(['mixed', 'by-topic', 'easy-first']), 'mixed'),
	/** When the learner is told: after each, or at the end. */
	feedback: v.optional(v.picklist(['each', 'end']), 'end'),
});

export type PaperRecipe = v.InferOutput<typeof recipeSchema>;
export type PaperRecipeInput = v.InferInput<typeof recipeSchema>;
