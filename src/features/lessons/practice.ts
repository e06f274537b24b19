import { cautions } from '#words/cautions/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import type { CautionsSaid } from '../../ui/index.ts';
import type { TaskSet } from '../drills/index.ts';
import { lessonKey } from './done.ts';
import { sheetOf, taskOf } from './open.ts';
import { type Prediction, predictionOf } from './predict.ts';
import type { Lesson } from './schema.ts';
import { type SlipAsked, slipAsked } from './slip.ts';
import type { ToolId } from './tools.ts';

/** A kind of fixture, and where its chart and its ways through the panel are printed. */
export interface Manual {
	readonly id: string;
	readonly name: string;
	readonly href: string;
}

/** What a lesson's bench is given: plain JSON, worked out when the page is built. */
export interface PracticeData {
	readonly sheet: RigSheet;
	/** What happened before the learner came, and the slip after it. */
	readonly log: readonly RigEvent[];
	readonly slip: readonly RigEvent[];
	readonly hand: string | null;
	readonly tools: readonly ToolId[];
	readonly predict: readonly Prediction[];
	readonly try: readonly string[];
	readonly slipWords: string;
	/** What went wrong, to be found; null where it is told. */
	readonly slipAsked: SlipAsked | null;
	readonly task: TaskSet;
	/** The name its result is kept under. */
	readonly under: string;
	/** Where the charts of the fixtures are: of any that may stand on its bench. */
	readonly manuals: readonly Manual[];
	/** The cautions that stand on the lesson's page. */
	readonly said: CautionsSaid;
	/** Where another like it can be done; null where it is the lesson's own. */
	readonly more: string | null;
}

export function practiceOf(lesson: Lesson): PracticeData {
	const { bench, slip, hand = null, tools } = lesson;
	const task = taskOf(lesson);
	return {
		sheet: sheetOf(bench),
		log: bench.log,
		slip: slip.log,
		hand,
		tools,
		predict: (lesson.predict ?? []).map((each) => predictionOf(bench, each)),
		try: lesson.try,
		slipWords: slip.words,
		slipAsked: slipAsked(lesson),
		task,
		said: lesson.cautions.map((id) => cautions[id].title),
		manuals: BUNDLED.map(({ id, name }) => ({ id, name, href: `/reference/fixtures/#${id}` })),
		under: lessonKey(lesson.id),
		more: 'drill' in task ? `/drills/do/#kind=${task.drill}` : null,
	};
}
