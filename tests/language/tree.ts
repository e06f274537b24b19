import { createHash } from 'node:crypto';
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { bracketedMdx, bracketedSource } from './brackets.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/**
 * Where the site of the made-up language is built: outside of the house, so that nothing here takes it for a part of itself, and
 * kept between runs, so that only a change builds it again.
 */
export const madeUpTree: string = path.join(
	tmpdir(),
	`prep-bay-language-${createHash('sha256').update(root).digest('hex').slice(0, 12)}`,
);

/** Its folder of `content/`, and the tag that dates and numbers go by: one that writes neither with letters. */
const FOLDER = 'zz';
const TAG = 'ja-x-zz';

/** What a build is made of, but for the words. */
const PARTS = ['shared', 'sim', 'src', 'astro.config.mjs', 'tsconfig.json', 'package-lock.json'];

/** What a maker printed on a fixture and a crew called their gear is nobody's to translate: circled letters tell it from words. */
const CIRCLED = `const NAMES = ['name', 'title', 'about', 'label', 'ask'];
const letter = (it: string) => String.fromCharCode(it.charCodeAt(0) + (it < 'a' ? 0x24b6 - 65 : 0x24d0 - 97));
export function circled<T>(given: T, key = ''): T {
	if (typeof given === 'string') return (NAMES.includes(key) ? given.replace(/[A-Za-z]/g, letter) : given) as T;
	if (Array.isArray(given)) return given.map((each) => circled(each, key)) as T;
	if (typeof given !== 'object' || given === null) return given;
	return Object.fromEntries(Object.entries(given).map(([name, held]) => [name, circled(held, name)])) as T;
}
`;

/** Writes the tree of the made-up language: the site's own, with no English in it, and the one row that picks the language. */
export function writeMadeUpTree(): void {
	const packages = path.join(madeUpTree, 'node_modules');
	mkdirSync(packages, { recursive: true });
	const there = new Set(readdirSync(packages));
	// one by one: what a build keeps among its packages is its own
	for (const name of readdirSync(path.join(root, 'node_modules')))
		if (!name.startsWith('.') && !there.has(name))
			symlinkSync(path.join(root, 'node_modules', name), path.join(packages, name), 'junction');
	for (const part of [...PARTS, 'content']) rmSync(path.join(madeUpTree, part), { recursive: true, force: true });
	for (const part of PARTS) cpSync(path.join(root, part), path.join(madeUpTree, part), { recursive: true });
	for (const folder of ['shared/profile/bundled', 'shared/sheet/bundled/rigs'])
		for (const file of readdirSync(path.join(madeUpTree, folder))) {
			const at = path.join(madeUpTree, folder, file);
			const up = path.posix.relative(folder, 'shared');
			const text = readFileSync(at, 'utf8');
			const [, name] = /^export const (\w+): (?:Profile|RigSheet) =/m.exec(text) ?? [];
			if (name === undefined) continue;
			const given = text.replace(`export const ${name}:`, 'const given:');
			writeFileSync(
				at,
				`import { circled } from '${up}/circled.ts';\n${given}\nexport const ${name} = circled(given);\n`,
			);
		}
	writeFileSync(path.join(madeUpTree, 'shared/circled.ts'), CIRCLED);
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
	if (file === 'locale/index.ts')
		return text.replace("tag: 'en-GB'", `tag: '${TAG}'`).replace("folder: 'en'", `folder: '${FOLDER}'`);
	return file.endsWith('.mdx') ? bracketedMdx(text) : bracketedSource(text, file);
}

const filesIn = (folder: string): string[] =>
	readdirSync(folder, { recursive: true, withFileTypes: true })
		.filter((it) => it.isFile())
		.map((it) => path.relative(folder, path.join(it.parentPath, it.name)).split(path.sep).join('/'));
