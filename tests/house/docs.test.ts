import { existsSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesUnder, root, textOf } from './tree.ts';

// In houses like this one, prose that names code drifts from it. So every path and command named here must be there.

const { scripts } = JSON.parse(textOf('package.json')) as { scripts: Record<string, string> };

/** What is named in backticks or links of a page of markdown, or in backticks of a docstring. */
const spans = (text: string) =>
	[...text.matchAll(/`([^`\n]+)`/g), ...text.matchAll(/\]\(([^)\s]+)\)/g)].map((it) => (it[1] ?? '').trim());

function missingFrom(text: string): string[] {
	return spans(text).flatMap((span) => {
		const npm = /^npm (?:run )?([\w:-]+)/.exec(span);
		if (npm) return npm[1] === 'ci' || npm[1] === 'install' || (npm[1] ?? '') in scripts ? [] : span;
		const file = span.replace(/^(?:npx vitest run --config|node|bash) +/, '').replace(/[#:].*$/, '');
		if (!/^(?:\.?[\w@-][\w.@-]*\/|[\w-]+\.(?:md|json|mjs|ts)$)/.test(file) || /[*<>{}…\s]/.test(file)) return [];
		const top = file.split('/')[0] ?? '';
		const ours = /^(shared|sim|content|src|tests|\.ci|\.[\w]+)$/.test(top) || /\.(md|json|mjs)$/.test(top);
		return ours && !existsSync(path.join(root, file)) ? span : [];
	});
}

describe('every path and command named exists', () => {
	const pages = ['README.md', 'DEVELOPERS.md', ...filesUnder('content', ['.md', '.mdx'])];
	it.each(pages)('in %s', (file) => {
		expect(missingFrom(textOf(file))).toEqual([]);
	});

	it('in the docstrings', () => {
		const sources = ['shared', 'sim', 'content', 'src', 'tests'].flatMap((layer) =>
			filesUnder(layer, ['.ts', '.tsx', '.astro']),
		);
		const missing = sources.flatMap((file) => {
			const docs = [...textOf(file).matchAll(/\/\*\*[\s\S]*?\*\//g)].map((it) => it[0].replace(/\n\s*\*/g, '\n'));
			return docs.flatMap(missingFrom).map((span) => `${file}: ${span}`);
		});
		expect(missing).toEqual([]);
	});

	it('sees what is missing, and leaves alone what is no path', () => {
		expect(missingFrom('`sim/nowhere/index.ts`, `npm run nothing`, [a page](tests/none.md)')).toHaveLength(3);
		expect(missingFrom('`tests/run.ts`, `npm test`, `npm run speed`, `x / y`, `src/*/index.ts`')).toEqual([]);
	});
});

describe('the Node it runs on', () => {
	const { engines, optionalDependencies }: { engines: { node: string }; optionalDependencies: Record<string, string> } =
		JSON.parse(textOf('package.json'));

	it('is said alike in README and package.json', () => {
		const [, oldest = ''] = /^>=(\d+\.\d+\.\d+)$/.exec(engines.node) ?? [];
		expect(oldest).not.toBe('');
		expect(textOf('README.md')).toContain(`Node ${oldest} or newer`);
	});

	it('is new enough where the install brings it', () => {
		const parts = (version: string) =>
			version
				.split('.')
				.map((part) => part.padStart(4, '0'))
				.join('.');
		const brought = Object.entries(optionalDependencies).filter(([name]) => name.startsWith('node-'));
		expect(brought.length).toBeGreaterThan(0);
		for (const [name, version] of brought)
			expect(parts(version) >= parts(engines.node.slice('>='.length)), name).toBe(true);
	});
});
