import { readFileSync } from 'node:fs';
import path from 'node:path';
import { filesUnder, root } from '../house/tree.ts';

/** Where `npm run build` leaves the site. */
export const built: string = path.join(root, 'dist');

/** Addresses of every page of the built site, the not-found page among them by its own name. */
export const pages: readonly string[] = filesUnder('dist', ['.html']).map((file) =>
	`/${file.slice('dist/'.length)}`.replace(/\/index\.html$/, '/'),
);

/** Lessons of each make: with sliders, with drawings and cautions, with both, with cases. */
const SAMPLE = ['charge-and-hours', 'floor-bracket-clamp-bond', 'daisy-chain', 'ten-cases'];
const lessonOf = (page: string): string | undefined => /^\/lessons\/(?!plan\/)([a-z0-9-]+)\/$/.exec(page)?.[1];

/** Whether a page is a lesson. */
export const isLesson = (page: string): boolean => lessonOf(page) !== undefined;

/** Pages for what takes long on each: of the lessons, which one file makes, one of each make. */
export const sampled: readonly string[] = pages.filter((page) => {
	const lesson = lessonOf(page);
	return lesson === undefined || SAMPLE.includes(lesson);
});

/** The markup of a page of the built site, by its address. */
export const markupOf = (page: string): string =>
	readFileSync(path.join(built, page.endsWith('/') ? `${page}index.html` : page), 'utf8');
