import { mkdirSync, mkdtempSync, renameSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { digestInputs, measureBuild, STAMP_FILE, whyStale } from '../../../../src/site/stale/stamp.ts';

let root: string;
let dist: string;
const put = (file: string, text: string) => {
	mkdirSync(path.dirname(path.join(root, file)), { recursive: true });
	writeFileSync(path.join(root, file), text);
};

beforeEach(() => {
	root = mkdtempSync(path.join(tmpdir(), 'prep-bay-stale-'));
	dist = path.join(root, 'dist');
	put('src/pages/index.astro', '<p>Home.</p>');
	put('content/words.ts', 'export const a = 1;');
	put('package-lock.json', '{}');
	put('tests/some.test.ts', '');
	put('dist/index.html', '<p>Home.</p>');
	put(`dist/${STAMP_FILE}`, JSON.stringify({ inputs: digestInputs(root), ...measureBuild(dist) }));
});
afterEach(() => rmSync(root, { recursive: true }));

it('a build is up to date while what it is made from is the same, whenever that was written', () => {
	expect(whyStale(root, dist)).toBeNull();
	utimesSync(path.join(root, 'src/pages/index.astro'), new Date(), new Date());
	put('content/words.ts', 'export const a = 1;');
	// no page is made from a test or from the readme
	put('tests/some.test.ts', 'changed');
	put('README.md', 'changed');
	expect(whyStale(root, dist)).toBeNull();
});

it.each<[string, () => void]>([
	['a changed file', () => put('content/words.ts', 'export const a = 2;')],
	['a new file', () => put('src/pages/more.astro', '')],
	['a lost file', () => rmSync(path.join(root, 'content/words.ts'))],
	[
		'a file called otherwise',
		() => renameSync(path.join(root, 'content/words.ts'), path.join(root, 'content/word.ts')),
	],
	['other packages', () => put('package-lock.json', '{ }')],
	[
		'text moved from one file into the next',
		() => {
			put('content/a.ts', '');
			put('content/words.ts', 'export const a = 1;');
		},
	],
])('%s makes it stale', (_, change) => {
	change();
	expect(whyStale(root, dist)).toBe('Something it is made from has changed since the last build.');
});

it.each<[string, () => void, RegExp]>([
	['a build that lost a file', () => rmSync(path.join(dist, 'index.html')), /not as it was left/],
	['a build with a file more', () => put('dist/more.html', ''), /not as it was left/],
	['no build', () => rmSync(dist, { recursive: true }), /no finished build/],
	['a build that broke off', () => rmSync(path.join(dist, STAMP_FILE)), /no finished build/],
	['a stamp of nonsense', () => put(`dist/${STAMP_FILE}`, '{'), /cannot be read/],
])('%s is stale', (_, change, says) => {
	change();
	expect(whyStale(root, dist)).toMatch(says);
});
