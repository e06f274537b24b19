import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { filesUnder, textOf } from './tree.ts';

/** Names that bring in a clock, chance, a page or a machine. Biome bars most of them too; it cannot see into `Math`. */
const barred = new Set([
	'Date',
	'performance',
	'setTimeout',
	'setInterval',
	'setImmediate',
	'requestAnimationFrame',
	'queueMicrotask',
	'crypto',
	'window',
	'document',
	'navigator',
	'localStorage',
	'sessionStorage',
	'indexedDB',
	'fetch',
	'process',
	'Buffer',
	'globalThis',
	'self',
	'eval',
]);

/** Where a source reaches for a barred name, `Math.random` by any way, or a module it may not have. */
function reaches(file: string, text: string): string[] {
	const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
	const found: string[] = [];
	const mark = (node: ts.Node, what: string) => {
		found.push(`${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1} ${what}`);
	};
	const isProperty = (node: ts.Identifier) => {
		const { parent } = node;
		if (ts.isPropertyAccessExpression(parent)) return parent.name === node;
		if (ts.isQualifiedName(parent)) return parent.right === node;
		return (
			(ts.isPropertyAssignment(parent) ||
				ts.isPropertySignature(parent) ||
				ts.isMethodSignature(parent) ||
				ts.isMethodDeclaration(parent) ||
				ts.isPropertyDeclaration(parent)) &&
			parent.name === node
		);
	};
	const visit = (node: ts.Node): void => {
		if (ts.isIdentifier(node) && !isProperty(node)) {
			if (barred.has(node.text)) mark(node, node.text);
			if (node.text === 'Math') {
				const { parent } = node;
				const plain = ts.isPropertyAccessExpression(parent) && parent.expression === node;
				if (!plain || parent.name.text === 'random')
					mark(node, plain ? 'Math.random' : 'Math, other than by a plain dot');
			}
		}
		if (ts.isStringLiteral(node) && /^(node:|preact|astro|@astrojs|@preact)/.test(node.text)) {
			const { parent } = node;
			if (ts.isImportDeclaration(parent) || ts.isExportDeclaration(parent) || ts.isCallExpression(parent)) {
				mark(node, node.text);
			}
		}
		ts.forEachChild(node, visit);
	};
	visit(source);
	return found;
}

describe('shared/ and sim/ are handed their time and chance', () => {
	const files = ['shared', 'sim'].flatMap((layer) => filesUnder(layer, ['.ts', '.tsx']));

	it('has sources to read', () => {
		expect(files.length).toBeGreaterThan(0);
	});

	it.each(files)('%s', (file) => {
		expect(reaches(file, textOf(file))).toEqual([]);
	});

	it.each([
		['const at = Date.now();', 1],
		['const at = new Date();', 1],
		['const at = performance.now();', 1],
		['const chance = Math.random();', 1],
		["const chance = Math['random']();", 1],
		['const { random } = Math;', 1],
		['const maths = Math; maths.random();', 1],
		["import fs from 'node:fs';", 1],
		["const it = await import('preact');", 1],
		['/* Date.now and Math.random are barred */ const high = Math.max(1, 2);', 0],
		['const sheet: { document: string } = { document: "" }; sheet.document;', 0],
	])('%s', (text, count) => {
		expect(reaches('x.ts', text)).toHaveLength(count);
	});
});
