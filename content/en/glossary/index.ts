/**
 * The words of the job, each with a plain definition, the standard it comes from, other forms that mean it, and what to read next.
 * Ids are permanent: lessons link to them as `/glossary/#id`, and saved reviews name them. What is linked and how is the site's.
 */

import { locale } from '../locale/index.ts';
import { crew } from './crew.ts';
import { light } from './light.ts';
import { line } from './line.ts';
import { panel } from './panel.ts';
import { power } from './power.ts';
import { site } from './site.ts';
import { slots } from './slots.ts';
import type { Term } from './types.ts';

/** Every term, sorted by its name. */
export const terms: readonly Term[] = [...site, ...power, ...panel, ...slots, ...line, ...light, ...crew].sort((a, b) =>
	locale.compare(a.term, b.term),
);

/** The forms a name may take in a sentence beside those a term lists: the plural. */
export const inflected = (form: string): readonly string[] => [form, `${form}s`];

export { type Term, type TermSource, termSeen, termSources } from './types.ts';
export { glossaryPage } from './words.ts';
