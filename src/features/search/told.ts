import { searchPage as words } from '#words/search/index.ts';
import type { Searched } from './find.ts';

/** How a search went, in words. */
export function told(query: string, { found, count, isNear }: Searched): string {
	const asked = query.trim();
	if (asked === '') return words.idle;
	if (count === 0) return words.none(asked);
	if (isNear) return words.near(count);
	return found.length < count ? words.most(found.length, count) : words.results(count);
}
