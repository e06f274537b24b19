import { describe, expect, it } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { type Paper, setPaper } from '../../shared/paper/index.ts';
import { qtiFiles } from '../../src/features/papers/exchange/qti.ts';
import { plainPaper } from '../src/features/papers/exchange/class.ts';
import { manifestRulesOf } from './qti-manifest.ts';
import { NAMESPACE, nameIn, rulesOf, type Version } from './qti-structure.ts';
import { type Node, nodesOf, parseXml, xmlOf } from './xml-nodes.ts';
import { type Rules, schemaOf, spoilt } from './xml-rules.ts';

const VERSIONS: readonly Version[] = ['2.2', '3.0'];
const papers: readonly Paper[] = [1, 2, 3].map((seed) => plainPaper(seed * 31337, 60));

/** Cardinality and base type of a response, by the first word of the interaction that asks for it (order: from memory). */
const BOUND: Readonly<Record<string, readonly string[]>> = {
	choice: ['single identifier', 'multiple identifier'],
	order: ['ordered identifier'],
	match: ['single directedPair', 'multiple directedPair'],
	text: ['single string', 'single integer', 'single float'],
};

/** Which of the documents a general validator refuses, by their places. */
async function refused(texts: readonly string[], rules: Rules): Promise<number[]> {
	const { errors } = await validateXML({
		xml: texts.map((contents, i) => ({ fileName: `${i}.xml`, contents })),
		schema: schemaOf(rules),
	});
	return [...new Set(errors.map(({ loc }) => Number.parseInt(loc?.fileName ?? '', 10)))];
}

describe.each(VERSIONS)('QTI %s', (version) => {
	it('items, tests and manifests hold to its published structure (1EdTech QTI: what was read is in `qti-structure.ts`)', async () => {
		for (const paper of papers) {
			const { files } = qtiFiles({ ...paper, recipe: { ...paper.recipe, minutes: 30, title: 'A & B <"C">' } }, version);
			const xml = Object.entries(files).filter(([path]) => /^(test|items\/.*)\.xml$/.test(path));
			expect(xml).toHaveLength(paper.items.length + 1);
			expect(
				await refused(
					xml.map(([, text]) => text),
					rulesOf(version),
				),
			).toEqual([]);
			expect(await refused([files['imsmanifest.xml'] ?? ''], manifestRulesOf(version))).toEqual([]);
			for (const [, text] of xml) expect(text).toContain(`xmlns="${NAMESPACE[version]}"`);
		}
	});

	it('and nothing spoilt does: an element out of order, missing or once too often, a wrong value, stray text', async () => {
		const paper = papers[0] as Paper;
		const { files } = qtiFiles({ ...paper, recipe: { ...paper.recipe, minutes: 30 } }, version);
		const forms = new Map(paper.items.map(({ id, ask, key }) => [`${ask.form}, ${JSON.stringify(key).length}`, id]));
		const items = [...forms.values()].map((id) => files[`items/${id}.xml`] ?? '');
		for (const [texts, rules, least] of [
			[[...items, files['test.xml'] ?? ''], rulesOf(version), 1000],
			[[files['imsmanifest.xml'] ?? ''], manifestRulesOf(version), 40],
		] as const) {
			expect(
				await refused(
					texts.map((text) => xmlOf(parseXml(text))),
					rules,
				),
			).toEqual([]);
			const wrong = texts.flatMap((text) => spoilt(parseXml(text), rules));
			const no = new Set(
				await refused(
					wrong.map(({ xml }) => xml),
					rules,
				),
			);
			expect(wrong.filter((_, i) => !no.has(i)).map(({ what }) => what)).toEqual([]);
			expect(wrong.length).toBeGreaterThan(least);
		}
	});

	it('keeps to what its schema says in rules beside the types (Schematron, read in the same files)', () => {
		for (const paper of papers) {
			const { files } = qtiFiles(paper, version);
			const n = (name: string): string => nameIn(version, name);
			const at = (node: Node, name: string): string | undefined => node.attributes[n(name)];
			const test = parseXml(files['test.xml'] ?? '');
			// 2.2 GENERAL 2: a test, its parts, sections and items are called differently
			const called = ['assessmentTest', 'testPart', 'assessmentSection', 'assessmentItemRef']
				.flatMap((name) => nodesOf(test, n(name)))
				.map((node) => at(node, 'identifier'));
			expect(new Set(called).size).toBe(paper.items.length + 3);
			for (const { id } of paper.items) {
				const root = parseXml(files[`items/${id}.xml`] ?? '');
				const declared = nodesOf(root, n('responseDeclaration'));
				const asking = nodesOf(root).filter((node) => at(node, 'responseIdentifier') !== undefined);
				expect(asking.map((node) => at(node, 'responseIdentifier'))).toEqual(
					declared.map((node) => at(node, 'identifier')),
				);
				const [one] = declared;
				const type = [one && at(one, 'cardinality'), one && at(one, 'baseType')].join(' ');
				// what may be bound to what: the words of each interaction's type, and INTERACTION 1 and 3.0 RESPONSEDEC 2
				expect(BOUND[asking[0]?.name.replace('qti-', '').match(/^[a-z]+/)?.[0] ?? ''], id).toContain(type);
				for (const choice of nodesOf(root, n('choiceInteraction')))
					expect(at(choice, 'maxChoices') === '1', id).toBe(type.startsWith('single'));
				// GENERAL 1: what adds items up is for tests alone
				expect(nodesOf(root, n('testVariables'))).toEqual([]);
				// our own, narrower than a name of XML: older platforms take no more
				for (const node of nodesOf(root))
					expect(at(node, 'identifier') ?? 'a').toMatch(/^[A-Za-z_][A-Za-z0-9_.-]{0,63}$/);
			}
		}
	});
});

it('a title with what XML cannot hold still makes XML', async () => {
	const paper = setPaper({ ...(papers[0] as Paper).recipe, title: 'A\u0000B\ud800 ]]> & <x>', count: 3 }, 4);
	const { files } = qtiFiles(paper, '3.0');
	expect(await refused([files['test.xml'] ?? ''], rulesOf('3.0'))).toEqual([]);
});
