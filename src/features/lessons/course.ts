import { PART_IDS, type PartId, parts } from '#words/lessons/index.ts';
import type { Lesson } from './schema.ts';

/** A part of the day, with its lessons in order. */
export interface Part {
	readonly id: PartId;
	readonly title: string;
	readonly words: string;
	readonly lessons: readonly Lesson[];
}

/** Lessons in the order to learn in. */
export const toLearn = (lessons: readonly Lesson[]): Lesson[] => lessons.toSorted((a, b) => a.order - b.order);

/** The course by the parts of the day. */
export const partsOf = (lessons: readonly Lesson[]): Part[] =>
	PART_IDS.map((id) => ({ id, ...parts[id], lessons: toLearn(lessons).filter(({ part }) => part === id) }));
