import { cautionIds, cautions } from '#words/cautions/index.ts';
import { terms } from '#words/glossary/index.ts';
import { type ReferencePage, referencePages } from '../../features/reference/index.ts';
import type { SearchDoc } from '../../features/search/index.ts';
import { type LessonText, lessonDocs } from './lessons.ts';

/** Terms of the glossary, by every form. */
const termDocs = (): SearchDoc[] =>
	terms.map(({ id, term, forms = [], says }) => ({
		id: `/glossary/#${id}`,
		kind: 'term',
		title: term,
		also: forms.join(' '),
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
