import type { Task } from '../../../sim/drill/index.ts';

/** A task, and its words. */
export interface OneTask {
	readonly task: Task;
	readonly says: string;
}

/** A way into a task, from its root. */
type Path = readonly (string | number)[];

/** A place where tasks differ. */
interface Difference {
	readonly place: Path;
	/** All that may stand there. */
	readonly values: readonly unknown[];
	/** Which of them does, task by task. */
	readonly which: readonly number[];
}

/**
 * Tasks of one make, as a page carries them: the first whole, and where others differ from it, what each has there. A hundred on one
 * bench are not much more than one.
 */
export interface TasksAlike {
	readonly count: number;
	readonly first: OneTask;
	readonly differ: readonly Difference[];
}

/** Packs tasks; `taskAt` gives each again. @throws RangeError for none */
export function packTasks(tasks: readonly OneTask[]): TasksAlike {
	const [first] = tasks;
	if (!first) throw new RangeError('no task to pack');
	const all = tasks.map(inPieces);
	return { count: tasks.length, first, differ: placesIn(all, []).map((place) => differenceAt(all, place)) };
}

/** A task of those packed. @param number from 0, and again from the first past the last */
export function taskAt({ count, first, differ }: TasksAlike, number: number): OneTask {
	const made = differ.reduce<unknown>(
		(task, { place, values, which }) => withAt(task, place, values[which[number % count] ?? 0]),
		inPieces(first),
	);
	const { task, says } = made as InPieces;
	return { task, says: says.join(' ') };
}

/** Its words in pieces, since most of them are the same in every task. */
const inPieces = ({ task, says }: OneTask) => ({ task, says: says.split(/(?<=[.,:;]) /) });
type InPieces = ReturnType<typeof inPieces>;

/** Where values of the same shape differ: as deep as all of them have the same names. */
function placesIn(values: readonly unknown[], path: Path): Path[] {
	const [first] = values;
	const names = namesOf(first);
	if (names === null || values.some((value) => String(namesOf(value)) !== String(names)))
		return values.every((value) => JSON.stringify(value) === JSON.stringify(first)) ? [] : [path];
	return names.flatMap((name) =>
		placesIn(
			values.map((value) => at(value, [name])),
			[...path, name],
		),
	);
}

function differenceAt(all: readonly unknown[], place: Path): Difference {
	const found = all.map((each) => at(each, place));
	const texts = found.map((each) => JSON.stringify(each));
	const known = [...new Set(texts)];
	return {
		place,
		values: known.map((text) => found[texts.indexOf(text)]),
		which: texts.map((text) => known.indexOf(text)),
	};
}

/** Names of an object, or places of a list; null for what has none. */
function namesOf(value: unknown): (string | number)[] | null {
	if (Array.isArray(value)) return value.map((_, i) => i);
	return typeof value === 'object' && value !== null ? Object.keys(value) : null;
}

const at = (value: unknown, path: Path): unknown =>
	path.reduce<unknown>((found, name) => (found as Readonly<Record<string | number, unknown>>)[name], value);

function withAt(value: unknown, [name, ...rest]: Path, put: unknown): unknown {
	if (name === undefined) return put;
	const within = withAt(at(value, [name]), rest, put);
	return Array.isArray(value)
		? value.with(Number(name), within)
		: { ...(value as Readonly<Record<string, unknown>>), [name]: within };
}
