import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { searchPage as words } from '#words/search/index.ts';
import { Field, Notice } from '../../ui/index.ts';
import { find, LONGEST_QUERY, readIndex, type SearchIndex, told } from './find.ts';
import { Results } from './Results.tsx';

/** Where the build leaves the index. */
const INDEX = '/search-index.json';

type Ready = SearchIndex | 'fetching' | 'failed';

/** A box to type in, and what is found. The query stands in the address too, so that a search can be linked and gone back to. */
export function Search(): JSX.Element {
	const [index, setIndex] = useState<Ready>('fetching');
	const [query, setQuery] = useState(() =>
		(new URLSearchParams(location.search).get('q') ?? '').slice(0, LONGEST_QUERY),
	);
	const list = useRef<HTMLOListElement>(null);

	useEffect(() => {
		fetch(INDEX)
			.then((answer) => (answer.ok ? answer.text() : Promise.reject(new Error(answer.statusText))))
			.then((text) => setIndex(readIndex(text)))
			.catch(() => setIndex('failed'));
	}, []);

	const type = (typed: string): void => {
		setQuery(typed);
		history.replaceState(null, '', typed === '' ? location.pathname : `?${new URLSearchParams({ q: typed })}`);
	};

	const search = typeof index === 'object' ? find(index, query) : { found: [], count: 0, isNear: false };
	return (
		// biome-ignore lint/a11y/useSemanticElements: `search` is not known to browsers of 2023
		<form
			class="search"
			role="search"
			onSubmit={(event) => {
				event.preventDefault();
				list.current?.querySelector('a')?.focus();
			}}
		>
			<Field
				label={words.label}
				hint={words.hint}
				type="search"
				name="q"
				maxLength={LONGEST_QUERY}
				autocomplete="off"
				enterkeyhint="search"
				value={query}
				onInput={(event) => type(event.currentTarget.value)}
			/>
			<div role="status">
				{index === 'failed' ? (
					<Notice kind="wrong">{words.failed}</Notice>
				) : (
					<p class="search-count">{index === 'fetching' ? words.loading : told(query, search)}</p>
				)}
			</div>
			<Results list={list} found={search.found} />
		</form>
	);
}
