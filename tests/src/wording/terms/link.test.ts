import { describe, expect, it } from 'vitest';
import { terms } from '#words/glossary/index.ts';
import { finderOf, termLinks, withLinks } from '../../../../src/wording/terms/index.ts';
import { filesUnder, root, textOf } from '../../../house/tree.ts';

describe('terms in a text', () => {
	const find = () =>
		finderOf([
			{ id: 'address', term: 'Address', says: '', from: 'trade' },
			{ id: 'start-address', term: 'Start address', forms: ['first slot'], says: '', from: 'trade' },
			{ id: 'light', term: 'Light', everyday: true, says: '', from: 'trade' },
		]);

	it('are found by their longest form, as whole words, once', () => {
		const words = 'Start addresses? A Start address, an address, readdress, address-bus; light; addresses.';
		expect(find()(words).map(({ id, from, to }) => [id, words.slice(from, to)])).toEqual([
			['start-address', 'Start address'],
			['address', 'address'],
		]);
		expect(find()('the first slots').map(({ id }) => id)).toEqual(['start-address']);
	});

	it('all lead to a place that the glossary has', () => {
		const find = finderOf();
		for (const { id, term, everyday = false } of terms) {
			const found = find(term);
			if (!everyday) expect([...found.map((it) => it.id), id]).toContain(id);
		}
	});
});

describe('a lesson', () => {
	it('has each term linked where it first stands, and its words unchanged', () => {
		const text = '---\ntitle: "universe"\n---\n\nOne universe and a start\naddress.\n\nThat universe again.\n';
		const linked = withLinks(text);
		expect(linked.match(/\/glossary\/#[a-z0-9-]+/g)).toEqual(['/glossary/#universe', '/glossary/#start-address']);
		expect(linked.replace(/\[([^\]]*)\]\(\/glossary[^)]*\)/g, '$1')).toBe(text);
	});

	it('keeps headings, links, code and components as they are', () => {
		for (const kept of ['## A universe', '[a universe](/x/)', '`universe`', '<Figure id="universe" />'])
			expect(withLinks(kept)).toBe(kept);
		expect(withLinks('[a universe](/x/) and a universe')).toBe(
			'[a universe](/x/) and a [universe](/glossary/#universe)',
		);
	});

	it('is linked where it stands: the step of the build knows the files', () => {
		// symptom: no lesson had a link since lessons moved under a language. Cause: the step looked for files in the old folder
		const { transform } = termLinks() as { transform(code: string, id: string): { readonly code: string } | null };
		for (const file of filesUnder('content/en/lessons', ['.mdx']))
			expect(transform('A universe.', `${root}${file}`)?.code, file).toContain('/glossary/#universe');
		expect(transform('A universe.', `${root}content/en/site/about.mdx`)).toBeNull();
	});

	it('leads only to terms that the glossary has, in every lesson', () => {
		const ids = new Set(terms.map(({ id }) => id));
		const counts = filesUnder('content/en/lessons', ['.mdx']).map((file) => {
			const links = [...withLinks(textOf(file)).matchAll(/\]\(\/glossary\/#([a-z0-9-]+)\)/g)].map(([, id = '']) => id);
			expect(new Set(links).size, file).toBe(links.length);
			for (const id of links) expect(ids).toContain(id);
			return links.length;
		});
		expect(Math.min(...counts)).toBeGreaterThan(0);
	});
});
