import type { Chance, Say } from './types.ts';

/**
 * Wrong options drawn so that the look of the options does not tell the right one. Somebody who reads neither the question nor its
 * chart can still go by the option most like the others, by the longest, or by the middle one; where right is made first and each
 * wrong one is a slip from it, that is the right one far too often.
 */

/** Most mistakes to draw from, the likeliest first: every three of them are looked at. */
export const MOST_DRAWN = 10;

/** What stands in a label, as one text: near enough to its words, which are not known here. */
const textOf = ({ say, facts }: Say): string => [say, ...Object.values(facts)].flat().join(' ').toLowerCase();

const wordsOf = (text: string): string[] => text.match(/[\p{L}]+|\d+/gu) ?? [];

/** Words two texts share, each as often as both have it. */
function sharedWords(a: string, b: string): number {
	const left = wordsOf(b);
	let shared = 0;
	for (const word of wordsOf(a)) {
		const at = left.indexOf(word);
		if (at < 0) continue;
		left.splice(at, 1);
		shared++;
	}
	return shared;
}

const likeness = (texts: readonly string[]): number[] =>
	texts.map((text, i) => texts.reduce((sum, other, j) => (i === j ? sum : sum + sharedWords(text, other)), 0));

const lengths = (texts: readonly string[]): number[] => texts.map(({ length }) => length);

/** How near the middle each stands: by its numbers where all have as many, else by its length. */
function nearness(texts: readonly string[]): number[] {
	const numbers = texts.map((text) => (text.match(/\d+/g) ?? []).map(Number));
	const width = numbers[0]?.length ?? 0;
	const rows =
		width > 0 && numbers.every((row) => row.length === width) ? numbers : texts.map(({ length }) => [length]);
	const middles = (rows[0] ?? []).map((_, i) => middleOf(rows.map((row) => row[i] ?? 0)));
	return rows.map((row) => -row.reduce((sum, value, i) => sum + Math.abs(value - (middles[i] ?? 0)), 0));
}

function middleOf(values: readonly number[]): number {
	const rising = [...values].sort((a, b) => a - b);
	const half = rising.length / 2;
	return ((rising[Math.ceil(half) - 1] ?? 0) + (rising[Math.floor(half)] ?? 0)) / 2;
}

const LOOKS = [likeness, lengths, nearness];

/** How strongly each look points at the first of some texts: 1 at it alone, a half at it and another, 0 elsewhere. */
const pointing = (texts: readonly string[]): number[] =>
	LOOKS.map((look) => {
		const pulls = look(texts);
		const most = Math.max(...pulls);
		return pulls[0] === most ? 1 / pulls.filter((pull) => pull === most).length : 0;
	});

/** Every choice of so many of `count` things, by place, rising. */
function choices(count: number, size: number, from = 0): number[][] {
	if (size === 0) return [[]];
	return Array.from({ length: Math.max(0, count - from) }, (_, i) => from + i).flatMap((first) =>
		choices(count, size - 1, first + 1).map((rest) => [first, ...rest]),
	);
}

/**
 * So many of the wrong ones, so that each look points at the right one as often as at any other. Of choices that do as well, the
 * likeliest mistakes.
 * @param wrongs the likeliest first, no two alike and none like the right one
 */
export function evenlyDrawn<T>(
	chance: Chance,
	right: Say,
	wrongs: readonly T[],
	{ size, label }: { readonly size: number; readonly label: (wrong: T) => Say },
): T[] {
	const every = choices(wrongs.length, Math.min(size, wrongs.length)).map((chosen) => ({
		chosen,
		shares: pointing([textOf(right), ...chosen.map((at) => textOf(label(wrongs[at] as T)))]),
	}));
	const wanted = LOOKS.map((_, look) => {
		const shares = every.map((each) => each.shares[look] ?? 0);
		return shareToWant(chance, Math.min(...shares), Math.max(...shares), size);
	});
	// where not every look can be had as drawn, by turns
	const turns = chance.shuffle(LOOKS.map((_, look) => look));
	const off = ({ shares }: (typeof every)[number], look: number): number =>
		Math.abs((shares[look] ?? 0) - (wanted[look] ?? 0));
	const [best] = every.sort((a, b) => turns.map((look) => off(a, look) - off(b, look)).find((by) => by !== 0) ?? 0);
	return (best?.chosen ?? []).map((at) => wrongs[at] as T);
}

/** The least or the most a look can point at the right one here, by turns, so that over many questions it is one time in all options. */
function shareToWant(chance: Chance, least: number, most: number, wrongs: number): number {
	const even = 1 / (wrongs + 1);
	return most > least && chance.chance(Math.max(0, Math.min(1, (even - least) / (most - least)))) ? most : least;
}
