import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { judge, layers } from './layers.ts';
import { filesUnder, textOf } from './tree.ts';

const { imports } = JSON.parse(textOf('package.json')) as { imports: Record<string, string> };
/** The folder that `#words` stands for: the language the site is built in. */
const words = (imports['#words/*'] ?? '').replace(/^\.\/|\/\*$/g, '');

/** Every module named in a page's source: static and dynamic imports, re-exports, and globs, in frontmatter and scripts alike. */
function importsOf(text: string): string[] {
	const named = text.matchAll(/\b(?:import|export)\s[^'"`;]*?\bfrom\s*['"]([^'"]+)['"]|\bimport\s*['"]([^'"]+)['"]/g);
	const called = text.matchAll(/\bimport(?:\.meta\.glob)?(?:<[^>]*>)?\(\s*['"`]([^'"`]+)['"`]/g);
	const sources = text.matchAll(/<script[^>]*\ssrc=["']([^"']+)["']/g);
	return [...named, ...called, ...sources].map((it) => it[1] ?? it[2] ?? '');
}

/** What is wrong with one file's imports, in the words of the layer rule. */
function faultsOf(file: string, text: string): string[] {
	const layer = file.split('/')[0] as keyof typeof layers;
	return importsOf(text).flatMap((named) => {
		const bare = named.replace(/\?.*$/, '');
		if (bare.startsWith('#words/')) return judge(file, bare.replace('#words', words)) ?? [];
		if (bare.startsWith('.')) return judge(file, path.posix.join(path.posix.dirname(file), bare)) ?? [];
		if (bare.startsWith('/')) return `${file} imports ${named}: name it from where the file stands`;
		const { packages } = layers[layer];
		const own = bare.startsWith('@') ? bare.split('/').slice(0, 2).join('/') : (bare.split('/')[0] ?? '');
		if (packages !== null && !(packages as readonly string[]).includes(own)) return `${file} imports ${named}`;
		return [];
	});
}

describe('the layer rule, in .astro and .mdx', () => {
	const files = ['src', 'content'].flatMap((layer) => filesUnder(layer, ['.astro', '.mdx']));

	it('has pages to read', () => {
		expect(files).toContain('src/pages/index.astro');
	});

	it('holds in every page', () => {
		expect(files.flatMap((file) => faultsOf(file, textOf(file)))).toEqual([]);
	});

	it.each([
		["---\nimport { openRig } from '../../sim/rig/index.ts';\n---\n<p />", 'src/pages/a.astro', 0],
		["---\nimport Page from '../layouts/Page.astro';\n---\n<Page />", 'src/pages/a.astro', 0],
		["---\nimport { openRig } from '../../sim/rig/open.ts';\n---\n<p />", 'src/pages/a.astro', 1],
		["---\nimport { help } from '../../tests/help.ts';\n---\n<p />", 'src/pages/a.astro', 1],
		["<p />\n<script>\n\timport '../ui/deep.ts';\n</script>", 'src/pages/a.astro', 1],
		["---\nimport { frame } from '#words/site/index.ts';\n---\n<p />", 'src/pages/a.astro', 0],
		["---\nimport { frame } from '#words/site/frame.ts';\n---\n<p />", 'src/pages/a.astro', 1],
		['---\nconst all = import.meta.glob("../../tests/*.ts");\n---\n', 'src/pages/a.astro', 1],
		["---\nconst it = await import('../bench/deep.ts');\n---\n", 'src/pages/a.astro', 1],
		['<script src="../bench/deep.ts"></script>', 'src/pages/a.astro', 1],
		["import { Bench } from '../../src/features/bench/index.ts'\n\n# A lesson", 'content/en/lessons/a.mdx', 1],
		["import { h } from 'preact'\n\n# A lesson", 'content/en/lessons/a.mdx', 1],
		['# A lesson\n\nWords only, about an import from nowhere.', 'content/en/lessons/a.mdx', 0],
	])('counts the faults in %j', (text, file, faults) => {
		expect(faultsOf(file, text)).toHaveLength(faults);
	});
});
