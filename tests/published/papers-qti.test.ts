import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { Answer, Item, Paper } from '../../shared/paper/index.ts';
import { qtiFiles, qtiZip } from '../../src/features/papers/exchange/qti.ts';
import { saidBy } from '../shared/thrown.ts';
import { plainPaper, rightAnswer } from '../src/features/papers/exchange/class.ts';
import { nameIn, type Version } from './qti-structure.ts';
import { type Node, nodesOf, parseXml } from './xml-nodes.ts';

const VERSIONS: readonly Version[] = ['2.2', '3.0'];
const papers: readonly Paper[] = [1, 2, 3].map((seed) => plainPaper(seed * 31337, 60));

/** A response as a platform would hold it: its values as text. */
function responseOf(answer: Answer, item: Item): readonly string[] {
	switch (answer.form) {
		case 'one':
			return [answer.chose];
		case 'several':
			return answer.chose;
		case 'order':
			return answer.order;
		case 'switches':
			return answer.up.map((n) => `s${n}`);
		case 'match':
			return Object.entries(answer.pairs).map(([left, right]) => `left-${left} right-${right}`);
		case 'number':
			return [item.ask.form === 'number' && item.ask.base === 16 ? answer.value.toString(16) : String(answer.value)];
		default:
			return [];
	}
}

/** The score a platform would give: our own small reading of QTI's response processing (its rules from memory). */
function scoreOf(root: Node, version: Version, response: readonly string[]): number {
	const n = (name: string): string => nameIn(version, name);
	const [declaration] = nodesOf(root, n('responseDeclaration'));
	const right = nodesOf(root, n('correctResponse')).flatMap(({ children }) => children.map(({ text }) => text));
	const [processing] = nodesOf(root, n('responseProcessing'));
	if (processing?.attributes['template']) {
		const ordered = declaration?.attributes['cardinality'] === 'ordered';
		const [a, b] = [right, response].map((list) => (ordered ? [...list] : list.toSorted()));
		return Number(a?.length === b?.length && a?.every((value, i) => value === b?.[i]));
	}
	const holds = (rule: Node): boolean => {
		const [left, other] = rule.children;
		const number = Number(response[0]);
		if (rule.name === n('and')) return rule.children.every(holds);
		if (rule.name === n('or')) return rule.children.some(holds);
		if (rule.name === n('isNull')) return response.length === 0;
		expect(left?.name).toBe(n('variable'));
		if (rule.name === n('gte')) return number >= Number(other?.text);
		if (rule.name === n('lte')) return number <= Number(other?.text);
		expect([rule.name, rule.attributes[n('caseSensitive')]]).toEqual([n('stringMatch'), 'false']);
		return response[0]?.toLowerCase() === other?.text.toLowerCase();
	};
	const [rule] = nodesOf(root, n('responseIf'))[0]?.children ?? [];
	return Number(rule !== undefined && holds(rule));
}

describe.each(VERSIONS)('QTI %s', (version) => {
	it('a platform that goes by its rules gives the right answer the mark, and no known mistake', () => {
		const forms = new Set<string>();
		for (const paper of papers) {
			const { files } = qtiFiles(paper, version);
			for (const item of paper.items) {
				const root = parseXml(files[`items/${item.id}.xml`] ?? '');
				forms.add(item.ask.form);
				expect(scoreOf(root, version, responseOf(rightAnswer(item), item)), item.id).toBe(1);
				for (const { answer } of item.mistakes)
					expect(scoreOf(root, version, responseOf(answer, item)), item.id).toBe(0);
				expect(scoreOf(root, version, item.key.form === 'several' && item.key.right.length === 0 ? ['a'] : [])).toBe(0);
				if (item.key.form !== 'number' || item.ask.form !== 'number') continue;
				const { base } = item.ask;
				for (const n of item.key.within.flatMap(({ from, to }) => [from - 1, from, to, to + 1])) {
					if (n < 0) continue;
					const isRight = item.key.within.some(({ from, to }) => n >= from && n <= to);
					expect(scoreOf(root, version, [n.toString(base)]), `${item.id} ${n}`).toBe(Number(isRight));
				}
			}
		}
		expect([...forms].sort()).toEqual(['match', 'number', 'one', 'order', 'several', 'switches']);
	});

	it('responses name only what can be chosen', () => {
		for (const paper of papers) {
			const { files } = qtiFiles(paper, version);
			for (const item of paper.items) {
				const root = parseXml(files[`items/${item.id}.xml`] ?? '');
				const ids = ['simpleChoice', 'simpleAssociableChoice']
					.flatMap((name) => nodesOf(root, nameIn(version, name)))
					.map(({ attributes }) => attributes['identifier']);
				expect(new Set(ids).size).toBe(ids.length);
				if (item.ask.form === 'number') continue;
				const right = nodesOf(root, nameIn(version, 'correctResponse')).flatMap(({ children }) => children);
				for (const id of right.flatMap(({ text }) => text.split(' '))) expect(ids).toContain(id);
			}
		}
	});

	it('is a package: one zip, whose manifest names every file in it, and the test every item', () => {
		const [paper] = papers;
		if (!paper) throw new Error('no paper');
		const { zip } = qtiZip(paper, version);
		const files = unzipSync(zip);
		const text = (path: string): string => new TextDecoder().decode(files[path]);
		const manifest = parseXml(text('imsmanifest.xml'));
		expect(manifest.children.map(({ name }) => name)).toEqual(['metadata', 'organizations', 'resources']);
		const named = nodesOf(manifest, 'file').map(({ attributes }) => attributes['href']);
		expect(named.toSorted()).toEqual(
			Object.keys(files)
				.filter((path) => path !== 'imsmanifest.xml')
				.sort(),
		);
		const ids = nodesOf(manifest, 'resource').map(({ attributes }) => attributes['identifier']);
		for (const { attributes } of nodesOf(manifest, 'dependency')) expect(ids).toContain(attributes['identifierref']);
		const items = nodesOf(parseXml(text('test.xml')), nameIn(version, 'assessmentItemRef'));
		expect(items.map(({ attributes }) => attributes['identifier'])).toEqual(paper.items.map(({ id }) => id));
		for (const { attributes } of items) expect(files[attributes['href'] ?? '']).toBeDefined();
		expect(qtiZip(paper, version).zip).toEqual(zip);
	});

	it('leaves out what is done on the bench, and says so', () => {
		const [paper] = papers;
		if (!paper) throw new Error('no paper');
		const [first, ...rest] = paper.items as [Item, ...Item[]];
		const bench: Item = {
			...first,
			ask: { form: 'practical', drill: { kind: 'leader-three', seed: 1 } },
			key: { form: 'practical' },
		};
		const { files, leftOut } = qtiFiles({ ...paper, items: [bench, ...rest] }, version);
		expect(leftOut).toEqual([bench]);
		expect(files['readme.txt']).toContain('Left out');
		expect(Object.keys(files).filter((path) => path.startsWith('items/'))).toHaveLength(rest.length);
		expect(saidBy(() => qtiFiles({ ...paper, items: [bench] }, version))).toMatch(/done on the bench/);
	});
});
