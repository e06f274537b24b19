import { describe, expect, it } from 'vitest';
import {
	entropyOf,
	makeOutcomeTable,
	type OutcomeTable,
	outcomesOf,
	pickSuspects,
	splitBy,
} from '../../sim/sequence/index.ts';

/*
 * The code-breaking game with four pegs of six colours: 1,296 codes, each also a guess, marked by how many pegs are
 * right in place and how many in colour alone, 14 marks. Total guesses over all codes of the greedy ways, each taking
 * a code that may still be the one where guesses tie: by entropy 5,722, by expected size 5,696, by most parts 5,668
 * (read in published comparisons; recalculated). The proven optimum is 5,625 (K. Koyama and T. W. Lai, An optimal
 * strategy, Journal of Recreational Mathematics 25, 1993, read). Reaching the three totals to the guess holds the
 * table, the splits and the handling of ties.
 */
const codes = Array.from({ length: 1296 }, (_, i) => [
	Math.floor(i / 216),
	Math.floor(i / 36) % 6,
	Math.floor(i / 6) % 6,
	i % 6,
]);

function marked(guess: readonly number[], code: readonly number[]): number {
	const placed = guess.filter((peg, i) => peg === code[i]).length;
	const shared = [0, 1, 2, 3, 4, 5].reduce((sum, colour) => {
		const count = (pegs: readonly number[]) => pegs.filter((peg) => peg === colour).length;
		return sum + Math.min(count(guess), count(code));
	}, 0);
	return placed * 10 + shared - placed;
}

const table = makeOutcomeTable(
	codes.map((guess) => codes.map((code) => marked(guess, code))),
	codes.length,
);

type Score = (shares: Float64Array) => number;

const scores: Record<string, Score> = {
	entropy: (shares) => entropyOf(shares),
	'expected size': (shares) => -shares.reduce((sum, share) => sum + share * share, 0),
	'most parts': (shares) => shares.filter((share) => share > 0).length,
};

/** Guesses for all codes left together, the best-scored guess made at each turn. */
function total(left: readonly number[], all: OutcomeTable, score: Score): number {
	if (left.length === 1) return 1;
	const narrow = pickSuspects(all, left);
	const even = left.map(() => 1);
	const possible = new Set(left);
	let best = -1;
	let most = Number.NEGATIVE_INFINITY;
	for (let guess = 0; guess < codes.length; guess++) {
		// single precision: ties must be ties, however the sums were rounded
		const value = Math.fround(score(splitBy(narrow, even, guess)));
		if (value > most || (value === most && possible.has(guess) && !possible.has(best))) {
			most = value;
			best = guess;
		}
	}
	const parts = new Map<number, number[]>();
	const row = outcomesOf(all, best);
	for (const code of left) parts.set(row[code] as number, [...(parts.get(row[code] as number) ?? []), code]);
	let guesses = left.length;
	for (const part of parts.values()) if (part[0] !== best || part.length > 1) guesses += total(part, all, score);
	return guesses;
}

describe('the four-peg, six-colour code-breaking game', () => {
	it('has at most 14 marks a guess', () => {
		expect(Math.max(...table.counts)).toBe(14);
		// four pegs alike are told no more than how many are right in place: none, one, two, three or all
		expect(table.counts[0]).toBe(5);
	});

	it.each([
		['entropy', 5722],
		['expected size', 5696],
		['most parts', 5668],
	])('takes by %s %d guesses in all', (name, guesses) => {
		expect(
			total(
				codes.map((_, i) => i),
				table,
				scores[name] as Score,
			),
		).toBe(guesses);
	});
});
