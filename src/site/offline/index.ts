/**
 * The site with no network. At the end of a build a service worker is written that keeps the site on the device and answers from
 * there: the pages and what they need to start with from the first visit on, lessons and heavy parts as they are used or once a page
 * asks for the rest, what few people need only once somebody asked for it (`src/site/updates` does, when the device is idle and nobody asked it to save data). A new version is fetched
 * beside the old one, as much of it as there was of the old, each file checked against the digest it had when it was built, and takes
 * over all at once: when the person says so, or when the last page of the site is closed. So a page never runs with parts of another
 * version. `Kept.astro` says how much is kept. The rest is build-time code: no page loads it.
 */

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import type { AstroIntegration } from 'astro';
import ts from 'typescript';

/** Writes the service worker when everything else is built: put it last. */
export function offline(): AstroIntegration {
	return {
		name: 'prep-bay-offline',
		hooks: {
			'astro:build:done': async ({ dir, logger }) => {
				const { first, all } = await writeServiceWorker(fileURLToPath(dir));
				const kB = (bytes: number) => Math.round(bytes / 1000);
				logger.info(
					`${all.files} files, ${kB(all.bytes)} kB gzipped, are kept for use with no network; ${first.files}, ${kB(first.bytes)} kB, at once`,
				);
			},
		},
	};
}

/** What a service worker keeps: how many files, and their weight on the way in bytes, gzipped as most hosts send them. */
export interface CacheSize {
	readonly files: number;
	readonly bytes: number;
}

/**
 * Writes the service worker of a built site into its folder, and what the site weighs beside it.
 * @param folder the built site
 * @returns what is kept at once, and in all
 */
export async function writeServiceWorker(folder: string): Promise<{ first: CacheSize; all: CacheSize }> {
	const list = (files: readonly string[]) => Promise.all(files.map((file) => listed(folder, file)));
	const { first, later, asked } = siteFiles(folder);
	const lists = { first: await list(first), later: await list(later), asked: await list(asked) };
	const source = await readFile(new URL('./serviceWorker.ts', import.meta.url), 'utf8');
	const { outputText } = ts.transpileModule(source, {
		compilerOptions: {
			target: ts.ScriptTarget.ES2022,
			module: ts.ModuleKind.ESNext,
			removeComments: true,
		},
	});
	const consts = Object.entries(lists).map(([name, files]) => `const ${name} = ${JSON.stringify(files)};\n`);
	await writeFile(path.join(folder, WORKER_FILE), `${consts.join('')}${outputText.replace(/^export \{\};$/m, '')}`);
	const sum = (files: typeof lists.first): CacheSize => ({
		files: files.length,
		bytes: files.reduce((bytes, [, , weight]) => bytes + weight, 0),
	});
	const all = sum([...lists.first, ...lists.later]);
	await writeFile(path.join(folder, KEPT_FILE), JSON.stringify({ bytes: all.bytes }));
	return { first: sum(lists.first), all };
}

/** A file's entry in the service worker's lists: its address, the digest of what is in it, and its weight. */
async function listed(folder: string, file: string): Promise<readonly [string, string, number]> {
	const bytes = await readFile(path.join(folder, file));
	const digest = createHash('sha256').update(bytes).digest('base64');
	const weight = file.endsWith('.woff2') ? bytes.length : (await promisify(gzip)(bytes)).length;
	return [`/${file.replace(/(^|\/)index\.html$/, '$1')}`, digest, weight];
}

/** The service worker's name in the built site; it must stand at the top to answer for every page. */
const WORKER_FILE = 'sw.js';

/** Where the build says what the whole site weighs, for a page that is to ask before any of it is kept. */
const KEPT_FILE = 'kept.json';

/** What a page may need, by its name. Notes for hosts, robots and the next build are not among it. */
const KEPT = /\.(?:html|js|css|woff2|svg|png|webmanifest)$|^(?:search-index\.json|licences\.txt)$/;

/** One of many pages of one make, which come later than the pages that lead to them. */
const ONE_OF_MANY = /^lessons\/(?!plan\/)[^/]+\/index\.html$/;

/** Scripts that few need, and that weigh as much as all the rest: what they are called, `src/site/code-splitting.ts` says. */
const ASKED = /^_astro\/(?:pdf-reader|pdfWorker)[\w.-]+\.js$/;

/** Files of a site by when they are to be kept, as paths from its top with forward slashes. */
export interface SiteFiles {
	/** The pages but single lessons, and what they load at once. */
	readonly first: readonly string[];
	/** Lessons, and what is fetched only once it is used. */
	readonly later: readonly string[];
	/** What is kept only once somebody asked for it: no visit brings it along. */
	readonly asked: readonly string[];
}

/** The files that a page names in its markup, or a script in a static import, of those of the site. */
function namedIn(text: string, isScript: boolean, files: ReadonlySet<string>): string[] {
	const names = isScript
		? [...text.matchAll(/(?:from|import)\s*["']\.\/([^"']+)["']/g)]
		: [...text.matchAll(/\/_astro\/([\w.-]+)/g)];
	return names.map(([, name]) => `_astro/${name}`).filter((file) => files.has(file));
}

/** Sorts the files of a built site by when they are to be kept. */
export function siteFiles(folder: string): SiteFiles {
	const kept = (readdirSync(folder, { recursive: true }) as string[])
		.map((file) => file.split(path.sep).join('/'))
		.filter((file) => KEPT.test(file) && file !== WORKER_FILE)
		.sort();
	const files = new Set(kept);
	const first = new Set(kept.filter((file) => !/\.(?:js|json|txt)$/.test(file) && !ONE_OF_MANY.test(file)));
	// a set walked while it grows: what a file names is reached in its turn
	for (const file of first) {
		if (!/\.(?:html|js)$/.test(file)) continue;
		for (const named of namedIn(readFileSync(path.join(folder, file), 'utf8'), file.endsWith('.js'), files))
			first.add(named);
	}
	const rest = kept.filter((file) => !first.has(file));
	return {
		first: kept.filter((file) => first.has(file)),
		later: rest.filter((file) => !ASKED.test(file)),
		asked: rest.filter((file) => ASKED.test(file)),
	};
}
