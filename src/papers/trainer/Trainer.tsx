import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { trainerWords } from '../../../content/papers/index.ts';
import { Notice, Tape } from '../../ui/index.ts';
import { askPapers, troubleText } from '../asking.ts';
import { Build, type Stock } from './Build.tsx';
import { type Draft, readDraft } from './draft.ts';
import { GiveOut } from './GiveOut.tsx';
import { keepDraft, keptDraft } from './keepDraft.ts';
import { Preview } from './Preview.tsx';
import { usePaper } from './usePaper.ts';

const PARTS = Object.entries(trainerWords.parts) as [keyof typeof trainerWords.parts, string][];

/** The trainer's page: set a paper, give it out, gather it in, see what it shows, and what is kept here. */
export default function Trainer(): JSX.Element {
	const [ask] = useState(askPapers);
	const [draft, setDraft] = useState<Draft>(() => keptDraft(() => localStorage));
	const [stock, setStock] = useState<Stock | null>(null);
	const [trouble, tell] = useState('');
	useEffect(() => {
		ask('stock', null).then(setStock, (error: unknown) => tell(troubleText(error)));
	}, []);
	const change = (next: Draft) => {
		setDraft(next);
		keepDraft(() => localStorage, next);
	};
	const read = readDraft(draft);
	const paper = usePaper(ask, read.recipe, draft.seed);
	return (
		<div class="trainer">
			<nav class="trainer-parts" aria-label={trainerWords.partsLabel}>
				<ol>
					{PARTS.map(([id, name]) => (
						<li key={id}>
							<a href={`#${id}`}>{name}</a>
						</li>
					))}
				</ol>
			</nav>
			{trouble !== '' && (
				<Notice kind="wrong">
					<p role="alert">{trouble}</p>
				</Notice>
			)}
			<section class="trainer-part" aria-labelledby="build">
				<Tape level={2} id="build">
					{trainerWords.parts.build}
				</Tape>
				<div class="trainer-build">
					{stock && <Build ask={ask} draft={draft} read={read} stock={stock} offer={paper.offer} onChange={change} />}
					<Preview
						ask={ask}
						opened={paper.opened}
						trouble={paper.trouble}
						onAnother={() => change({ ...draft, seed: draft.seed + 1 })}
					/>
				</div>
			</section>
			<section class="trainer-part" aria-labelledby="give">
				<Tape level={2} id="give">
					{trainerWords.parts.give}
				</Tape>
				<GiveOut ask={ask} opened={paper.opened} onGiven={() => {}} />
			</section>
		</div>
	);
}
