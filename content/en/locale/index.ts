/**
 * Which language these words are in, and how it counts, lists, and writes numbers and dates. Whatever is shown asks this, and the
 * words of this folder do too.
 */
import { localeOf } from '../../locale.ts';

export const locale = localeOf({ tag: 'en-GB', direction: 'ltr', folder: 'en' });

/** So many of them: '1 entry', '3 entries'. */
export const counted = (n: number, one: string, many: string): string =>
	`${locale.number(n)} ${locale.plural(n, one, many)}`;
