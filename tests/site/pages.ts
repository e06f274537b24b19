import { readFileSync } from 'node:fs';
import path from 'node:path';
import { filesUnder, root } from '../house/tree.ts';

/** Where `npm run build` leaves the site. */
export const built: string = path.join(root, 'dist');

/** Addresses of every page of the built site, the not-found page among them by its own name. */
export const pages: readonly string[] = filesUnder('dist', ['.html']).map((file) =>
	`/${file.slice('dist/'.length)}`.replace(/\/index\.html$/, '/'),
);

/** The markup of a page of the built site, by its address. */
export const markupOf = (page: string): string =>
	readFileSync(path.join(built, page.endsWith('/') ? `${page}index.html` : page), 'utf8');
