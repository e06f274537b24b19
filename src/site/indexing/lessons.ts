import type { SearchDoc } from '../../features/search/index.ts';

/** A lesson as it is searched: its front matter's outcome, and its text in markdown. */
export interface LessonText {
	readonly id: string;
	readonly title: string;
	readonly outcome: readonly string[];
	readonly body: string;
	/** Headings with the ids they have on the page, in order. */
	readonly headings: readonly { readonly depth: number; readonly slug: string; readonly text: string }[];
}

/** Markdown and components of a lesson as plain words. */
function plainText(markdown: string): string {
	return markdown
		.replaceAll(/\{\/\*[\s\S]*?\*\/\}/g, ' ')
		.replaceAll(/<[^>]*>/g, ' ')
		.replaceAll(/!?\[([^\]]*)\]\([^)]*\)/g, '$1')
		.replaceAll(/^#+ .*$/gm, ' ')
		.replaceAll(/^\s*(?:[-*+]|\d+\.)\s+/gm, ' ')
		.replaceAll(/[*_`|]+/g, ' ')
		.replaceAll(/\s+/g, ' ')
		.trim();
}

/** A lesson by its title and outcome, and each of its sections by its heading. */
export function lessonDocs(lessons: readonly LessonText[]): SearchDoc[] {
	return lessons.flatMap(({ id, title, outcome, body, headings }) => {
		const sections = headings.filter(({ depth }) => depth === 2);
		// the text after each heading, in the same order as the headings
		const [before = '', ...texts] = body.split(/^## .*$/m);
		const page = `/lessons/${id}/`;
		return [
			{ id: page, kind: 'lesson' as const, title, also: '', text: `${outcome.join(' ')} ${plainText(before)}`.trim() },
			...sections.flatMap(({ slug, text: heading }, i) =>
				texts[i] === undefined
					? []
					: {
							id: `${page}#${slug}`,
							kind: 'lesson' as const,
							title: `${title}: ${heading}`,
							also: '',
							text: plainText(texts[i]),
						},
			),
		];
	});
}
