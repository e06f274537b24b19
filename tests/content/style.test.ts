import { describe, expect, it } from 'vitest';
import { textOf } from '../house/tree.ts';
import { gradeOf } from './grade.ts';
import { allSentences, type Sentence } from './sentences.ts';

/** A row of the table of words that are left out, in `content/STYLE.md`. */
interface Barred {
	readonly word: string;
	/** Files it may stand in, and phrases of the sentences that may hold it. */
	readonly allowed: readonly string[];
}

/** Every barred word of the style page, with its allowed places. */
function barredWords(style: string): Barred[] {
	const [, table = ''] = /^## Words we leave out$([\s\S]*)/m.exec(style) ?? [];
	const rows = table.split('\n').filter((line) => line.startsWith('|'));
	return rows.slice(2).flatMap((row) => {
		const [not = '', , may = ''] = row
			.split('|')
			.slice(1)
			.map((cell) => cell.trim());
		const allowed = [...may.matchAll(/`([^`]+)`|“([^”]+)”/g)].map(([, file, phrase]) => file ?? phrase ?? '');
		return not.split(', ').map((word) => ({ word, allowed }));
	});
}

/** A sentence as it is read: facts are left out, and of words by count all stand. */
const readAs = (text: string): string =>
	text
		.replace(/\{[^{}?]*\}/g, '…')
		.replace(/\{[^{}?]*\?([^{}]*)\}/g, '$1')
		.replaceAll('|', ' ');

/** Whether a text is an id or an address, which nobody reads as words. */
const isId = (text: string): boolean => /^[a-z0-9./:#_-]+$/.test(text) || /^[a-z]+-?…?$/.test(text);

/** Barred words in sentences, each where it may not stand. */
function wrongIn(sentences: readonly Sentence[], barred: readonly Barred[]): string[] {
	const patterns = barred.map(({ word, allowed }) => ({
		word,
		allowed,
		found: new RegExp(`(?<![\\w’-])${word}(?![\\w’-])`, 'i'),
	}));
	return sentences.flatMap(({ file, text }) => {
		const read = readAs(text);
		if (isId(text)) return [];
		return patterns
			.filter(
				({ found, allowed }) =>
					found.test(read) &&
					!allowed.some((place) => place === file || read.toLowerCase().includes(place.toLowerCase())),
			)
			.map(({ word }) => `${file}: “${word}” in: ${text}`);
	});
}

const style = textOf('content/STYLE.md');
const barred = barredWords(style);
const sentences = allSentences();

describe('the style page', () => {
	it('bars words, and says what to write in place of each', () => {
		expect(barred.length).toBeGreaterThan(60);
		for (const { word } of barred) expect(word).toMatch(/^[a-z][a-z’ ]+$/);
	});

	it('is kept by every sentence', () => {
		expect(wrongIn(sentences, barred)).toEqual([]);
	});

	it.each([
		['bench/x.ts', 'Lay out the bench'],
		['bench/x.ts', 'It takes {n} {n?slot|slots}.'],
		['lessons/x.mdx', 'Ask the lamp why.'],
		['checks/x.ts', 'It does not answer.'],
		['glossary/x.ts', 'Once called master and slave.'],
	])('would catch, in %s: %s', (file, text) => {
		expect(wrongIn([{ file: `content/en/${file}`, text }], barred)).not.toEqual([]);
	});

	it('lets a word stand where its row says, an id, and a fact of that name', () => {
		const fine = [
			'desk-strips',
			'{slot as slot} at {level}',
			'Each number sits in a channel, which the standard calls slot.',
			'A strip of tape.',
		];
		expect(
			wrongIn(
				fine.map((text) => ({ file: 'content/en/x.ts', text })),
				barred,
			),
		).toEqual([]);
	});
});

/** The texts of a file that are whole sentences of some length: names and buttons tell no grade. */
const proseByFile = new Map<string, string[]>();
for (const { file, text } of allSentences())
	if (/^\S+( \S+){3,}[.!?]$/.test(text)) proseByFile.set(file, [...(proseByFile.get(file) ?? []), readAs(text)]);

describe('the reading grade', () => {
	const long = [...proseByFile].filter(([, texts]) => texts.length > 4);

	it('is told for most of what there is to read', () => {
		expect(long.length).toBeGreaterThan(80);
	});

	it.each(long)('of %s is 8 at most', (_, texts) => {
		expect(gradeOf(texts.join('\n\n'))).toBeLessThanOrEqual(8);
	});
});
