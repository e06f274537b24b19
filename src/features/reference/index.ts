/**
 * The reference: tables worked out from the model when the site is built, so that they cannot differ from what the bench does.
 * Sections are plain data (headings, sentences, tables of words), which the pages show and the search reads. Ways through a panel
 * are found by pressing keys on the fixture's own machine. No script goes with the pages. The
 * table of ways (`wayTable`) is on a printed card of a fixture too.
 */

import { pageWords } from '#words/reference/index.ts';
import { fitSection, nextSection, switchSection, weightSection } from './addresses.ts';
import { elsewhereSections } from './elsewhere.ts';
import { cautionSection, faultSections, faultWeightSection } from './faults.ts';
import { fixtureSections } from './fixtures.ts';
import {
	codeSection,
	levelSection,
	limitSection,
	networkSection,
	percentSection,
	pinSection,
	timingSection,
} from './line.ts';
import type { ReferencePage, ReferenceSection } from './types.ts';

export { profileSection } from './fixtures.ts';
export { foldedTables } from './fold.ts';
export { switchNote, switchTables, wayNote, wayTable } from './panel.ts';
export { Table } from './Table.tsx';
export type { ReferencePage, ReferenceSection, ReferenceTable } from './types.ts';

/** Every page of the reference, in order, worked out when the site is built. */
export function referencePages(): ReferencePage[] {
	const sections: Record<ReferencePage['id'], readonly ReferenceSection[]> = {
		addresses: [nextSection(), fitSection(), weightSection(), switchSection('sum'), switchSection('sum-plus-one')],
		levels: [percentSection(), levelSection()],
		line: [pinSection(), limitSection(), timingSection(), codeSection(), networkSection()],
		fixtures: fixtureSections(),
		faults: [...faultSections(), faultWeightSection()],
		elsewhere: elsewhereSections(),
		cautions: [cautionSection()],
	};
	return (Object.keys(sections) as ReferencePage['id'][]).map((id) => ({
		id,
		...pageWords[id],
		sections: sections[id],
	}));
}
