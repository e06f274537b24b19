import * as v from 'valibot';
import { cautionIds } from '#words/cautions/index.ts';
import { PART_IDS } from '#words/lessons/index.ts';
import { InputError, isInputError } from '../../../shared/error/index.ts';
import { KIND_IDS } from '../../../shared/paper/index.ts';
import { idText, readShape, SETTING_KEYS, whole } from '../../../shared/profile/index.ts';
import { portText, QUICK_LINKS, RIG_IDS } from '../../../shared/sheet/index.ts';
import { DRILL_IDS } from '../../../sim/drill/index.ts';
import { readLog } from '../../../sim/event/index.ts';
import { PRESET_IDS } from '../bench/index.ts';
import { TOOL_IDS } from './tools.ts';
import { casesOf, varySchema } from './vary.ts';

/** Some languages need half as many letters again as English for the same. */
const text = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(800));
const texts = (least: number, most: number) => v.pipe(v.array(text), v.minLength(least), v.maxLength(most));
const log = v.pipe(
	v.unknown(),
	v.transform((found) => readLog(found)),
);

/** A rig to stand on: a bundled one, a ready-made bench, or like fixtures in a row; then what happened before the learner came. */
const benchSchema = v.strictObject({
	rig: v.exactOptional(v.picklist(RIG_IDS)),
	preset: v.exactOptional(v.picklist(PRESET_IDS)),
	quick: v.exactOptional(v.strictObject({ count: whole(1, 24), linked: v.picklist(QUICK_LINKS), profile: v.string() })),
	/** Metres of wall, the sheet's fixtures in its middle: on a short wall a few stand so near that their pools are cut off. */
	wide: v.exactOptional(v.pipe(v.number(), v.minValue(8), v.maxValue(60))),
	/** The desk’s master stands at zero. */
	blackout: v.exactOptional(v.literal(true)),
	/** Changes to fixtures of the sheet, by id: where they stand, how they are fed, what hides them, how they are set. */
	change: v.optional(v.record(idText, v.record(v.string(), v.unknown())), {}),
	/** Boxes that stand by, with nothing in them yet, by the sheet's lists of them. */
	boxes: v.exactOptional(v.record(v.string(), v.array(v.unknown()))),
	log: v.optional(log, []),
});

const value = v.union([v.string(), v.number()]);

const goalSchema = v.variant('is', [
	v.strictObject({ is: v.literal('setting'), fixture: idText, key: v.picklist(SETTING_KEYS), value }),
	v.strictObject({ is: v.literal('lit'), fixture: idText }),
	v.strictObject({ is: v.literal('fed'), fixture: idText, from: idText }),
	/** As bright as lasts so many hours on the share of its charge to count on: the brightness follows from battery and look. */
	v.strictObject({ is: v.literal('lasts'), fixture: idText, hours: v.number() }),
	/** So many lux where the beam's middle lands, within a tenth: the brightness follows from look, beam and throw. */
	v.strictObject({ is: v.literal('lux'), fixture: idText, lux: v.number() }),
	/** As many lux where its beam's middle lands as another's has, within a tenth: the brightness follows from both. */
	v.strictObject({ is: v.literal('as-bright'), fixture: idText, as: idText }),
	/** In the mode and at the start address that the desk's patch has for it. */
	v.strictObject({ is: v.literal('patched'), fixture: idText }),
	/** A good data cable of at most so many metres between two sockets. */
	v.strictObject({ is: v.literal('joined'), a: portText, b: portText, metres: v.number() }),
	/** A terminator in each of these sockets and in no other. */
	v.strictObject({ is: v.literal('terminators'), ports: v.array(portText) }),
]);

