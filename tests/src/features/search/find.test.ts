import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { terms } from '#words/glossary/index.ts';
import { excerptOf, find, indexText, readIndex, told } from '../../../../src/features/search/find.ts';
import { searchDocs } from '../../../../src/site/indexing/index.ts';
import { runs } from '../../../runs.ts';

const lesson = {
	id: 'a-row',
	title: 'A row of five',
	outcome: ['Link five washes.'],
	body: '## Why it matters\n\nOut of **one**, into the [next](/glossary/#line).\n\n<Care id="mains" />\n\n## The quokka\n\n- Count them.\n',
	headings: [
		{ depth: 2, slug: 'why-it-matters', text: 'Why it matters' },
		{ depth: 2, slug: 'the-quokka', text: 'The quokka' },
	],
};
const docs = searchDocs([lesson]);
const index = readIndex(indexText(docs));
const titles = (query: string) => find(index, query).found.map(({ title }) => title);

describe('what can be searched', () => {
	it('has each place once, with a title and text, and every kind', () => {
		expect(new Set(docs.map(({ id }) => id)).size).toBe(docs.length);
		for (const { id, title, text } of docs) {
			expect(id).toMatch(/^\/[a-z-]+\/([a-z0-9-]+\/)?(#[a-z0-9-]+)?$/);
			expect(title, id).not.toBe('');
			expect(text, id).not.toMatch(/[{}[\]<>]|undefined/);
		}
		expect(new Set(docs.map(({ kind }) => kind))).toEqual(new Set(['term', 'lesson', 'reference', 'fault', 'caution']));
	});

	it('has a lesson and each of its sections, as plain words', () => {
		expect(docs.filter(({ kind }) => kind === 'lesson').map(({ id, text }) => [id, text])).toEqual([
			['/lessons/a-row/', 'Link five washes.'],
			['/lessons/a-row/#why-it-matters', 'Out of one , into the next.'],
			['/lessons/a-row/#the-quokka', 'Count them.'],
		]);
	});
});

describe('searching', () => {
	it('finds every term of the glossary by its name, first', () => {
		for (const { term } of terms) expect(titles(term)[0], term).toBe(term);
	});

	it('finds a term by its other forms', () => {
		for (const { term, forms = [] } of terms) for (const form of forms) expect(titles(form), form).toContain(term);
	});

	it('finds while the word is not finished, and over a slip of the finger', () => {
		expect(titles('termin')[0]).toBe('Terminator');
		expect(titles('terminater')[0]).toBe('Terminator');
		expect(titles('footprnt')[0]).toBe('Footprint');
		expect(titles('quok')).toEqual(['A row of five: The quokka']);
	});

	it('finds faults and cautions by what people call them', () => {
		expect(titles('battery flat')).toContain('Battery flat');
		expect(titles('swapped wires')).toContain('Data wires swapped');
		expect(titles('safety bond')).toContain('Overhead: two fixings, always');
		expect(titles('multicast')).toContain('Universes on a network');
	});

	it('wants every word, and finds nothing for nothing', () => {
		expect(find(index, 'terminator resistor').isNear).toBe(false);
		for (const query of ['', '  ', 'zzzzzz', 'no qq'])
			expect(find(index, query)).toEqual({ found: [], count: 0, isNear: false });
	});

	it('shows a few that have some of the words, and says so, where none has all', () => {
		const near = find(index, 'how long does my battery last, quokka');
		expect(near).toMatchObject({ isNear: true });
		expect(near.count).toBeLessThanOrEqual(10);
		expect(near.found.some(({ title }) => /battery/i.test(title))).toBe(true);
		expect(titles('my lamp wont follow')).toContain('Follower');
	});

	it('takes any text, and shows no more than it counts', () => {
		fc.assert(
			fc.property(
				fc.oneof(
					fc.string(),
					fc.constantFrom(...docs).map(({ text }) => text.slice(0, 30)),
				),
				(query) => {
					const searched = find(index, query);
					expect(searched.found.length).toBeLessThanOrEqual(Math.min(searched.count, 40));
					expect(told(query, searched)).not.toBe('');
				},
			),
			{ numRuns: runs(200) },
		);
	});
});

describe('an excerpt', () => {
	it('is a stretch of whole words of the text, round a word that was found', () => {
		fc.assert(
			fc.property(fc.constantFrom(...docs), fc.nat(), ({ text }, pick) => {
				const words = text
					.toLowerCase()
					.split(/[^a-z]+/)
					.filter((word) => word.length > 3);
				const word = words[pick % Math.max(1, words.length)] ?? 'x';
				const excerpt = excerptOf(text, [word]);
				const bare = excerpt.replace(/^… /, '').replace(/ …$/, '');
				expect(text).toContain(bare);
				expect(bare.length).toBeLessThanOrEqual(Math.max(160, bare.length > 160 ? text.length : 160));
				if (text.toLowerCase().includes(word)) expect(bare.toLowerCase()).toContain(word);
			}),
			{ numRuns: runs(300) },
		);
	});
});

describe('what is told', () => {
	it('counts, and says what to do where there is nothing', () => {
		const of = (shown: number, count: number, isNear = false) => ({
			found: Array.from({ length: shown }, () => ({ href: '/', kind: 'term', title: 'x', excerpt: 'x' }) as const),
			count,
			isNear,
		});
		expect(told('', of(0, 0))).toMatch(/^Try/);
		expect(told('x', of(1, 1))).toBe('1 result');
		expect(told('x', of(12, 12))).toBe('12 results');
		expect(told('x', of(40, 77))).toBe('The first 40 of 77 results');
		expect(told('x', of(3, 3, true))).toMatch(/^No place has all of those words/);
		expect(told(' xyz ', of(0, 0))).toContain('“xyz”');
	});
});
