import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { locale } from '#words/locale/index.ts';

/** The lessons, in the language the site is built in. What their front matter must be is held by `src/features/lessons`, which reads it. */
export const collections = {
	lessons: defineCollection({ loader: glob({ base: `./content/${locale.folder}/lessons`, pattern: '*.mdx' }) }),
};
