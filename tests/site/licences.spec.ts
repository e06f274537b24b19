import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { filesUnder, root, textOf } from '../house/tree.ts';
import { built } from './pages.ts';

interface Package {
	readonly name: string;
	readonly version: string;
	readonly dependencies?: Readonly<Record<string, string>>;
}
const packageOf = (name: string): Package => JSON.parse(textOf(`node_modules/${name}/package.json`)) as Package;

/** Read another way than the build does: packages that sources name in an import that is more than a type, or styles by an address. */
function named(): Set<string> {
	const { dependencies = {} } = JSON.parse(textOf('package.json')) as Package;
	const text = ['shared', 'sim', 'src']
		.flatMap((layer) => filesUnder(layer, ['.ts', '.tsx', '.astro', '.css']))
		// the build's own steps are not in what it makes
		.filter((file) => !/^src\/site\/(?:server|offline|licences|stale)\/.*\.ts$/.test(file))
		.map(textOf)
		.join('\n')
		.replace(/^import type .*$/gm, '');
	const isNamed = (name: string) =>
		new RegExp(`(?:from |import\\(|import |url\\()["']${name}(?:/[^"']*)?["']`).test(text);
	return new Set(Object.keys(dependencies).filter((name) => isNamed(name)));
}

test('the licence of all that is bundled goes along, and the about page links it', async ({ page: tab, request }) => {
	const names = named();
	expect([...names]).toEqual(
		expect.arrayContaining(['preact', 'xstate', 'valibot', 'jsqr', 'jstat', 'culori', 'minisearch']),
	);
	expect([...names].filter((name) => name.startsWith('@fontsource'))).toHaveLength(2);
	// and what those bring along themselves
	const isOurs = (name: string) => !/^(?:astro|@astrojs)/.test(name);
	for (const name of names)
		if (isOurs(name)) for (const more of Object.keys(packageOf(name).dependencies ?? {})) names.add(more);

	await tab.goto('/about/');
	const link = tab.getByRole('link', { name: 'Their licences' });
	const answer = await request.get((await link.getAttribute('href')) ?? '');
	expect(answer.headers()['content-type']).toContain('text/plain');
	const text = await answer.text();
	// Astro and its like also name what only builds
	for (const name of names)
		if (isOurs(name)) {
			expect(text, name).toContain(`\n- ${name} ${packageOf(name).version} (`);
			const [file = ''] = filesUnder(`node_modules/${name}`, [
				'LICENSE',
				'LICENSE.md',
				'LICENSE.txt',
				'LICENCE',
				'license',
			]).filter((it) => path.dirname(it) === `node_modules/${name}`);
			expect(file, `${name} has a licence`).not.toBe('');
			expect(text, name).toContain(readFileSync(path.join(root, file), 'utf8').trim());
		}
	expect(text).toContain('\n- astro ');
	// symptom: a library with a licence of its own was not listed; cause: it stands inside the file of another
	const [, version, owner = '?'] =
		/version: '([\d.]+)',\s*mode:.*\s*copyright: '([^']+)'/.exec(
			textOf('node_modules/pdfjs-dist/legacy/build/pdf.mjs'),
		) ?? [];
	expect(text).toContain(`\n- core-js ${version} (MIT)`);
	expect(text).toContain(`Copyright ${owner}\n\nPermission is hereby granted`);
});

test('each file in the folder of kept scripts has a hash in its name: it is kept for a year', () => {
	const files = filesUnder('dist/_astro', ['.js', '.css', '.woff2', '.svg', '.png']);
	expect(files.length).toBeGreaterThan(20);
	for (const file of files) expect(path.relative(built, file)).toMatch(/[.-][\w-]{8}\.\w+$/);
});
