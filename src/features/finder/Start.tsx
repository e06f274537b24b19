import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { bundledWords, partWait, quickWords, startWords } from '#words/finder/index.ts';
import type { QuickLink } from '../../../shared/sheet/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Button, laterWith, Title } from '../../ui/index.ts';
import { mayHoldStock } from '../stock/index.ts';
import { Choices } from './Choices.tsx';
import { Counts } from './Counts.tsx';
import { OwnSheet } from './OwnSheet.tsx';
import { PanelPicture } from './PanelPicture.tsx';
import type { FinderScene } from './scene.ts';
import type { FinderStore } from './store.ts';
import { Working } from './Working.tsx';

const COUNTS = Array.from({ length: 24 }, (_, i) => i + 1);
const OwnChoices = laterWith(partWait, 'coming')(() => import('./OwnChoices.tsx'), true);

type PanelOf = keyof typeof quickWords.panels;

/** Three taps in place of a sheet, a rig with names, or a sheet of one's own. */
export function Start({ store, scene }: { store: FinderStore; scene: FinderScene }): JSX.Element {
	const [count, setCount] = useState<number | null>(null);
	const [linked, setLinked] = useState<QuickLink | null>(null);
	if (scene.stage !== null) return <Working stage={scene.stage} />;
	const back = (
		<Button look="quiet" onClick={() => (linked === null ? setCount(null) : setLinked(null))}>
			{startWords.back}
		</Button>
	);
	if (count === null)
		return (
			<div class="start">
				<section class="start-quick">
					<p class="start-step">{startWords.quick}</p>
					<Question at={1} title={quickWords.count} />
					<ul class="counts">
						{COUNTS.map((n) => (
							<li key={n}>
								<button
									type="button"
									class="count"
									aria-label={quickWords.countOne(n)}
									onClick={() => {
										store.warm();
										setCount(n);
									}}
								>
									{n}
								</button>
							</li>
						))}
					</ul>
				</section>
				<OtherWays store={store} />
				<Counts store={store} learnt={scene.learnt} />
			</div>
		);
	const links = Object.entries(quickWords.links).filter(
		([link]) => count > 1 || link === 'desk' || link === 'alone',
	) as [QuickLink, (typeof quickWords.links)[QuickLink]][];
	if (linked === null)
		return (
			<section class="start-quick">
				<Question at={2} title={quickWords.linked} />
				<Choices
					choices={links.map(([id, words]) => ({ id, ...words }))}
					onChoose={(id) => setLinked(id as QuickLink)}
				/>
				{back}
			</section>
		);
	return (
		<section class="start-quick">
			<Question at={3} title={quickWords.panel} />
			{mayHoldStock(DEVICE) && (
				<OwnChoices
					onChosen={(own) => store.choose({ kind: 'quick', count, linked, profile: own.id, own })}
					onTrouble={(words) => store.say(words)}
				/>
			)}
			<Choices
				choices={(Object.keys(quickWords.panels) as PanelOf[]).map((id) => ({
					id,
					...quickWords.panels[id],
					picture: <PanelPicture profile={id} />,
				}))}
				onChoose={(profile) => store.choose({ kind: 'quick', count, linked, profile })}
			/>
			{back}
		</section>
	);
}

function Question({ at, title }: { at: number; title: string }): JSX.Element {
	return (
		<header class="question">
			<Title level={2}>{title}</Title>
			<span class="question-step">{startWords.step(at, 3)}</span>
		</header>
	);
}

function OtherWays({ store }: { store: FinderStore }): JSX.Element {
	return (
		<section class="start-other">
			<Title level={2}>{startWords.otherWays}</Title>
			<p class="hint">{startWords.otherHint}</p>
			<Choices
				choices={Object.entries(bundledWords).map(([id, words]) => ({ id, ...words }))}
				onChoose={(id) => store.choose({ kind: 'bundled', id })}
				small
			/>
			<OwnSheet store={store} />
		</section>
	);
}
