import type { Plugin } from 'vite';
import { finderOf } from './find.ts';

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
