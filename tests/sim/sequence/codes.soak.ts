import { expect, it } from 'vitest';
import { sequence } from '../../../sim/sequence/index.ts';

const COLOURS = 6;

const codes = Array.from({ length: COLOURS ** 4 }, (_, i) => [
	Math.floor(i / 216),
	Math.floor(i / 36) % 6,
	Math.floor(i / 6) % 6,
	i % 6,
]);

function marked(guess: readonly number[], code: readonly number[]): number {
	const placed = guess.filter((peg, i) => peg === code[i]).length;
	let shared = 0;
	for (let colour = 0; colour < COLOURS; colour++) {
		const count = (pegs: readonly number[]) => pegs.filter((peg) => peg === colour).length;
		shared += Math.min(count(guess), count(code));
	}
	return placed * 10 + shared - placed;
}

/*
 * The game of tests/published/sequence-codes.test.ts, played by the default. A guess that is the code itself ends it: that outcome gives
 * the guess back, and one is counted for naming each code. The proven optimum is 5,625; 5,700 was measured in November 2026.
 */
it('plays the four-peg, six-colour code-breaking game in 5,640 guesses or fewer', () => {
	const { expectedCost } = sequence({
		weights: codes.map(() => 1),
		costs: codes.map(() => 1),
		outcomes: codes.map((guess) => codes.map((code) => marked(guess, code))),
		refunds: codes.map(() => ({ outcome: 40, seconds: 1 })),
	});
	const guesses = Math.round((expectedCost + 1) * codes.length);
	console.log(`the four-peg, six-colour game: ${guesses} guesses; the proven optimum is 5,625`);
	expect(guesses).toBeGreaterThanOrEqual(5625);
	expect(guesses).toBeLessThanOrEqual(5640);
});
