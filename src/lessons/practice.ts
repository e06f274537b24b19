import type { RigSheet } from '../../shared/sheet/index.ts';
import type { Task } from '../../sim/drill/index.ts';
import type { RigEvent } from '../../sim/event/index.ts';
import { lessonKey } from './kept.ts';
import { sheetOf, taskOf } from './open.ts';
import type { Lesson } from './schema.ts';
import type { ToolId } from './tools.ts';

/** What a lesson's bench is given: plain JSON, worked out when the page is built. */
export interface PracticeData {
	readonly sheet: RigSheet;
	/** What happened before the learner came, and the slip after it. */
	readonly log: readonly RigEvent[];
	readonly slip: readonly RigEvent[];
	readonly hand: string | null;
	readonly tools: readonly ToolId[];
	readonly try: readonly string[];
	readonly slipWords: string;
	readonly task: Task;
	readonly says: string;
	/** The name its result is kept under. */
	readonly under: string;
	/** Where another like it can be done; null where it is the lesson's own. */
	readonly more: string | null;
}

export function practiceOf(lesson: Lesson): PracticeData {
	const { bench, slip, hand = null, tools, task } = lesson;
	return {
		sheet: sheetOf(bench),
		log: bench.log,
		slip: slip.log,
		hand,
		tools,
		try: lesson.try,
		slipWords: slip.words,
		...taskOf(lesson),
		under: lessonKey(lesson.id),
		more: 'drill' in task ? `/drills/do/#kind=${task.drill}` : null,
	};
}
