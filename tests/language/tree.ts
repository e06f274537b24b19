import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { bracketedMdx, bracketedSource } from './brackets.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Where the site of the made-up language is built: a tree of its own, kept between runs, so that only a change builds it again. */
export const madeUpTree: string = fileURLToPath(new URL('../.out/language/', import.meta.url));

/** Its folder of `content/`, and the tag that dates and numbers go by: one that writes neither with letters. */
const FOLDER = 'zz';
const TAG = 'ja-x-zz';

/** What a build is made of, but for the words. */
const PARTS = ['shared', 'sim', 'src', 'astro.config.mjs', 'tsconfig.json', 'package-lock.json'];

/** Writes the tree of the made-up language: the site's own, with no English in it, and the one row that picks the language. */
export function writeMadeUpTree(): void {
	mkdirSync(madeUpTree, { recursive: true });
	for (const part of [...PARTS, 'content']) rmSync(path.join(madeUpTree, part), { recursive: true, force: true });
	for (const part of PARTS) cpSync(path.join(root, part), path.join(madeUpTree, part), { recursive: true });
	const pack = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8')) as { imports: Record<string, string> };
	pack.imports['#words/*'] = `./content/${FOLDER}/*`;
	writeFileSync(path.join(madeUpTree, 'package.json'), JSON.stringify(pack, null, '\t'));
	mkdirSync(path.join(madeUpTree, 'content'));
	cpSync(path.join(root, 'content/locale.ts'), path.join(madeUpTree, 'content/locale.ts'));
	for (const file of filesIn(path.join(root, 'content/en'))) {
		const text = readFileSync(path.join(root, 'content/en', file), 'utf8');
		const to = path.join(madeUpTree, 'content', FOLDER, file);
		mkdirSync(path.dirname(to), { recursive: true });
		writeFileSync(to, madeUp(text, file));
	}
}

function madeUp(text: string, file: string): string {
	if (file === 'locale/index.ts') return text.replace("tag: 'en-GB'", `tag: '${TAG}'`).replace("folder: 'en'", `folder: '${FOLDER}'`);
	return file.endsWith('.mdx') ? bracketedMdx(text) : bracketedSource(text, file);
}

const filesIn = (folder: string): string[] =>
	readdirSync(folder, { recursive: true, withFileTypes: true })
		.filter((it) => it.isFile())
		.map((it) => path.relative(folder, path.join(it.parentPath, it.name)).split(path.sep).join('/'));
