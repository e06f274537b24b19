/** What a language and place ask of plurals, numbers, dates and lists. Each language's folder makes its own, in `locale/index.ts`. */
export interface Locale {
	/** The language's tag, by BCP 47: 'en-GB'. */
	readonly tag: string;
	readonly direction: 'ltr' | 'rtl';
	/** The folder of `content/` that holds its words. */
	readonly folder: string;
	/**
	 * The form that goes with a count.
	 * @param forms one for each plural category the language has, in the order zero, one, two, few, many, other; where some are
	 * left out, the last stands for the rest
	 */
	readonly plural: (count: number, ...forms: readonly string[]) => string;
	/** A number with no separators between its thousands. @param decimals so many of them, zeros too; left out, those it has */
	readonly number: (n: number, decimals?: number) => string;
	/** A whole number with separators between its thousands: '1,204'. */
	readonly thousands: (n: number) => string;
	/** A day and a time of day. @param at ms since 1970, or a date */
	readonly date: (at: number | Date) => string;
	/** Things strung together: 'a, b and c'. */
	readonly list: (things: readonly string[]) => string;
	/** As `list`, with semicolons: for things that have commas of their own. */
	readonly longList: (things: readonly string[]) => string;
	/** Below 0 where the first comes first; numbers in a name go by what they are worth. */
	readonly compare: (a: string, b: string) => number;
}

const CATEGORIES: readonly Intl.LDMLPluralRule[] = ['zero', 'one', 'two', 'few', 'many', 'other'];

/** The one place that asks the machine how a language writes things: everything else asks the locale it is handed. */
export function localeOf({ tag, direction, folder }: Pick<Locale, 'tag' | 'direction' | 'folder'>): Locale {
	const rules = new Intl.PluralRules(tag);
	const categories = CATEGORIES.filter((each) => rules.resolvedOptions().pluralCategories.includes(each));
	const plain = { useGrouping: false, signDisplay: 'negative' } as const;
	const numbers = new Intl.NumberFormat(tag, { ...plain, maximumFractionDigits: 20 });
	const lists = new Intl.ListFormat(tag);
	return {
		tag,
		direction,
		folder,
		plural: (count, ...forms) => forms[categories.indexOf(rules.select(count))] ?? forms.at(-1) ?? '',
		number: (n, decimals) =>
			decimals === undefined
				? numbers.format(n)
				: // rounded as the machine holds it, not as it would be written out
					new Intl.NumberFormat(tag, {
						...plain,
						minimumFractionDigits: decimals,
						maximumFractionDigits: decimals,
					}).format(Number(n.toFixed(decimals))),
		thousands: (n) => new Intl.NumberFormat(tag).format(n),
		date: (at) => new Intl.DateTimeFormat(tag, { dateStyle: 'medium', timeStyle: 'short' }).format(at),
		list: (things) => lists.format(things),
		longList: (things) =>
			lists
				.formatToParts(things)
				.map(({ type, value }) => (type === 'literal' && value.trim() === ',' ? '; ' : value))
				.join(''),
		compare: (a, b) => new Intl.Collator(tag, { numeric: true }).compare(a, b),
	};
}
