import { cautions } from '#words/cautions/index.ts';
import { profileFor, type RigSheet } from '../../../shared/sheet/index.ts';
import type { Task } from '../../../sim/drill/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import type { CautionsSaid } from '../../ui/index.ts';
import { lessonKey } from './done.ts';
import { sheetOf, taskOf } from './open.ts';
import type { Lesson } from './schema.ts';
import type { ToolId } from './tools.ts';

/** A kind of fixture, and where its chart and its ways through the panel are printed. */
export interface Manual {
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
	readonly try: readonly string[];
	readonly slipWords: string;
	readonly task: Task;
	readonly says: string;
	/** The name its result is kept under. */
	readonly under: string;
	/** Where the charts of the fixtures are: those of the bench, and those of the task. */
	readonly manuals: { readonly bench: readonly Manual[]; readonly task: readonly Manual[] };
	/** The cautions that stand on the lesson's page. */
	readonly said: CautionsSaid;
	/** Where another like it can be done; null where it is the lesson's own. */
	readonly more: string | null;
}

export function practiceOf(lesson: Lesson): PracticeData {
	const { bench, slip, hand = null, tools, task } = lesson;
	const sheet = sheetOf(bench);
	const set = taskOf(lesson);
	return {
		sheet,
		log: bench.log,
		slip: slip.log,
		hand,
		tools,
		try: lesson.try,
		slipWords: slip.words,
		...set,
		said: lesson.cautions.map((id) => cautions[id].title),
		manuals: { bench: manualsOf(sheet), task: manualsOf(set.task.sheet) },
		under: lessonKey(lesson.id),
		more: 'drill' in task ? `/drills/do/#kind=${task.drill}` : null,
	};
}

function manualsOf(sheet: RigSheet): Manual[] {
	const profiles = new Map(sheet.fixtures.map(({ profile }) => [profile, profileFor(sheet, profile)]));
	return [...profiles].map(([id, { name }]) => ({ name, href: `/reference/fixtures/#${id}` }));
}
