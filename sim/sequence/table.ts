import { InputError, shown } from '../../shared/error/index.ts';
import type { Outcome, Seconds } from './types.ts';

/** What each check shows under each suspect, as small integers. */
export interface OutcomeTable {
	readonly checks: number;
	readonly suspects: number;
	/**
	 * `cells[check * suspects + suspect]`: an outcome, 0 to `counts[check] - 1`; or `counts[check]` itself where the
	 * suspect predicts nothing of that check and each answer is as likely as the next.
	 */
	readonly cells: Uint16Array;
	/** How many answers each check can have, 1 to 65535. */
	readonly counts: Uint16Array;
	/** What the small integers stand for: `labels[check][outcome]`. */
	readonly labels: readonly (readonly Outcome[])[];
}

/** The most answers a check can have. */
const MOST_OUTCOMES = 65_535;

function tooMany(check: number): InputError {
	return new InputError('sequence.outcomes', `outcomes[${check}]`, {
		trouble: 'too-many-outcomes',
		check,
		limit: MOST_OUTCOMES,
	});
}

/**
 * Packs outcomes into a table.
 * @param outcomes `outcomes[check][suspect]`; null where the suspect predicts nothing.
 * @param suspects how many suspects there are; each row has that many outcomes.
 * @param answers every answer each check can have, for those that no suspect predicts; others are added as met.
 * @throws InputError `sequence.lengths` for a row of another length, `sequence.outcomes` for an outcome that is
 * neither a finite number, a text nor null, or for more than 65535 of them.
 */
export function makeOutcomeTable(
	outcomes: readonly (readonly (Outcome | null)[])[],
	suspects: number,
	answers: readonly (readonly Outcome[])[] = [],
): OutcomeTable {
	const checks = outcomes.length;
	const cells = new Uint16Array(checks * suspects);
	const counts = new Uint16Array(checks);
	const labels: Outcome[][] = [];
	outcomes.forEach((row, check) => {
		if (row.length !== suspects) {
			throw new InputError('sequence.lengths', `outcomes[${check}]`, {
				expected: 'length',
				of: 'row',
				length: suspects,
				found: shown(row.length),
			});
		}
		const known = new Map<Outcome, number>();
		for (const answer of answers[check] ?? []) known.set(answer, known.get(answer) ?? known.size);
		const start = check * suspects;
		for (let suspect = 0; suspect < suspects; suspect++) {
			const outcome = row[suspect] ?? null;
			if (outcome === null) continue;
			if (!(typeof outcome === 'string' || Number.isFinite(outcome))) {
				throw new InputError('sequence.outcomes', `outcomes[${check}][${suspect}]`, {
					expected: 'text-or-finite-number',
					found: shown(outcome),
				});
			}
			const code = known.get(outcome) ?? known.size;
			if (code === known.size) known.set(outcome, code);
			cells[start + suspect] = code;
		}
		if (known.size > MOST_OUTCOMES) throw tooMany(check);
		counts[check] = Math.max(1, known.size);
		for (let suspect = 0; suspect < suspects; suspect++) {
			if ((row[suspect] ?? null) === null) cells[start + suspect] = counts[check] as number;
		}
		labels.push([...known.keys()]);
	});
	return { checks, suspects, cells, counts, labels };
}

/**
 * Puts suspects that no check of the table tells apart into one class.
 * @returns the class of each suspect, numbered from 0 in order of first appearance.
 */
export function classesOf(table: OutcomeTable): Int32Array {
	let classes = new Int32Array(table.suspects);
	let found = Math.min(1, table.suspects);
	for (let check = 0; check < table.checks && found < table.suspects; check++) {
		// a class and an outcome make one key, at most 65536 * 2^31: a key over all checks at once would run past 2^53
		const keys = new Map<number, number>();
		const finer = new Int32Array(table.suspects);
		for (let suspect = 0; suspect < table.suspects; suspect++) {
			const outcome = table.cells[check * table.suspects + suspect] as number;
			const key = (classes[suspect] as number) * 65_536 + outcome;
			const known = keys.get(key) ?? keys.size;
			if (known === keys.size) keys.set(key, known);
			finer[suspect] = known;
		}
		classes = finer;
		found = keys.size;
	}
	return classes;
}

/** The table with only the suspects named, in that order; checks, counts and labels as they are. */
export function pickSuspects(table: OutcomeTable, suspects: readonly number[]): OutcomeTable {
	const cells = new Uint16Array(table.checks * suspects.length);
	for (let check = 0; check < table.checks; check++) {
		suspects.forEach((suspect, at) => {
			cells[check * suspects.length + at] = table.cells[check * table.suspects + suspect] as number;
		});
	}
	return { ...table, suspects: suspects.length, cells };
}

/**
 * A table by what stands out in each row: most suspects show one outcome of a check, since a fault touches few things, and those few
 * who show another are soon gone through.
 */
export interface Rows {
	/** For each check, the outcome that most show. */
	readonly usual: Uint16Array;
	/** Those who show another, those with one repair side by side: of check c from `first[c]` up to but not including `first[c + 1]`. */
	readonly others: Int32Array;
	readonly first: Int32Array;
	/** For each check, the first of the table whose row is the same, number for number: what one tells, the other tells too. */
	readonly alike: Int32Array;
}

const known = new WeakMap<OutcomeTable, { readonly repairs: Int32Array; readonly rows: Rows }>();

/** Worked out once for a table and the repairs of its suspects. */
export function rowsOf(table: OutcomeTable, repairs: Int32Array): Rows {
	const before = known.get(table);
	if (before?.repairs === repairs) return before.rows;
	const { usual, others, first } = apart(table, repairs);
	const rows = { usual, others, first, alike: alikeIn(table, usual, others, first) };
	known.set(table, { repairs, rows });
	return rows;
}

function apart({ checks, suspects, cells, counts }: OutcomeTable, repairs: Int32Array): Omit<Rows, 'alike'> {
	const byRepair = Int32Array.from(repairs.keys()).sort(
		(a, b) => (repairs[a] as number) - (repairs[b] as number) || a - b,
	);
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
		for (const suspect of byRepair) if (cells[row + suspect] !== most) others.push(suspect);
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

/** What every chooser looks at. */
export interface TableSearch {
	readonly table: OutcomeTable;
	/** How likely each suspect is: 0 or more, on any scale. */
	readonly weights: Float64Array;
	/** Which repair clears each suspect, as whole numbers from 0. */
	readonly repairs: Int32Array;
	readonly seconds: Seconds;
	/** The share of the weight left that one repair must hold to end the search, above 0.5; 1: no other repair is left. */
	readonly settled: number;
}

/** The suspects of a search, those with one repair side by side, as `Scorer` wants them. */
export function suspectsByRepair(search: TableSearch, suspects?: readonly number[]): Int32Array {
	const list = suspects ? Int32Array.from(suspects) : Int32Array.from(search.weights, (_, suspect) => suspect);
	const repairOf = (suspect: number) => search.repairs[suspect] as number;
	return list.sort((a, b) => repairOf(a) - repairOf(b) || a - b);
}

/** Numbers the names of repairs from 0 in order of first appearance. */
export function numberRepairs(names: readonly (number | string)[]): Int32Array {
	const known = new Map<number | string, number>();
	return Int32Array.from(names, (name) => {
		const number = known.get(name) ?? known.size;
		known.set(name, number);
		return number;
	});
}
