import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { nextWords as words } from '#words/site/index.ts';
import { DEVICE, KEPT, keysIn, mayHoldRecords } from '../../storage/index.ts';
import { deckShelf } from '../deck/index.ts';
import { openProgress } from '../progress/index.ts';
import { RigTonight } from '../rig-sheet/index.ts';
import { StartRig } from './StartRig.tsx';
import { type NextProps, type NextRow, nextRows } from './view.ts';

/** Rows on the home page: what stands on a phone beside tonight's rig. */
const AT_HOME = 2;

/** What to do next, for who comes back. */
export default function Next({ course, place }: NextProps): JSX.Element {
	const [rows, set] = useState<readonly NextRow[] | null>(null);
	const [hasRig, tellRig] = useState<boolean | null>(null);
	const [results, count] = useState(0);
	const isHome = place === 'home';
	useEffect(() => {
		void Promise.all([openProgress(DEVICE), deckShelf.open(DEVICE)]).then(([{ progress }, { kept: deck }]) =>
			set(nextRows(course, progress, deck, Date.now())),
		);
		if (!isHome) return;
		tellRig(keysIn(DEVICE).some((key) => key.startsWith(KEPT.rigs.key)));
		// what reads a trainer's records comes for who may have some
		void mayHoldRecords().then(async (may) => {
			if (may) count(await (await import('./results.ts')).resultsKept());
		});
	}, []);
	const shown = isHome ? rows?.slice(0, AT_HOME) : rows;
	return (
		<div class="next-up" data-ready={rows !== null}>
			{isHome && (
				<div class="next-first">
					{hasRig === null ? null : hasRig ? <RigTonight none={<StartRig />} /> : <StartRig />}
				</div>
			)}
			{shown && shown.length > 0 && (
				<section aria-labelledby="next-up">
					<h2 id="next-up">{words.heading}</h2>
					<ul class="rows">
						{shown.map((row) => (
							<Row key={row.is} {...row} />
						))}
						{results > 0 && <Row href="/papers/" name={words.resultsName} why={words.results(results)} />}
					</ul>
				</section>
			)}
		</div>
	);
}

const Row = ({ href, name, why }: Pick<NextRow, 'href' | 'name' | 'why'>): JSX.Element => (
	<li>
		<a href={href}>{name}</a>
		<p>{why}</p>
	</li>
);
