import type { CautionId } from '#words/cautions/index.ts';
import type { Lesson } from './schema.ts';

/** What a lesson's cautions are told by. */
type Told = Pick<Lesson, 'id' | 'order' | 'tags' | 'cautions'>;

/**
 * The cautions that a lesson's page says in full: of the dangers that its hands touch (its tags), and of those that no lesson before
 * it carries. Any other has been read in full, and stands in a line that opens. Before its task, the task's own are in full again.
 */
export function wholeIn(lesson: Told, course: readonly Told[]): CautionId[] {
	const met = new Set(course.filter(({ order }) => order < lesson.order).flatMap(({ cautions }) => cautions));
	return lesson.cautions.filter((id) => lesson.tags.includes(id) || !met.has(id));
}
