import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

/** The service worker's name in the built site; it must stand at the top to answer for every page. */
export const WORKER_FILE = 'sw.js';

/** Where the build says what the whole site weighs, for a page that is to ask before any of it is kept. */
export const KEPT_FILE = 'kept.json';

/** What a page may need, by its name. Notes for hosts, robots and the next build are not among it. */
const KEPT = /\.(?:html|js|css|woff2|svg|png|webmanifest)$|^(?:search-index\.json|licences\.txt)$/;

/** One of many pages of one make, which come later than the pages that lead to them. */
const ONE_OF_MANY = /^lessons\/(?!plan\/)[^/]+\/index\.html$/;

/** Files of a site by when they are to be kept, as paths from its top with forward slashes. */
export interface SiteFiles {
	/** The pages but single lessons, and what they load at once. */
	readonly first: readonly string[];
	/** Lessons, and what is fetched only once it is used. */
	readonly later: readonly string[];
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
	return { first: kept.filter((file) => first.has(file)), later: kept.filter((file) => !first.has(file)) };
}
