import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';

/** The lessons, as they stand in `content/lessons`. What their front matter must be is held by `src/lessons`, which reads it. */
export const collections = {
	lessons: defineCollection({ loader: glob({ base: './content/lessons', pattern: '*.mdx' }) }),
};
