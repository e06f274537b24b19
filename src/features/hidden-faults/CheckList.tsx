import type { JSX } from 'preact';
import { useId, useMemo, useState } from 'preact/hooks';
import { needWords, sortWords } from '#words/finder/index.ts';
import { hiddenWords } from '#words/hidden-faults/index.ts';
import type { CheckSort } from '../../../sim/finder/index.ts';
import { Button, Field, Title } from '../../ui/index.ts';
import { Cautions, cautionsFirst, timeText } from '../finder/index.ts';
import { Rows } from './Rows.tsx';
import { type DrillView, type HiddenCheckView, listed } from './view.ts';

interface Props {
	checks: readonly HiddenCheckView[];
	rows: DrillView['rows'];
	busy: boolean;
	onDo: (check: string) => void;
}

/** Up to so many checks, every place stands open. */
const FEW = 14;
const SORTS = Object.keys(sortWords) as CheckSort[];

/** Every check of the drill, searched by words and sort, by place; one chosen shows what it takes and what to mind. */
export function CheckList({ checks, rows, busy, onDo }: Props): JSX.Element {
	const [sort, setSort] = useState<CheckSort | null>('look');
	const [search, setSearch] = useState('');
	const [chosen, choose] = useState<string | null>(null);
	const [at, pick] = useState<string | null>(null);
	// all there is to do at a place: of many a place there is nothing to look at
	const pickPlace = (place: string | null) => {
		pick(place);
		if (place !== null) setSort(null);
	};
	const places = useMemo(() => listed(checks, sort, search, at), [checks, sort, search, at]);
	const count = places.reduce((sum, place) => sum + place.checks.length, 0);
	const isOpen = count <= FEW || places.length === 1;
	return (
		<section class="hidden-checks">
			<Title level={3}>{hiddenWords.checks}</Title>
			<Rows rows={rows} at={at} onPick={pickPlace} />
			<fieldset class="hidden-sorts">
				<legend class="visually-hidden">{hiddenWords.sorts}</legend>
				{[...SORTS, null].map((each) => (
					<button
						key={each ?? 'all'}
						type="button"
						class="hidden-sort"
						data-sort={each ?? 'all'}
						aria-pressed={each === sort}
						onClick={() => setSort(each)}
					>
						{each === null ? hiddenWords.all : sortWords[each]}
					</button>
				))}
			</fieldset>
			<Field
				label={hiddenWords.search}
				type="search"
				value={search}
				onInput={({ currentTarget }) => setSearch(currentTarget.value)}
			/>
			<p role="status" class="hidden-count">
				{count > 0
					? hiddenWords.shown(count)
					: at !== null && search === ''
						? hiddenWords.noneThere
						: hiddenWords.noneFound}
			</p>
			{places.map(({ place, checks: there }) => (
				<details key={`${place} ${isOpen}`} class="hidden-fold" open={isOpen}>
					<summary>
						{place} <span class="value">{there.length}</span>
					</summary>
					<ul class="hidden-place">
						{there.map((check) => (
							<One
								key={check.id}
								check={check}
								open={check.id === chosen}
								busy={busy}
								onChoose={() => choose(check.id === chosen ? null : check.id)}
								onDo={() => onDo(check.id)}
							/>
						))}
					</ul>
				</details>
			))}
		</section>
	);
}

interface OneProps {
	check: HiddenCheckView;
	open: boolean;
	busy: boolean;
	onChoose: () => void;
	onDo: () => void;
}

function One({ check, open, busy, onChoose, onDo }: OneProps): JSX.Element {
	const body = useId();
	const isFirst = cautionsFirst(check.cautions);
	return (
		<li data-check={check.id}>
			<button type="button" class="hidden-check" aria-expanded={open} aria-controls={body} onClick={onChoose}>
				<span>{check.title}</span>
				<span class="value">{timeText(check.seconds)}</span>
			</button>
			<div id={body} class="hidden-body" hidden={!open}>
				{open && (
					<>
						{isFirst && <Cautions ids={check.cautions} />}
						<p>{check.does}</p>
						<p class="hidden-costs">
							{hiddenWords.standing(timeText(check.seconds))}.{' '}
							{check.needs.length > 0 && `${hiddenWords.needs(check.needs.map((need) => needWords[need]).join(', '))}.`}
						</p>
						{!isFirst && <Cautions ids={check.cautions} />}
						<Button look="main" disabled={busy} data-way="do" onClick={onDo}>
							{busy ? hiddenWords.doing : hiddenWords.doIt}
						</Button>
					</>
				)}
			</div>
		</li>
	);
}
