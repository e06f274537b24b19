/**
 * What can be searched: every lesson and its sections, every term, section of the reference, fault and caution, each with its place
 * on the site. Gathered when the site is built, from the words and tables the pages themselves show; no page loads it.
 */

import { cautionIds, cautions } from '#words/cautions/index.ts';
import { terms } from '#words/glossary/index.ts';
import { elsewhere } from '#words/reference/index.ts';
import { type ReferencePage, referencePages } from '../../features/reference/index.ts';
import { ALSO, type SearchDoc } from '../../features/search/index.ts';

/** What a term is called on real panels, labels and sheets. */
const metAs = (term: string): readonly string[] =>
	elsewhere.flatMap(({ rows }) => rows.filter((row) => row.term === term).flatMap(({ met }) => met));

/** Terms of the glossary, by every form, and by what they are called elsewhere. */
const termDocs = (): SearchDoc[] =>
	terms.map(({ id, term, forms = [], says }) => ({
		id: `/glossary/#${id}`,
		kind: 'term',
		title: term,
		also: [...forms, ...metAs(id)].join(ALSO),
		text: says,
	}));

/** Cautions, in full. */
const cautionDocs = (): SearchDoc[] =>
	cautionIds.map((id) => {
		const { title, harm, care, defer } = cautions[id];
		return {
			id: `/about/#caution-${id}`,
			kind: 'caution',
			title,
			also: id.replaceAll('-', ' '),
			text: [harm, ...care, defer].join(' '),
		};
	});

/** Sections of the reference, and its single rows where they have a place of their own. Figures of grids are left out. */
function referenceDocs(pages: readonly ReferencePage[]): SearchDoc[] {
	return pages
		.filter(({ id }) => id !== 'cautions')
		.flatMap(({ id: page, heading: pageHeading, sections }) =>
			sections.flatMap(({ id, heading, says, tables }): SearchDoc[] => {
				const rows = tables.filter(({ ids }) => !ids);
				return [
					{
						id: `/reference/${page}/#${id}`,
						kind: 'reference',
						title: heading,
						also: pageHeading,
						text: [
							...says,
							...rows.map(({ caption }) => caption),
							...rows
								.filter(({ look }) => look !== 'grid')
								.flatMap(({ rows: cells }) => cells.map((row) => row.join(' '))),
						].join(' '),
					},
					...tables.flatMap(({ ids = [], rows: cells }) =>
						ids.map(
							(row, i): SearchDoc => ({
								id: `/reference/${page}/#${row}`,
								kind: 'fault',
								title: cells[i]?.[0] ?? row,
								also: heading,
								text: cells[i]?.slice(1, 3).join(' ') ?? '',
							}),
						),
					),
				];
			}),
		);
}

/** Every place that can be found, in the order they rank where nothing else tells them apart. */
export function searchDocs(lessons: readonly LessonText[]): SearchDoc[] {
	return [...termDocs(), ...lessonDocs(lessons), ...referenceDocs(referencePages()), ...cautionDocs()];
}

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
function lessonDocs(lessons: readonly LessonText[]): SearchDoc[] {
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
