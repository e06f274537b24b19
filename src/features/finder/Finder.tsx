import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { checkWords, finderWords, handOnWords, verdictWords } from '#words/finder/index.ts';
import { openEngine } from '../../engine/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Button, Live, Notice } from '../../ui/index.ts';
import { Note, noteText } from './Note.tsx';
import { PickComplaint, PickFixture } from './Pick.tsx';
import { Start } from './Start.tsx';
import type { FinderScene } from './scene.ts';
import { finderStore, useScene } from './store.ts';
import { takeLink } from './takeLink.ts';
import { toBegin } from './toBegin.ts';
import { titleOf } from './verdict.ts';
import { WalkScreen } from './WalkScreen.tsx';
import { Working } from './Working.tsx';

const makeStore = () =>
	finderStore({
		ask: openEngine().ask,
		storage: DEVICE,
		clock: () => Date.now(),
	});

/** The finder: from what is wrong to the cause, one check a screen. */
export function Finder(): JSX.Element {
	const [store] = useState(makeStore);
	const scene = useScene(store);
	const top = useRef<HTMLDivElement>(null);
	const { phase, turn, trouble, untaken, note } = scene;
	useEffect(() => {
		const take = () => {
			if (location.hash.startsWith('#walk=')) void takeLink(store, location.hash);
		};
		store.open().then(take);
		window.addEventListener('hashchange', take);
		return () => window.removeEventListener('hashchange', take);
	}, [store]);
	useEffect(() => {
		// the first screen stays where the page put it
		if (turn <= 1) return;
		// on a walk the glass belongs to the check: what it is all about is one swipe up
		const from = top.current?.querySelector('[data-top]') ?? top.current;
		from?.scrollIntoView({ block: 'start' });
		top.current?.querySelector<HTMLElement>('[data-begin]')?.focus({ preventScroll: true });
	}, [turn]);
	return (
		<div class="finder" ref={top} tabIndex={-1} data-phase={phase} data-turn={turn} data-busy={scene.stage !== null}>
			{trouble !== null && (
				<Notice kind="wrong">
					<p>{trouble}</p>
					{untaken !== null && (
						<Button data-way="try-link" onClick={() => takeLink(store, untaken)}>
							{handOnWords.again}
						</Button>
					)}
					<Button
						look="quiet"
						data-way="told"
						onClick={({ currentTarget }) => {
							toBegin(currentTarget);
							store.say(null);
						}}
					>
						{finderWords.dismiss}
					</Button>
				</Notice>
			)}
			{!scene.kept && (
				<Notice>
					<p>{scene.full ? finderWords.troubles.noRoom : finderWords.troubles.notKept}</p>
				</Notice>
			)}
			{phase !== 'walk' && <Note store={store} note={note} />}
			{phase === 'opening' && <Working stage={scene.stage} />}
			{phase === 'rig' && <Start store={store} scene={scene} />}
			{phase === 'fixture' && <PickFixture store={store} scene={scene} />}
			{phase === 'complaint' && <PickComplaint store={store} scene={scene} />}
			{phase === 'walk' && <WalkScreen store={store} scene={scene} />}
			<Live text={toldOf(scene)} turn={turn} />
			<Live text={trouble ?? ''} turn={scene.troubleTold} urgent />
			<Live text={noteText(note)} turn={scene.noteTold} urgent />
		</div>
	);
}

/** What a screen reader is told when a new screen has come. */
function toldOf({ view, turn }: FinderScene): string {
	if (turn <= 1 || !view) return '';
	if (view.check) return checkWords.next(view.check.title, view.check.does);
	return view.verdict ? verdictWords.said(titleOf(view.verdict)) : '';
}
