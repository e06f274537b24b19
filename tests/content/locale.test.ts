import { describe, expect, it } from 'vitest';
import { counted, locale } from '#words/locale/index.ts';
import { localeOf } from '../../content/locale.ts';

const of = (tag: string) => localeOf({ tag, direction: 'ltr', folder: 'xx' });

describe('a locale', () => {
	it('counts in English by two forms', () => {
		expect([0, 1, 1.5, 2, 21].map((n) => locale.plural(n, 'one', 'many'))).toEqual([
			'many',
			'one',
			'many',
			'many',
			'many',
		]);
		expect([counted(1, 'entry', 'entries'), counted(3, 'entry', 'entries')]).toEqual(['1 entry', '3 entries']);
	});

	it.each([
		['pl', ['one', 'few', 'many', 'other'], { 1: 'one', 2: 'few', 5: 'many', 22: 'few', 1.5: 'other' }],
		[
			'ar',
			['zero', 'one', 'two', 'few', 'many', 'other'],
			{ 0: 'zero', 1: 'one', 2: 'two', 3: 'few', 11: 'many', 100: 'other' },
		],
		['fr', ['one', 'many', 'other'], { 0: 'one', 1: 'one', 2: 'other', 1000000: 'many' }],
		['ja', ['other'], { 1: 'other', 2: 'other' }],
	])('counts in %s by as many forms as that has', (tag, forms, counts) => {
		for (const [n, form] of Object.entries(counts)) expect(of(tag).plural(Number(n), ...forms), n).toBe(form);
	});

	it('says the last form where some are left out', () => {
		expect(of('pl').plural(5, 'one', 'rest')).toBe('rest');
	});

	it('writes numbers as they are, or with so many digits', () => {
		expect([0, -0, 0.1, 1204, -2.5, 4_294_967_295].map((n) => locale.number(n))).toEqual(
			[0, -0, 0.1, 1204, -2.5, 4_294_967_295].map(String),
		);
		expect([1.005, 2.5, 8.345, -0.04].map((n) => locale.number(n, 2))).toEqual(['1.00', '2.50', '8.35', '-0.04']);
		expect(locale.number(12, 1)).toBe('12.0');
		expect([locale.thousands(1204), of('de').number(2.5), of('de').thousands(1204)]).toEqual(['1,204', '2,5', '1.204']);
	});

	it('strings things together', () => {
		expect(locale.list([])).toBe('');
		expect(locale.list(['a', 'b', 'c'])).toBe('a, b and c');
		expect(locale.longList(['a, in', 'b', 'c'])).toBe('a, in; b and c');
		expect(of('de').list(['a', 'b', 'c'])).toBe('a, b und c');
	});

	it('puts names in order, numbers by what they are worth', () => {
		expect(['wash 10', 'Émile', 'wash 9', 'zoe', 'Eva'].sort(locale.compare)).toEqual([
			'Émile',
			'Eva',
			'wash 9',
			'wash 10',
			'zoe',
		]);
	});

	it('writes a day and a time', () => {
		const at = new Date(2031, 4, 3, 18, 5);
		expect(locale.date(at)).toBe('3 May 2031, 18:05');
		expect(of('ja').date(at)).not.toMatch(/\p{L}/u);
	});
});
