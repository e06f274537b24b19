import type { Answer, AnswerForm, Answers, Item, Paper, PaperRecipe } from '../../../../shared/paper/index.ts';
import { damaged } from './bounds.ts';

/**
 * An answer as it stands in a link: short where the question says the rest, whole where it does not fit its question. One: `c`;
 * several and order: `a c`; a number: 37; switches: [1, 4]; match: the right one of each left one, in their order; none: null.
 */
export type PackedAnswer = string | number | readonly number[] | Answer | null;

/** A paper's answers by where its questions stand, and those that none of its questions asked. */
export function packAnswers(paper: Paper, answers: Answers): { packed: PackedAnswer[]; strays: Answers } {
	const ids = new Set(paper.items.map(({ id }) => id));
	return {
		packed: paper.items.map((item) => packAnswer(item.ask, Object.hasOwn(answers, item.id) ? answers[item.id] : null)),
		strays: Object.fromEntries(Object.entries(answers).filter(([id]) => !ids.has(id))),
	};
}

function packAnswer(ask: AnswerForm, answer: Answer | null | undefined): PackedAnswer {
	if (!answer) return null;
	const short = shortAnswer(ask, answer);
	// whatever does not come back the same goes whole
	return short !== null && same(longAnswer(ask, short), answer) ? short : answer;
}

function shortAnswer(ask: AnswerForm, answer: Answer): PackedAnswer {
	if (ask.form === 'match' && answer.form === 'match')
		return ask.left.map(({ id }) => answer.pairs[id] ?? '').join(' ');
	switch (answer.form) {
		case 'one':
			return answer.chose;
		case 'several':
			return answer.chose.join(' ');
		case 'order':
			return answer.order.join(' ');
		case 'number':
			return answer.value;
		case 'switches':
			return answer.up;
		default:
			return null;
	}
}

/** What `packAnswers` packed, by question id again; not held to anything: `readAnswers` does that. */
export function unpackAnswers(items: readonly Item[], packed: readonly unknown[], strays: object): object {
	const answers = items.flatMap((item, at) => {
		const found = packed[at];
		return found === null || found === undefined ? [] : [[item.id, longAnswer(item.ask, found)] as const];
	});
	return Object.fromEntries([...Object.entries(strays), ...answers]);
}

function longAnswer(ask: AnswerForm, packed: unknown): unknown {
	const { form } = ask;
	if (typeof packed === 'number') return { form, value: packed };
	if (Array.isArray(packed)) return { form, up: packed };
	if (typeof packed !== 'string') return packed;
	const words = packed === '' ? [] : packed.split(' ');
	if (form === 'one') return { form, chose: packed };
	if (form === 'several') return { form, chose: words };
	if (form === 'order') return { form, order: words };
	if (form !== 'match') return { form, text: packed };
	const right = packed.split(' ');
	return { form, pairs: Object.fromEntries(ask.left.flatMap(({ id }, i) => (right[i] ? [[id, right[i]]] : []))) };
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What a recipe says that its schema would not fill in by itself, laid out for a link. */
export function leanRecipe(recipe: PaperRecipe): unknown {
	return inColumns(
		Object.fromEntries(Object.entries(recipe).filter(([key, value]) => !(key in USUAL && same(value, USUAL[key])))),
	);
}

/** What the schema fills in; a test holds it to that. */
const USUAL: Readonly<Record<string, unknown>> = Object.freeze({
	profiles: [],
	own: [],
	rig: null,
	topics: [],
	kinds: [],
	levels: ['easy', 'middle', 'hard'],
	minutes: null,
	pass: 70,
	order: 'mixed',
	feedback: 'end',
});

/** Fewest records that are worth laying out in columns. */
const FEWEST = 8;

/**
 * JSON with its longer lists of like records laid out in columns, `{"#": [keys, column ...]}`, and whole numbers as steps,
 * `{"+": [first, step ...]}`: a row of two dozen fixtures deflates to half of what it did. `fromColumns` undoes it.
 */
export function inColumns(value: unknown): unknown {
	if (Array.isArray(value)) {
		const records = likeRecords(value);
		return records ? columnsOf(records) : value.map(inColumns);
	}
	if (!isRecord(value)) return value;
	return Object.fromEntries(Object.entries(value).map(([key, held]) => [key, inColumns(held)]));
}

function columnsOf(records: readonly Record<string, unknown>[]): unknown {
	const keys = Object.keys(records[0] ?? {});
	return { '#': [keys, ...keys.map((key) => steps(records.map((record) => record[key])))] };
}

/** The list, if it is long enough and each of it has the same keys in the same order. */
function likeRecords(list: readonly unknown[]): readonly Record<string, unknown>[] | null {
	const records = list.filter(isRecord);
	if (list.length < FEWEST || records.length < list.length) return null;
	const keysOf = (record: object): string => JSON.stringify(Object.keys(record));
	const keys = keysOf(records[0] ?? {});
	return keys !== '[]' && records.every((record) => keysOf(record) === keys) ? records : null;
}

function steps(column: readonly unknown[]): unknown {
	if (!column.every((held): held is number => Number.isSafeInteger(held))) return inColumns(column);
	return { '+': column.map((held, i) => held - (column[i - 1] ?? 0)) };
}

/** What `inColumns` laid out, as it was. It comes to no more than what it is given. @throws InputError `handed.damaged` */
export function fromColumns(value: unknown): unknown {
	if (Array.isArray(value)) return value.map(fromColumns);
	if (!isRecord(value)) return value;
	if (Object.hasOwn(value, '#')) return recordsOf(value['#']);
	if (Object.hasOwn(value, '+')) return sumsOf(value['+']);
	return Object.fromEntries(Object.entries(value).map(([key, held]) => [key, fromColumns(held)]));
}

function recordsOf(laid: unknown): unknown[] {
	const [keys, ...columns] = Array.isArray(laid) ? laid : [];
	if (!Array.isArray(keys) || keys.length !== columns.length) throw damaged();
	const filled = columns.map(fromColumns);
	const [first] = filled;
	if (!Array.isArray(first)) throw damaged();
	return first.map((_, row) =>
		Object.fromEntries(
			keys.map((key, i) => {
				const column = filled[i];
				if (typeof key !== 'string' || !Array.isArray(column) || column.length !== first.length) throw damaged();
				return [key, column[row]];
			}),
		),
	);
}

function sumsOf(laid: unknown): number[] {
	if (!Array.isArray(laid)) throw damaged();
	let sum = 0;
	return laid.map((step) => {
		if (typeof step !== 'number') throw damaged();
		sum += step;
		return sum;
	});
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
	typeof value === 'object' && value !== null && !Array.isArray(value);
