import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { bundledWords, quickWords, startWords } from '#words/finder/index.ts';
import type { QuickLink } from '../../../shared/sheet/index.ts';
import { DEVICE, isKept } from '../../storage/index.ts';
import { Button, Title } from '../../ui/index.ts';
import type { OwnFixture } from '../stock/index.ts';
import { Choices } from './Choices.tsx';
import { Counts } from './Counts.tsx';
import { OwnSheet } from './OwnSheet.tsx';
import { PanelPicture } from './PanelPicture.tsx';
import type { FinderScene } from './scene.ts';
import type { FinderStore } from './store.ts';
import { Working } from './Working.tsx';

const COUNTS = Array.from({ length: 24 }, (_, i) => i + 1);
type PanelOf = keyof typeof quickWords.panels;

/** Three taps in place of a sheet, a rig with names, or a sheet of one's own. */
export function Start({ store, scene }: { store: FinderStore; scene: FinderScene }): JSX.Element {
	const [count, setCount] = useState<number | null>(null);
	const [linked, setLinked] = useState<QuickLink | null>(null);
	const [own, setOwn] = useState<readonly OwnFixture[]>([]);
	useEffect(() => {
		// most devices have none, and need not fetch what reads them; there before they are asked for, so that no tap meets another
		if (isKept(DEVICE, 'stock'))
			import('../stock/index.ts').then((stock) => stock.ownFixtures()).then(setOwn, () => undefined);
	}, []);
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
			<Panels store={store} own={own} rest={{ count, linked }} />
			{back}
		</section>
	);
}

interface PanelsProps {
	store: FinderStore;
	own: readonly OwnFixture[];
	rest: { readonly count: number; readonly linked: QuickLink };
}

/** The crew's own fixtures, and then the house's by their panels. */
function Panels({ store, own, rest }: PanelsProps): JSX.Element {
	const panels = (Object.keys(quickWords.panels) as PanelOf[]).map((id) => ({
		id,
		...quickWords.panels[id],
		picture: <PanelPicture profile={id} />,
	}));
	const choose = async (id: string) => {
		const made = await own.find((fixture) => fixture.id === id)?.profile();
		if (!made) store.choose({ kind: 'quick', ...rest, profile: id });
		else if ('wrong' in made) store.say(made.wrong);
		else store.choose({ kind: 'quick', ...rest, profile: made.profile.id, own: made.profile });
	};
	return (
		<Choices choices={[...own.map(({ id, name, about: more }) => ({ id, name, more })), ...panels]} onChoose={choose} />
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
