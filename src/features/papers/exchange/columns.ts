import { damaged } from './bounds.ts';

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