const taskSchema = v.union([
	/** A kind of drill, drawn afresh at each go. */
	v.strictObject({ drill: v.picklist(DRILL_IDS) }),
	v.strictObject({
		says: text,
		scene: v.picklist(['bench', 'rig', 'show', 'load-out']),
		hands: v.pipe(v.array(v.picklist(['panel', 'power', 'desk', 'line', 'mains', 'remote'])), v.minLength(1)),
		on: v.exactOptional(benchSchema),
		goal: v.pipe(v.array(goalSchema), v.minLength(1)),
		free: v.optional(v.array(v.picklist(SETTING_KEYS)), []),
	}),
]);

/** A question about what is done to the lesson's bench. What it then shows, and what it does not, is read off the rig. */
const predictionSchema = v.strictObject({
	/** What to do, and what is asked. */
	ask: text,
	done: log,
	/** The fixture, and what of it: its light, its display, or its data indicator. */
	watch: idText,
	see: v.optional(v.picklist(['light', 'display', 'data']), 'light'),
	/** Mistakes that a hand may make in its place, or believe to come to the same: what each shows is a wrong option. */
	mistakes: v.optional(v.array(log), []),
});

const lessonSchema = v.strictObject({
	id: idText,
	title: text,
	part: v.picklist(PART_IDS),
	/** Larger comes later; unique, and free to grow between. */
	order: whole(1, 9999),
	minutes: whole(5, 10),
	/** What the learner can do afterwards, each going on from "You will be able to". */
	outcome: texts(1, 3),
	cautions: v.array(v.picklist(cautionIds)),
	/** Dangers the lesson touches: each must be among its cautions. */
	tags: v.array(v.picklist(cautionIds)),
	bench: benchSchema,
	/** The fixture in hand at first; the first on the sheet unless told. */
	hand: v.exactOptional(idText),
	tools: v.array(v.picklist(TOOL_IDS)),
	/** Asked before it is done: what the bench will show. */
	predict: v.exactOptional(v.pipe(v.array(predictionSchema), v.minLength(1), v.maxLength(2))),
	/** Small things to try. */
	try: texts(2, 5),
	/** What goes wrong often, done on purpose; what is then seen of the watched is worked out. */
	slip: v.strictObject({ words: text, log, watch: v.pipe(v.array(idText), v.minLength(1), v.maxLength(3)) }),
	/** What is to be done: a kind of drill, or a task in one case or several. */
	tasks: v.pipe(v.array(taskSchema), v.minLength(1)),
	/** Kinds of question, by their ids, drawn fresh each time. */
	checks: v.strictObject({
		kinds: v.pipe(v.array(v.picklist(KIND_IDS)), v.minLength(1)),
		profiles: v.optional(v.array(v.string()), []),
		count: v.optional(whole(3, 6), 3),
	}),
	card: texts(3, 8),
	sources: texts(1, 6),
});

export type Lesson = v.InferOutput<typeof lessonSchema>;
export type BenchSpec = Lesson['bench'];
export type TaskSpec = Lesson['tasks'][number];
export type PredictionSpec = NonNullable<Lesson['predict']>[number];

/** As it is written: one task, and what differs between its cases. */
const writtenSchema = v.looseObject({ task: v.unknown(), vary: v.optional(varySchema, {}) });

/**
 * The front matter of a lesson's file.
 * @param file its name without `.mdx`, which is its id
 * @throws InputError `lesson.shape` where it is not one, `lesson.id` where its id is not its file's name
 */
export function readLesson(found: unknown, file: string): Lesson {
	const lesson = readShapeOf(found, file);
	if (lesson.id !== file) throw new InputError('lesson.id', 'id', { trouble: 'not-its-file', file, id: lesson.id });
	return lesson;
}

function readShapeOf(found: unknown, file: string): Lesson {
	try {
		const { task, vary, ...rest } = readShape(writtenSchema, found, 'lesson.shape');
		return readShape(lessonSchema, { ...rest, tasks: casesOf(task, vary) }, 'lesson.shape');
	} catch (error) {
		throw isInputError(error) && error.code === 'lesson.shape' ? error.within(file) : error;
	}
}
