import { getCollection, render } from 'astro:content';
import type { APIRoute } from 'astro';
import { readLesson } from '../features/lessons/index.ts';
import { indexText } from '../features/search/index.ts';
import { searchDocs } from '../site/indexing/index.ts';

/** What can be searched, made when the site is built and kept by the service worker with the rest of it. */
export const GET: APIRoute = async () => {
	const lessons = await Promise.all(
		(await getCollection('lessons')).map(async (entry) => {
			const { id, title, outcome } = readLesson(entry.data, entry.id);
			const { headings } = await render(entry);
			return { id, title, outcome, body: entry.body ?? '', headings };
		}),
	);
	return new Response(indexText(searchDocs(lessons)), { headers: { 'Content-Type': 'application/json' } });
};
