import { createHash } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import ts from 'typescript';
import { KEPT_FILE, siteFiles, WORKER_FILE } from './files.ts';

/** What a service worker keeps: how many files, and their weight on the way in bytes, gzipped as most hosts send them. */
export interface Kept {
	readonly files: number;
	readonly bytes: number;
}

/**
 * Writes the service worker of a built site into its folder, and what the site weighs beside it.
 * @param folder the built site
 * @returns what is kept at once, and in all
 */
export async function writeServiceWorker(folder: string): Promise<{ first: Kept; all: Kept }> {
	const list = (files: readonly string[]) => Promise.all(files.map((file) => listed(folder, file)));
	const { first, later } = siteFiles(folder);
	const lists = { first: await list(first), later: await list(later) };
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
	const sum = (files: typeof lists.first): Kept => ({
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
