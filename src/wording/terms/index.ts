/**
 * Words of the glossary, linked where a lesson first uses them. It is done when the site is built, on the lesson's own text, so
 * that lessons carry no links of their own and a page no script for it. What is already a link, a heading, code or a component is
 * left as it is; a term that is an everyday word too is left alone.
 */

import type { Plugin } from 'vite';
import { inflected, type Term, terms } from '#words/glossary/index.ts';

const LESSON = /[\\/]content[\\/][\w-]+[\\/]lessons[\\/][^\\/?]+\.mdx$/;
/** What is left as it stands within a paragraph: links, code, tags. */
const LEFT_ALONE = /(\[[^\]]*\]\([^)]*\)|`[^`]*`|<[^>]+>)/;

/** The text of a lesson's file with each term of the glossary made a link where it first stands in a paragraph. */
export function withLinks(text: string): string {
	const [front = ''] = /^---\n[\s\S]*?\n---\n/.exec(text) ?? [];
	const find = finderOf();
	const linked = (words: string): string => {
		let done = '';
		let at = 0;
		for (const { id, from, to } of find(words)) {
			done += `${words.slice(at, from)}[${words.slice(from, to)}](/glossary/#${id})`;
			at = to;
		}
		return done + words.slice(at);
	};
	const blocks = text.slice(front.length).split(/(\n{2,})/);
	const body = blocks.map((block) =>
		/^\s*[#<]/.test(block)
			? block
			: block
					.split(LEFT_ALONE)
					.map((part, i) => (i % 2 === 0 ? linked(part) : part))
					.join(''),
	);
	return front + body.join('');
}

/** Links the terms of lessons before MDX reads them. */
export function termLinks(): Plugin {
	return {
		name: 'prep-bay-term-links',
		enforce: 'pre',
		transform: (code, id) => (LESSON.test(id) ? { code: withLinks(code), map: null } : null),
	};
}

/** A term used in a text: which, and from where to where. */
export interface TermUse {
	readonly id: string;
	readonly from: number;
	readonly to: number;
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/**
 * Finds terms by their names and forms, whole words, whatever their capitals, in the plural or not: the longest first, so
 * that "start address" is not an "address". Each is found once over all the texts it is asked about.
 */
export function finderOf(all: readonly Term[] = terms): (text: string) => TermUse[] {
	const forms = all
		.filter(({ everyday = false }) => !everyday)
		.flatMap(({ id, term, forms = [] }) => [term, ...forms].map((form) => ({ id, form: form.toLowerCase() })))
		.toSorted((a, b) => b.form.length - a.form.length);
	const ids = new Map(forms.flatMap(({ id, form }) => inflected(form).map((each) => [each, id] as const)));
	const pattern = new RegExp(
		`(?<![\\p{L}\\p{N}-])(?:${forms
			.flatMap(({ form }) => inflected(form).toReversed())
			.map((form) => escaped(form).replaceAll(' ', '\\s+'))
			.join('|')})(?![\\p{L}\\p{N}-])`,
		'giu',
	);
	const used = new Set<string>();
	return (text) =>
		[...text.matchAll(pattern)].flatMap(({ 0: word, index }) => {
			const id = ids.get(word.toLowerCase().replace(/\s+/g, ' '));
			if (id === undefined || used.has(id)) return [];
			used.add(id);
			return { id, from: index, to: index + word.length };
		});
}
