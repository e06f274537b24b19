import type { JSX, RefObject } from 'preact';
import { searchPage as words } from '#words/search/index.ts';
import type { SearchHit } from './find.ts';

interface ResultsProps {
	list: RefObject<HTMLOListElement>;
	found: readonly SearchHit[];
}

/** What is found, each a link to its place. */
export function Results({ list, found }: ResultsProps): JSX.Element {
	return (
		<ol class="search-results" ref={list}>
			{found.map(({ href, kind, title, excerpt }) => (
				<li key={href}>
					<a href={href}>{title}</a>
					<span class="search-kind">{words.kinds[kind]}</span>
					<p>{excerpt}</p>
				</li>
			))}
		</ol>
	);
}
