import { describe, expect, it } from 'vitest';
import { terms } from '../../../content/glossary/index.ts';
import { finderOf, linkTerms, type Node } from '../../../src/terms/index.ts';

const text = (value: string): Node => ({ type: 'text', value });
const p = (...children: Node[]): Node => ({ type: 'element', tagName: 'p', children });
const run = (path: string, ...children: Node[]): Node => {
	const tree: Node = { type: 'root', children };
	linkTerms()(tree, { path });
	return tree;
};
const LESSON = '/x/content/lessons/a.mdx';

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
		const tree = run(LESSON, p(text('One universe and a terminator.')), p(text('That universe again.')));
		const links = JSON.stringify(tree).match(/"\/glossary\/#[a-z0-9-]+"/g);
		expect(links).toEqual(['"/glossary/#universe"', '"/glossary/#terminator"']);
		const words = (node: Node): string => node.value ?? (node.children ?? []).map(words).join('');
		expect(words(tree)).toBe('One universe and a terminator.That universe again.');
	});

	it('keeps headings, links, code and components as they are, and other pages too', () => {
		for (const tagName of ['h2', 'a', 'code']) {
			const kept: Node = { type: 'element', tagName, children: [text('universe')] };
			expect(run(LESSON, kept).children).toEqual([{ type: 'element', tagName, children: [text('universe')] }]);
		}
		const component: Node = { type: 'mdxJsxFlowElement', children: [text('universe')] };
		expect(JSON.stringify(run(LESSON, component))).not.toContain('glossary');
		expect(JSON.stringify(run('/x/content/site/about.mdx', p(text('universe'))))).not.toContain('glossary');
	});
});
