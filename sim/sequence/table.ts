import { InputError, shown } from '../../shared/error/index.ts';
import type { Outcome } from './types.ts';

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
