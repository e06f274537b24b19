import { LAST_SLOT, TOP_LEVEL } from '../dmx/index.ts';
import type { Item } from './types.ts';

/** Whole numbers, both ends included. */
export interface Span {
	readonly least: number;
	readonly most: number;
}

/** The highest value of a coarse and a fine slot together, 16 bits. */
const TOP_WORD = 65_535;

/** What may be asked for, by what is counted. Slots and start addresses run 1 to 512, values 0 to 255 (ANSI E1.11). */
const SPANS: Readonly<Record<string, Span>> = Object.freeze({
	value: { least: 0, most: TOP_LEVEL },
	percent: { least: 0, most: 100 },
	slot: { least: 1, most: LAST_SLOT },
	address: { least: 1, most: LAST_SLOT },
	// as many as a universe has slots, were each to take one
	fixtures: { least: 0, most: LAST_SLOT },
	word: { least: 0, most: TOP_WORD },
});

/**
 * The range that a number question asks for: that of whatever is counted, whichever number is right. `Ask.least` and `Ask.most` say
 * what may be stored, and stay as they are: ids of questions and marks of papers hang on them.
 * @returns the item's own least and most where its unit is not known
 */
export function asksFor({ ask, facts }: Item): Span {
	if (ask.form !== 'number') return { least: 0, most: 0 };
	if (ask.unit === 'slots') return { least: 1, most: LAST_SLOT * fixturesOf(facts) };
	return SPANS[ask.unit] ?? { least: ask.least, most: ask.most };
}

/** How many fixtures a question names, each of which can take a whole universe; 1 where it does not say. */
function fixturesOf({ count, more }: Item['facts']): number {
	const all = Number(count ?? 1) + Number(more ?? 0);
	return Number.isInteger(all) && all > 0 ? all : 1;
}
