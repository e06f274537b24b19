import path from 'node:path';
import { goOf } from '../../src/features/drills/go.ts';
import { unseen } from '../../src/features/invented/index.ts';
import { type Lesson, practiceOf, readLesson } from '../../src/features/lessons/index.ts';
import { filesUnder, textOf } from '../house/tree.ts';

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

/** Seeds of a lesson's task to try: some of a kind of drill, or each of its cases. */
export const taskSeeds = ({ tasks: [first, ...rest] }: Lesson): readonly number[] =>
	first && 'drill' in first ? [1, 7, 295, 4_000_000_007] : [0, ...rest.map((_, i) => i + 1)];

/** A lesson's task, as it is drawn from a seed, and its words. */
export const taskFrom = (lesson: Lesson, seed: number) => goOf(practiceOf(lesson).task, seed, unseen);
