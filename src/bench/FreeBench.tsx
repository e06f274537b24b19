import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { benchWords } from '../../content/bench/index.ts';
import { holdsRig, keep, type RigStore, useRig } from '../rig/index.ts';
import { Button } from '../ui/index.ts';
import { Bench } from './Bench.tsx';
import { later } from './later.ts';
import type { Opening } from './opened.ts';
import { openBench } from './opening.ts';

const FreeNotices = later(() => import('./FreeNotices.tsx'));
const LayOut = later(() => import('./LayOut.tsx'));
const Share = later(() => import('./Share.tsx'));

const storage = () => localStorage;
/** Milliseconds between a change and its keeping. */
const KEEP_AFTER_MS = 800;

/** The free bench: lay out what you like, break it yourself, share it. It is kept on the device. */
export function FreeBench(): JSX.Element {
	// counted, so that each opening starts with notices of its own
	const [[opening, turn], set] = useState<[Opening | null, number]>([null, 0]);
	useEffect(() => {
		const show = (opened: Opening) => {
			// from here on it lives in the device's store: loading the page again must not throw away what was done since
			if (holdsRig(location.hash)) history.replaceState(null, '', location.pathname + location.search);
			set(([, before]) => [opened, before + 1]);
		};
		openBench(location.hash, storage).then(show);
		const hear = () => {
			if (holdsRig(location.hash)) openBench(location.hash, storage).then(show);
		};
		window.addEventListener('hashchange', hear);
		return () => window.removeEventListener('hashchange', hear);
	}, []);
	if (!opening) return <p class="coming">{benchWords.loading}</p>;
	return <Opened key={turn} opening={opening} />;
}

function Opened({ opening }: { opening: Opening }): JSX.Element {
	const { store } = opening;
	useRig(store);
	const [open, setOpen] = useState<'layOut' | 'share' | null>(null);
	const kept = useKeeping(store, opening.trouble === null);
	const bar = (
		<>
			<div class="bench-ways">
				<Button look="main" onClick={() => setOpen('layOut')}>
					{benchWords.layOut}
				</Button>
				<Button disabled={!store.canUndo} onClick={store.undo}>
					{benchWords.undo}
				</Button>
				<Button onClick={() => setOpen('share')}>{benchWords.share}</Button>
			</div>
			{(opening.trouble || opening.ownAside || !kept) && (
				<FreeNotices opening={opening} kept={kept} storage={storage} />
			)}
			{open === 'layOut' && <LayOut store={store} onClose={() => setOpen(null)} />}
			{open === 'share' && <Share store={store} onClose={() => setOpen(null)} />}
		</>
	);
	return <Bench store={store} bar={bar} />;
}

/**
 * Keeps the bench on the device a moment after each change, and when the page is left. Returns false once the device has refused.
 * @param atOnce false where what stands there is no bench of the person's yet, such as the empty one after a broken link
 */
function useKeeping(store: RigStore, atOnce: boolean): boolean {
	const [kept, set] = useState(true);
	useEffect(() => {
		let timer = 0;
		// the clock alone does not make a bench the person's own
		let touched = atOnce;
		const { sheet } = store.rig;
		const isUntouched = () => store.rig.sheet === sheet && store.rig.log.every(({ type }) => type === 'clock.wait');
		let saved: readonly unknown[] = [];
		const save = () => {
			window.clearTimeout(timer);
			timer = 0;
			if (touched) set(keep(storage, store.rig));
			saved = [store.rig.sheet, store.rig.log.length];
		};
		const stop = store.subscribe(() => {
			touched ||= !isUntouched();
			// while nobody does anything there is only the clock to keep, and leaving the page sees to that
			if (saved[0] === store.rig.sheet && saved[1] === store.rig.log.length) return;
			if (timer === 0) timer = window.setTimeout(save, KEEP_AFTER_MS);
		});
		const leave = () => {
			if (document.hidden) save();
		};
		document.addEventListener('visibilitychange', leave);
		window.addEventListener('pagehide', save);
		return () => {
			stop();
			save();
			document.removeEventListener('visibilitychange', leave);
			window.removeEventListener('pagehide', save);
		};
	}, [store, atOnce]);
	return kept;
}
