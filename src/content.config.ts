import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';

/** The lessons, as they stand in `content/en/lessons`. What their front matter must be is held by `src/features/lessons`, which reads it. */
export const collections = {
	lessons: defineCollection({ loader: glob({ base: './content/en/lessons', pattern: '*.mdx' }) }),
};
