import type { Options, SearchResult } from 'minisearch';
import MiniSearch from 'minisearch';
import { searchPage as words } from '#words/search/index.ts';

/** Most results shown. */
const MOST = 40;
/** Most shown where no place has every word. */
const MOST_NEAR = 10;
/** Letters of a query that are looked at. */
export const LONGEST_QUERY = 100;
/** Letters of text shown with a result. */
const EXCERPT = 160;

/** What stands between the other words for a place. */
export const ALSO = ', ';

/** A result as it is shown. */
export interface SearchHit {
	readonly href: string;
	readonly kind: DocKind;
	readonly title: string;
	readonly excerpt: string;
}

/** What the build and the page must agree on. Every word asked for must be there, if only its beginning; long ones may be misspelt. */
const options: Options<SearchDoc> = {
	fields: ['title', 'also', 'text'],
	storeFields: ['kind', 'title', 'text', 'also'],
	searchOptions: {
		combineWith: 'AND',
		prefix: true,
		fuzzy: (term) => (term.length > 4 ? 0.2 : false),
		boost: { title: 5, also: 3 },
		boostDocument: (_, __, stored) => (stored?.['kind'] === 'term' ? 1.4 : 1),
	},
};

export type SearchIndex = MiniSearch<SearchDoc>;

/** The index of these places, as text to be kept in a file. */
export function indexText(docs: readonly SearchDoc[]): string {
	const index = new MiniSearch<SearchDoc>(options);
	index.addAll(docs);
	return JSON.stringify(index);
}

/** The index out of such a file. */
export const readIndex = (text: string): SearchIndex => MiniSearch.loadJSON<SearchDoc>(text, options);

/** What is found, best first, how many there are in all, and whether those are only near: no place has every word. */
export interface SearchResults {
	readonly found: readonly SearchHit[];
	readonly count: number;
	readonly isNear: boolean;
}

/** Looks for every word of a query; where no place has them all, for those that have some. Nothing for an empty query. */
export function find(index: SearchIndex, query: string): SearchResults {
	const asked = query.trim().toLowerCase().slice(0, LONGEST_QUERY);
	const whole = asked === '' ? [] : index.search(asked);
	const isNear = whole.length === 0;
	const all = isNear ? nearest(index, asked) : whole;
	// what is named just that comes first, then what is also called that, however often the word stands elsewhere
	const closeness = ({ title, also }: SearchResult): number => {
		if (String(title).toLowerCase() === asked) return 0;
		return String(also).toLowerCase().split(ALSO).includes(asked) ? 1 : 2;
	};
	const ranked = all.toSorted((a, b) => closeness(a) - closeness(b));
	const found = ranked.slice(0, MOST).map((result) => ({
		href: String(result.id),
		kind: result['kind'] as DocKind,
		title: String(result['title']),
		excerpt: excerptOf(String(result['text']), result.terms),
	}));
	return { found, count: all.length, isNear: isNear && all.length > 0 };
}

/** The few places with the most of these words, as people ask in whole sentences. Short words are too common to tell anything. */
function nearest(index: SearchIndex, asked: string): readonly SearchResult[] {
	const words = asked.split(/[^\p{L}\p{N}]+/u).filter((word) => word.length > 3);
	return words.length === 0 ? [] : index.search(words.join(' '), { combineWith: 'OR' }).slice(0, MOST_NEAR);
}

/** The part of a text round the first of the words that were found in it, cut at whole words. */
export function excerptOf(text: string, words: readonly string[]): string {
	if (text.length <= EXCERPT) return text;
	const low = text.toLowerCase();
	const at = Math.min(...words.map((word) => low.indexOf(word)).filter((place) => place >= 0), text.length);
	const from = at === text.length || at < EXCERPT / 2 ? 0 : text.lastIndexOf(' ', at - EXCERPT / 3) + 1;
	const cut = text.slice(from, from + EXCERPT);
	const whole = from + EXCERPT < text.length ? cut.slice(0, cut.lastIndexOf(' ')) : cut;
	return `${from > 0 ? '… ' : ''}${whole}${from + EXCERPT < text.length ? ' …' : ''}`;
}

/** What a result is. */
export type DocKind = 'lesson' | 'term' | 'reference' | 'fault' | 'caution';

/** One place that can be found. */
export interface SearchDoc {
	/** Where it stands, from the root of the site, which also tells it from every other. */
	readonly id: string;
	readonly kind: DocKind;
	readonly title: string;
	/** Other words for it, which count nearly as much as its title; `ALSO` stands between two of them. */
	readonly also: string;
	/** Its text, of which the first words are shown. */
	readonly text: string;
}

/** How a search went, in words. */
export function told(query: string, { found, count, isNear }: SearchResults): string {
	const asked = query.trim();
	if (asked === '') return words.idle;
	if (count === 0) return words.none(asked);
	if (isNear) return words.near(count);
	return found.length < count ? words.most(found.length, count) : words.results(count);
}
