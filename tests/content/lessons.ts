import path from 'node:path';
import { goOf } from '../../src/features/drills/go.ts';
import { unseen } from '../../src/features/invented/index.ts';
import { type Lesson, readLesson } from '../../src/features/lessons/index.ts';
import { taskOf } from '../../src/features/lessons/open.ts';
import { filesUnder, textOf } from '../house/tree.ts';
import { runs } from '../runs.ts';

export interface LessonFile {
	readonly lesson: Lesson;
	/** The text under the front matter. */
	readonly body: string;
}

/** A lesson's file: `key: value` in front, each value in JSON, then the text. */
function partOf(text: string): { data: Record<string, unknown>; body: string } {
	const [, front = '', body = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text) ?? [];
	const keys = [...front.matchAll(/^([a-z]+):/gm)];
	const data = Object.fromEntries(
		keys.map(({ 0: found, 1: key = '', index }, i) => [
			key,
			JSON.parse(front.slice(index + found.length, keys[i + 1]?.index)) as unknown,
		]),
	);
	return { data, body };
}

/** Every lesson, as it stands in `content/en/lessons`. */
export const lessonFiles = (): LessonFile[] =>
	filesUnder('content/en/lessons', ['.mdx']).map((file) => {
		const { data, body } = partOf(textOf(file));
		return { lesson: readLesson(data, path.basename(file, '.mdx')), body };
	});

/** What a person reads of a lesson, as plain text: its prose and the sentences of its front matter, with no markup. */
export function proseOf({ lesson, body }: LessonFile): string {
	const prose = body
		.replace(/<[A-Z][^>]*\/>/g, '')
		.replace(/^#+ .*$/gm, '')
		.replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
		.replace(/[*_`]/g, '')
		.replace(/^\s*[-\d.]+\s+/gm, '');
	// one case speaks for all: they differ in numbers and names
	const says = lesson.tasks.slice(0, 1).flatMap((task) => ('says' in task ? [task.says] : []));
	return [
		...lesson.outcome,
		prose,
		lesson.slip.words,
		...(lesson.predict ?? []).map(({ ask }) => ask),
		...lesson.try,
		...says,
		...lesson.card,
	].join('\n\n');
}

/** Seeds of all that a lesson's task may be: some of a kind of drill, or each of the tasks of one make. */
export function taskSeeds(lesson: Lesson): readonly number[] {
	const set = taskOf(lesson);
	return 'drill' in set ? [1, 7, 295, 4_000_000_007] : Array.from({ length: set.count }, (_, i) => i);
}

/** As many of those as a test has time for, from all over; in a soak all. */
export function someSeeds(lesson: Lesson, usual = 10): readonly number[] {
	const all = taskSeeds(lesson);
	const count = Math.min(all.length, runs(usual, all.length));
	return Array.from({ length: count }, (_, i) => all[Math.floor((i * all.length) / count)] ?? 0);
}

/** A lesson's task, as it is drawn from a seed, and its words. */
export const taskFrom = (lesson: Lesson, seed: number) => goOf(taskOf(lesson), seed, unseen);
