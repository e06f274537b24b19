import { PART_IDS, type PartId, parts, type TeachingPlan } from '#words/lessons/index.ts';
import { InputError } from '../../../shared/error/index.ts';
import type { Lesson } from './schema.ts';

/** A part of the day, with its lessons in order. */
export interface CoursePart {
	readonly id: PartId;
	readonly title: string;
	readonly words: string;
	readonly lessons: readonly Lesson[];
}

/** Lessons in the order to learn in. */
export const toLearn = (lessons: readonly Lesson[]): Lesson[] => lessons.toSorted((a, b) => a.order - b.order);

/** The course by the parts of the day. */
export const partsOf = (lessons: readonly Lesson[]): CoursePart[] =>
	PART_IDS.map((id) => ({ id, ...parts[id], lessons: toLearn(lessons).filter(({ part }) => part === id) }));

/** A row of a plan: when it starts, in minutes from the start, and how long it takes. */
export interface PlanRow {
	readonly at: number;
	readonly minutes: number;
	/** Null for a pause. */
	readonly lesson: Lesson | null;
}

/** Times of a class are rounded up to so many minutes. */
const STEP = 5;

/**
 * A plan as a timetable: each lesson's minutes times the plan's pace, rounded up to five.
 * @throws InputError `plan.lesson` for a lesson that there is not
 */
export function timetableOf(
	plan: TeachingPlan,
	lessons: readonly Lesson[],
): { readonly rows: PlanRow[]; readonly total: number } {
	const rows: PlanRow[] = [];
	let at = 0;
	for (const row of plan.rows) {
		const lesson = typeof row === 'string' ? (lessons.find(({ id }) => id === row) ?? null) : null;
		if (typeof row === 'string' && !lesson)
			throw new InputError('plan.lesson', plan.id, { trouble: 'no-such-lesson', plan: plan.id, lesson: row });
		const minutes = typeof row === 'string' ? Math.ceil(((lesson?.minutes ?? 0) * plan.pace) / STEP) * STEP : row.pause;
		rows.push({ at, minutes, lesson });
		at += minutes;
	}
	return { rows, total: at };
}
