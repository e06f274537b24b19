import { writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import type { AstroIntegration } from 'astro';
import { licencesText, packageFolder } from './texts.ts';

/** A module or a file of a bundle, as far as it matters here. */
type Bundled =
	| { readonly type: 'chunk'; readonly moduleIds: readonly string[] }
	| { readonly type: 'asset'; readonly originalFileNames: readonly string[] };

const require = createRequire(import.meta.url);

/** Where a tool's own helpers stand that it puts into scripts under made-up names, by the beginning of those. */
const HELPERS: Readonly<Record<string, string>> = {
	'\0vite/': 'vite',
	'\0rolldown/': 'rolldown',
};

function folderOf(id: string): string | null {
	const helper = Object.entries(HELPERS).find(([start]) => id.startsWith(start));
	if (helper) return path.dirname(require.resolve(`${helper[1]}/package.json`));
	return packageFolder(id);
}

/** Gathers the licences of what is bundled, workers too, and writes them to `licences.txt`. Put it before what lists the site's files. */
export function licences(): AstroIntegration {
	// the islands' loader stands in the markup itself, in no bundle
	const folders = new Set([path.dirname(require.resolve('astro/package.json'))]);
	const gather = () => ({
		name: 'prep-bay-licences',
		generateBundle(this: unknown, _: unknown, bundle: Readonly<Record<string, Bundled>>) {
			const { environment } = this as { environment?: { name: string } };
			for (const it of Object.values(bundle)) {
				// a script that only makes the markup is not carried; its styles and typefaces are
				if (it.type === 'chunk' && environment && environment.name !== 'client') continue;
				for (const id of it.type === 'chunk' ? it.moduleIds : it.originalFileNames) {
					const folder = folderOf(path.isAbsolute(id) || id.startsWith('\0') ? id : path.resolve(id));
					if (folder) folders.add(folder);
				}
			}
		},
	});
	return {
		name: 'prep-bay-licences',
		hooks: {
			'astro:config:setup': ({ updateConfig }) => {
				updateConfig({ vite: { plugins: [gather()], worker: { plugins: () => [gather()] } } });
			},
			'astro:build:done': ({ dir }) => writeFile(new URL('licences.txt', dir), licencesText(folders)),
		},
	};
}
