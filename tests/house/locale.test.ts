import { describe, expect, it } from 'vitest';
import { filesUnder, textOf } from './tree.ts';

/** What asks the machine how a language writes things, or says which language it is. */
const ASKS = /\bIntl\.|\.toLocale\w+\(|\.localeCompare\(|'en-GB'|lang="/;
/** Digits after a point, as English writes them. */
const DIGITS = /\.to(?:Fixed|Precision)\(/;

/** Where the locale is made, and each language's own. */
const LOCALES = /^content\/(?:locale\.ts|[\w-]+\/locale\/index\.ts)$/;
/** Its script imports nothing, and goes by the page's own `lang`. */
const BY_PAGE = 'src/site/offline/Kept.astro';
/** Figures for machines: a spreadsheet's file, statements for a record store; and digits that a locale then writes. */
const FOR_MACHINES: readonly string[] = [
	'src/features/papers/exchange/csv.ts',
	'src/features/papers/exchange/xapi.ts',
	'src/features/lessons/reckon/parts.ts',
];

/** A source without its comments. */
const bare = (text: string): string => text.replace(/\/\*[\s\S]*?\*\/|(?<![:'"`\w])\/\/[^\n]*/g, '');

function asks(file: string, text: string): string[] {
	if (LOCALES.test(file) || file === BY_PAGE) return [];
	return bare(text)
		.split('\n')
		.flatMap((line) =>
			ASKS.test(line) || (DIGITS.test(line) && !FOR_MACHINES.includes(file)) ? [`${file}: ${line.trim()}`] : [],
		);
}

describe('whatever counts, lists, dates or writes a number asks the locale it is handed', () => {
	const files = ['content', 'src'].flatMap((folder) => filesUnder(folder, ['.ts', '.tsx', '.astro']));

	it('has sources to read, the exceptions among them', () => {
		expect(files.length).toBeGreaterThan(400);
		expect(files).toEqual(expect.arrayContaining([BY_PAGE, ...FOR_MACHINES, 'content/en/locale/index.ts']));
	});

	it('all of them', () => {
		expect(files.flatMap((file) => asks(file, textOf(file)))).toEqual([]);
	});

	it.each([
		["const when = new Intl.DateTimeFormat('fr');", 1],
		['n.toLocaleString();', 1],
		['a.localeCompare(b);', 1],
		['(n / 3).toFixed(1);', 1],
		['<html lang="en">', 1],
		['locale.number(n, 1);', 0],
		['// not n.toLocaleString()', 0],
	])('%s', (text, count) => {
		expect(asks('src/features/x.ts', text)).toHaveLength(count);
	});

	it('is handed the words of one language by one name', () => {
		const named = ['src', 'tests'].flatMap((folder) =>
			filesUnder(folder, ['.ts', '.tsx', '.astro']).filter((file) =>
				/\bfrom '(?:\.\.?\/)+content\/[\w-]+\//.test(bare(textOf(file))),
			),
		);
		expect(named).toEqual([]);
	});
});
