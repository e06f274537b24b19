import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';
import { find, indexText, readIndex } from '../../src/features/search/find.ts';
import { type LessonText, searchDocs } from '../../src/site/indexing/index.ts';
import { siteFiles, writeServiceWorker } from '../../src/site/offline/index.ts';
import { filesUnder, textOf } from '../house/tree.ts';
import { built, isLesson, pages } from './pages.ts';

// what the site is to hold: ten times the lessons, and two hundred fixtures
const TIMES = 10;
const FIXTURES = 200;

/** The least of some runs in milliseconds: what else the machine does only adds to it. */
function leastMs(act: () => unknown, times = 7): number {
	const runs = Array.from({ length: times }, () => {
		const from = performance.now();
		act();
		return performance.now() - from;
	});
	return Math.min(...runs);
}

/** The lessons as they are searched; each word of a copy's own ends otherwise, as new lessons bring new words. */
function lessonTexts(copy: number): LessonText[] {
	const own = (text: string) =>
		copy === 0 ? text : text.replace(/\b([a-z]{7,})\b/g, `$1${String.fromCharCode(97 + copy)}`);
	return filesUnder('content/en/lessons', ['.mdx']).map((file) => {
		const text = textOf(file);
		const body = own(text.replace(/^---[\s\S]*?\n---\n/, ''));
		const headings = [...body.matchAll(/^## (.*)$/gm)].map(([, heading = ''], i) => ({
			depth: 2,
			slug: `part-${i}`,
			text: heading,
		}));
		const id = path.basename(file, '.mdx');
		return { id: copy === 0 ? id : `${id}-${copy}`, title: own(id.replaceAll('-', ' ')), outcome: [], body, headings };
	});
}

test('the search index grows as what is searched does, and is quick at ten times the lessons and 200 fixtures', () => {
	const now = searchDocs(lessonTexts(0));
	const fixtures = now.filter(({ id }) => id.startsWith('/reference/fixtures/'));
	expect(fixtures.length).toBeGreaterThan(2);
	const more = searchDocs(Array.from({ length: TIMES }, (_, copy) => lessonTexts(copy)).flat());
	const all = [
		...more,
		...Array.from({ length: FIXTURES - fixtures.length }, (_, i) => {
			const one = fixtures[i % fixtures.length];
			if (!one) throw new Error('no fixture');
			return { ...one, id: `${one.id}-${i}`, title: `${one.title} ${i}` };
		}),
	];
	const size = (docs: typeof now) => docs.reduce((sum, { title, text }) => sum + title.length + text.length, 0);
	const growth = size(all) / size(now);
	expect(growth).toBeGreaterThan(4);

	const [small, large] = [indexText(now), indexText(all)];
	const gzip = (text: string) => gzipSync(text).length / 1000;
	const [few, many] = [readIndex(small), readIndex(large)];
	const queries = ['battery flat', 'terminater', 'foot', 'why does it not answer the remote', 'quokka', 'e'];
	const read = [small, large].map((text) => leastMs(() => readIndex(text)));
	const ask = [few, many].map((index) => leastMs(() => queries.map((query) => find(index, query))));
	const ratio = ([a = 1, b = 1]: readonly number[]) => b / a;
	console.log(
		`text × ${growth.toFixed(1)}: index ${gzip(small).toFixed(0)} to ${gzip(large).toFixed(0)} kB gzipped, read in ${read.map((ms) => ms.toFixed(0)).join(' to ')} ms (× ${ratio(read).toFixed(1)}), ${queries.length} queries in ${ask.map((ms) => ms.toFixed(1)).join(' to ')} ms (× ${ratio(ask).toFixed(1)})`,
	);
	expect(large.length / small.length).toBeLessThanOrEqual(growth * 1.2);
	expect(ratio(read)).toBeLessThanOrEqual(growth * 2);
	expect(ratio(ask)).toBeLessThanOrEqual(growth * 2);
	// a list shows the best, not all
	for (const query of queries) expect(find(many, query).found.length).toBeLessThanOrEqual(40);
	expect(find(many, 'battery').count).toBeGreaterThan(100);
});

test('ten times the lessons and a script for each of 200 fixtures make a first visit no heavier', async () => {
	const folder = mkdtempSync(path.join(tmpdir(), 'prep-bay-large-'));
	try {
		cpSync(built, folder, { recursive: true });
		const before = await writeServiceWorker(folder);
		const worker = statSync(path.join(folder, 'sw.js')).size;
		const lessons = pages.filter(isLesson);
		for (const lesson of lessons)
			for (let copy = 1; copy < TIMES; copy++)
				cpSync(path.join(folder, lesson), path.join(folder, `${lesson.slice(0, -1)}-${copy}`), { recursive: true });
		const script = readdirSync(path.join(folder, '_astro')).find((file) => file.endsWith('.js')) ?? '';
		const text = readFileSync(path.join(folder, '_astro', script));
		for (let i = 0; i < FIXTURES; i++)
			writeFileSync(path.join(folder, '_astro', `fixture-${i}.${String(i).padStart(8, '0')}.js`), text);
		const after = await writeServiceWorker(folder);
		expect(after.first).toEqual(before.first);
		const added = lessons.length * (TIMES - 1) + FIXTURES;
		expect(after.all.files).toBe(before.all.files + added);
		const grown = statSync(path.join(folder, 'sw.js')).size;
		const sent = gzipSync(readFileSync(path.join(folder, 'sw.js'))).length;
		console.log(
			`${before.all.files} to ${after.all.files} files: the worker ${worker} to ${grown} bytes (${sent} gzipped), at once ${before.first.files} files, ${Math.round(before.first.bytes / 1000)} kB`,
		);
		// a browser asks for it with each visit: a line for each file and no more
		expect((grown - worker) / added).toBeLessThanOrEqual(115);
	} finally {
		rmSync(folder, { recursive: true });
	}
});

test('what is kept at once, later and once asked for is all that a page may ask for, each once', () => {
	const { first, later, asked } = siteFiles(built);
	const all = [...first, ...later, ...asked];
	// the reader of PDF files and its worker, and nothing a first visit could need
	expect(asked).toHaveLength(2);
	for (const file of asked) expect(file).toMatch(/^_astro\/pdf/);
	expect(new Set(all).size).toBe(all.length);
	const notes = ['sw.js', 'kept.json', 'built.json', 'headers.txt', 'robots.txt'];
	const there = (
		readdirSync(built, { recursive: true, withFileTypes: true }) as readonly {
			isFile(): boolean;
			parentPath: string;
			name: string;
		}[]
	)
		.filter((it) => it.isFile())
		.map((it) => path.relative(built, path.join(it.parentPath, it.name)).split(path.sep).join('/'));
	expect(all.sort()).toEqual(there.filter((file) => !notes.includes(file)).sort());
	// each page can be opened at once, and has its look and its scripts to start with
	for (const page of ['index.html', 'bench/index.html', 'finder/index.html', '404.html', 'not-kept/index.html'])
		expect(first).toContain(page);
	for (const page of pages.filter((it) => !isLesson(it)))
		for (const [, script = ''] of readFileSync(
			path.join(built, page.endsWith('/') ? `${page}index.html` : page),
			'utf8',
		).matchAll(/(?:component-url|renderer-url)="\/([^"]+)"/g))
			expect(first, page).toContain(script);
	expect(first.filter((file) => /^lessons\/(?!plan|index)/.test(file))).toEqual([]);
});
