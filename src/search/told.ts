import { searchPage as words } from '../../content/search/index.ts';

/** How a search went, in words. */
export function told(query: string, shown: number, count: number): string {
	const asked = query.trim();
	if (asked === '') return words.idle;
	if (count === 0) return words.none(asked);
	return shown < count ? words.most(shown, count) : words.results(count);
}
