/**
 * The reference: tables worked out from the model when the site is built, so that they cannot differ from what the bench does.
 * Sections are plain data (headings, sentences, tables of words), which the pages show and the search reads. Ways through a panel
 * are found by pressing keys on the fixture's own machine. No script goes with the pages.
 */
export { foldedTables } from './fold.ts';
export { referencePages } from './pages.ts';
export type { ReferencePage, ReferenceSection, ReferenceTable } from './types.ts';
