/**
 * The licences of what others wrote and the site carries: at the end of a build their texts are gathered from the packages whose
 * modules, styles and typefaces went into it, into one text file that the about page links. Build-time code: no page loads it.
 */

import { readdirSync, readFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import type { AstroIntegration } from 'astro';
import { insideOf, type Licence } from './inside.ts';

/** A module or a file of a bundle, as far as it matters here. */
type BundleItem =
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
	/** What those have bundled into them, by title. */
	const inside = new Map<string, Licence>();
	const gather = () => ({
		name: 'prep-bay-licences',
		generateBundle(this: unknown, _: unknown, bundle: Readonly<Record<string, BundleItem>>) {
			const { environment } = this as { environment?: { name: string } };
			for (const it of Object.values(bundle)) {
				// a script that only makes the markup is not carried; its styles and typefaces are
				if (it.type === 'chunk' && environment && environment.name !== 'client') continue;
				for (const id of it.type === 'chunk' ? it.moduleIds : it.originalFileNames) {
					const folder = folderOf(path.isAbsolute(id) || id.startsWith('\0') ? id : path.resolve(id));
					if (!folder) continue;
					folders.add(folder);
					const found = /\.m?js$/.test(id) && path.isAbsolute(id) ? insideOf(id) : null;
					if (found) inside.set(found.title, found);
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
			'astro:build:done': ({ dir }) =>
				writeFile(new URL('licences.txt', dir), licencesText([...[...folders].map(licenceOf), ...inside.values()])),
		},
	};
}

/** The folder of the package a module stands in; null for one of our own, or one that a tool made up. */
function packageFolder(id: string): string | null {
	const [, folder] = /^(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/.exec(id.replace(/^\0/, '')) ?? [];
	return folder ?? null;
}

/**
 * The name, version and licence of a package, and the text of that licence.
 * @throws Error where its folder has no such text
 */
function licenceOf(folder: string): Licence {
	const { name, version, license } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')) as {
		name: string;
		version: string;
		license?: string;
	};
	const files = readdirSync(folder).filter((file) => /^(?:licen[cs]e|copying|notice|ofl)/i.test(file));
	if (files.length === 0)
		throw new Error(
			`${name} ${version} is in the build, but ${folder} has no licence text to go along. Look for another package.`,
		);
	const texts = files.sort().map((file) => readFileSync(path.join(folder, file), 'utf8').trim());
	return { title: `${name} ${version} (${license ?? 'see below'})`, text: texts.join('\n\n') };
}

/** The texts of these licences, as one page of plain text. */
function licencesText(licences: readonly Licence[]): string {
	const all = licences.toSorted((a, b) => (a.title < b.title ? -1 : 1));
	const line = '='.repeat(72);
	return `Prep Bay carries work of others, under these licences. A name is followed by its version.

${all.map(({ title }) => `- ${title}`).join('\n')}
${all.map(({ title, text }) => `\n${line}\n${title}\n${line}\n\n${text}\n`).join('')}`;
}
