import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { trainerWords } from '#words/papers/index.ts';
import { DEVICE } from '../../../storage/index.ts';
import { Title } from '../../../ui/index.ts';
import { askPapers } from '../asking.ts';
import type { PaperRef, Stock } from '../protocol.ts';
import { Build } from './Build.tsx';
import { changed, draftOf, FIRST_DRAFT, keepDraft, keptDraft, type PaperDraft, readDraft } from './draft.ts';
import { Gather } from './Gather.tsx';
import { GiveOut } from './GiveOut.tsx';
import { Kept } from './Kept.tsx';
import { Learn } from './Learn.tsx';
import { Preview } from './Preview.tsx';
import { useKept, usePaper } from './useKept.ts';

const PARTS = Object.entries(trainerWords.parts) as [keyof typeof trainerWords.parts, string][];

/** The trainer's page: set a paper, give it out, gather it in, see what it shows, and what is kept here. */
export default function Trainer({ stock }: { stock: Stock }): JSX.Element {
	const [ask] = useState(askPapers);
	// what sets the preview may take seconds: results do not wait for it
	const [askClass] = useState(askPapers);
	const [draft, setDraft] = useState<PaperDraft>(() => keptDraft(DEVICE));
	// whoever left a paper here finds it set; a first visit fetches nothing until a paper is asked for
	const [started, start] = useState(draft !== FIRST_DRAFT);
	const change = (next: PaperDraft) => {
		start(true);
		setDraft(next);
		keepDraft(DEVICE, next);
	};
	const read = readDraft(draft);
	const paper = usePaper(ask, read.recipe, draft.seed, started);
	const kept = useKept(askClass);
	const takeUp = ({ recipe, seed }: PaperRef) => {
		change(draftOf(recipe, seed));
		document.getElementById('build')?.scrollIntoView();
		document.querySelector<HTMLInputElement>('.build input')?.focus({ preventScroll: true });
	};
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
			<section class="trainer-part" aria-labelledby="build">
				<Title level={2} id="build">
					{trainerWords.parts.build}
				</Title>
				<div class="trainer-build">
					<Build
						ask={ask}
						draft={draft}
						read={read}
						stock={stock}
						offer={paper.offer ?? stock.offer}
						onChange={change}
					/>
					<Preview
						ask={ask}
						opened={paper.opened}
						trouble={paper.trouble}
						started={started}
						onStart={() => change(draft)}
						onAnother={() => change(changed(draft, { seed: draft.seed + 1 }))}
					/>
				</div>
			</section>
			<section class="trainer-part" aria-labelledby="give">
				<Title level={2} id="give">
					{trainerWords.parts.give}
				</Title>
				<GiveOut
					started={started}
					ask={ask}
					opened={paper.opened}
					onGiven={() => {
						const { opened } = paper;
						if (opened)
							void askClass('papers.keepPaper', { recipe: opened.recipe, seed: opened.seed }).then(() =>
								kept.look(kept.picked),
							);
					}}
				/>
			</section>
			<section class="trainer-part" aria-labelledby="gather">
				<Title level={2} id="gather">
					{trainerWords.parts.gather}
				</Title>
				<Gather ask={askClass} kept={kept} />
			</section>
			<section class="trainer-part" aria-labelledby="learn">
				<Title level={2} id="learn">
					{trainerWords.parts.learn}
				</Title>
				<Learn
					rows={kept.shown?.rows ?? []}
					ask={askClass}
					onChanged={kept.look}
					learn={kept.shown?.learn ?? null}
					onNext={(recipe) => takeUp({ recipe, seed: draft.seed + 1 })}
				/>
			</section>
			<section class="trainer-part" aria-labelledby="keep">
				<Title level={2} id="keep">
					{trainerWords.parts.keep}
				</Title>
				<Kept ask={askClass} kept={kept} onTakeUp={takeUp} />
			</section>
		</div>
	);
}
