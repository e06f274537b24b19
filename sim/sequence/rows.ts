import type { OutcomeTable } from './table.ts';

/**
 * A table by what stands out in each row: most suspects show one outcome of a check, since a fault touches few things, and those few
 * who show another are soon gone through.
 */
export interface Rows {
	/** For each check, the outcome that most show. */
	readonly usual: Uint16Array;
	/** Those who show another, those with one mend side by side: of check c from `first[c]` up to but not including `first[c + 1]`. */
	readonly others: Int32Array;
	readonly first: Int32Array;
	/** For each check, the first of the table whose row is the same, number for number: what one tells, the other tells too. */
	readonly alike: Int32Array;
}

const known = new WeakMap<OutcomeTable, { readonly mends: Int32Array; readonly rows: Rows }>();

/** Worked out once for a table and the mends of its suspects. */
export function rowsOf(table: OutcomeTable, mends: Int32Array): Rows {
	const before = known.get(table);
	if (before?.mends === mends) return before.rows;
	const { usual, others, first } = apart(table, mends);
	const rows = { usual, others, first, alike: alikeIn(table, usual, others, first) };
	known.set(table, { mends, rows });
	return rows;
}

function apart({ checks, suspects, cells, counts }: OutcomeTable, mends: Int32Array): Omit<Rows, 'alike'> {
	const byMend = Int32Array.from(mends.keys()).sort((a, b) => (mends[a] as number) - (mends[b] as number) || a - b);
	const usual = new Uint16Array(checks);
	const first = new Int32Array(checks + 1);
	const others: number[] = [];
	for (let check = 0; check < checks; check++) {
		const row = check * suspects;
		const times = new Int32Array((counts[check] as number) + 1);
		for (let at = row; at < row + suspects; at++) {
			const outcome = cells[at] as number;
			times[outcome] = (times[outcome] as number) + 1;
		}
		const most = times.indexOf(Math.max(...times));
		usual[check] = most;
		for (const suspect of byMend) if (cells[row + suspect] !== most) others.push(suspect);
		first[check + 1] = others.length;
	}
	return { usual, others: Int32Array.from(others), first };
}

function alikeIn(table: OutcomeTable, usual: Uint16Array, others: Int32Array, first: Int32Array): Int32Array {
	const { checks, suspects, cells, counts } = table;
	const met = new Map<string, number>();
	return Int32Array.from({ length: checks }, (_, check) => {
		let text = `${counts[check]} ${usual[check]}`;
		for (let at = first[check] as number; at < (first[check + 1] as number); at++)
			text += ` ${others[at]} ${cells[check * suspects + (others[at] as number)]}`;
		const before = met.get(text) ?? check;
		met.set(text, before);
		return before;
	});
}
