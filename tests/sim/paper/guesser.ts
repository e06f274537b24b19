import type { Item, Option } from '../../../shared/paper/index.ts';
import { optionText } from '../../../src/wording/papers.ts';

/** What somebody can go by who reads neither the question nor its chart: the look of the options alone. */
export const GUESSES = ['most-alike', 'longest', 'middle'] as const;
export type Guess = (typeof GUESSES)[number];

/** Words and numbers of a text, in order. */
const words = (text: string): string[] => text.toLowerCase().match(/[\p{L}]+|\d+/gu) ?? [];
const numbers = (text: string): number[] => (text.match(/\d+/g) ?? []).map(Number);

/** How many words two texts share, each counted as often as both have it. */
function shared(a: string, b: string): number {
	const left = words(b);
	return words(a).filter((word) => {
		const at = left.indexOf(word);
		if (at >= 0) left.splice(at, 1);
		return at >= 0;
	}).length;
}

const median = (values: readonly number[]): number => {
	const rising = [...values].sort((a, b) => a - b);
	const half = rising.length / 2;
	return ((rising[Math.ceil(half) - 1] ?? 0) + (rising[Math.floor(half)] ?? 0)) / 2;
};

/** How far each text is from the middle of all: by its numbers where all have as many, else by its length. */
function fromMiddle(texts: readonly string[]): number[] {
	const rows = texts.map(numbers);
	const width = rows[0]?.length ?? 0;
	const held = width > 0 && rows.every((row) => row.length === width) ? rows : texts.map((text) => [text.length]);
	const middles = (held[0] ?? []).map((_, i) => median(held.map((row) => row[i] ?? 0)));
	return held.map((row) => row.reduce((sum, value, i) => sum + Math.abs(value - (middles[i] ?? 0)), 0));
}

/** How strongly a guess points at each of some texts. */
function pull(guess: Guess, texts: readonly string[]): number[] {
	if (guess === 'longest') return texts.map((text) => text.length);
	if (guess === 'middle') return fromMiddle(texts).map((distance) => -distance);
	return texts.map((text, i) => texts.reduce((sum, other, j) => (i === j ? sum : sum + shared(text, other)), 0));
}

/** The options a guess points at most; several where it cannot tell them apart. */
function pointedAt(guess: Guess, item: Item, options: readonly Option[]): Option[] {
	const pulls = pull(
		guess,
		options.map((option) => optionText(item, option)),
	);
	const most = Math.max(...pulls);
	return options.filter((_, i) => pulls[i] === most);
}

/** How often a guess is right, 0 to 1, and how often chance is: over questions with one right option. Of options it cannot tell apart it takes any. */
export function guessed(guess: Guess, items: readonly Item[]): { readonly right: number; readonly chance: number } {
	let right = 0;
	let chance = 0;
	for (const item of items) {
		const { ask, key } = item;
		if (ask.form !== 'one' || key.form !== 'one') throw new Error('not one of several');
		const pointed = pointedAt(guess, item, ask.options);
		right += pointed.some(({ id }) => id === key.right) ? 1 / pointed.length : 0;
		chance += 1 / ask.options.length;
	}
	return { right: right / items.length, chance: chance / items.length };
}
