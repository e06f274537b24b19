import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { root } from '../house/tree.ts';

const dist = path.join(root, 'dist');
const last = path.join(root, 'tests/.out/bytes.json');

const PAGES = [
	'bench',
	'finder',
	'finder/tree',
	'finder/practise',
	'drills',
	'drills/do',
	'papers',
	'papers/sit',
	'papers/print',
	'review',
	'search',
	'lessons/bands',
];

const sizes = new Map<string, number>();
function sizeOf(file: string): number {
	const size = sizes.get(file) ?? brotliCompressSync(readFileSync(file)).length;
	sizes.set(file, size);
	return size;
}

const IMPORT = /(?:import|export)\s*(?:[\w$*{}\s,]+?from\s*)?["'](\.\.?\/[^"']+\.js)["']/g;

/** The scripts of a page that are fetched before the first tap, as its markup and their own imports say. */
function scriptsOf(page: string): ReadonlySet<string> {
	const markup = readFileSync(path.join(dist, page, 'index.html'), 'utf8');
	const found = new Set<string>();
	const add = (file: string): void => {
		if (found.has(file)) return;
		found.add(file);
		for (const [, to = ''] of readFileSync(file, 'utf8').matchAll(IMPORT)) add(path.join(path.dirname(file), to));
	};
	for (const [, url = ''] of markup.matchAll(/(?:component-url|renderer-url|src)="(\/[^"]+\.js)"/g))
		add(path.join(dist, url));
	return found;
}

it('prints the bytes of each page against the last run', () => {
	const before: Record<string, number> = existsSync(last) ? JSON.parse(readFileSync(last, 'utf8')) : {};
	const now: Record<string, number> = {};
	for (const page of PAGES) {
		const files = [...scriptsOf(page)];
		const bytes = files.reduce((sum, file) => sum + sizeOf(file), 0);
		now[page] = bytes;
		const was = before[page];
		const change =
			was === undefined ? 'no last run' : `${bytes >= was ? '+' : ''}${((bytes - was) / 1000).toFixed(1)} kB`;
		console.log(`/${page}/ ${(bytes / 1000).toFixed(1)} kB of script, brotli, in ${files.length} files (${change})`);
		expect(bytes).toBeGreaterThan(0);
	}
	mkdirSync(path.dirname(last), { recursive: true });
	writeFileSync(last, JSON.stringify(now, null, '\t'));
});
