import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { benchWords } from '#words/bench/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Button } from '../../ui/index.ts';
import { holdsRig, type RigStore, useWatched } from '../rig/index.ts';
import { Bench } from './Bench.tsx';
import type { BenchOpening, OpenOther } from './opened.ts';
import { openBench, useAsideCount, useKeeping } from './useKeeping.ts';
import { later } from './view.ts';

const FreeNotices = later(() => import('./FreeNotices.tsx'));
const KeptBenches = later(() => import('./KeptBenches.tsx'));
const LayOut = later(() => import('./LayOut.tsx'));
const PlayingBack = later(() => import('./PlayingBack.tsx'));
const Share = later(() => import('./Share.tsx'));

const storage = DEVICE;
const SOON_MS = 400;

/** The free bench: lay out what you like, break it yourself, share it. It is kept on the device. */
export function FreeBench(): JSX.Element {
	// counted, so that each opening starts with notices of its own
	const [[opening, turn], set] = useState<[BenchOpening | null, number]>([null, 0]);
	const [share, tell] = useState<number | null>(null);
	const going = useRef<AbortController | null>(null);
	const openOther: OpenOther = async (open) => {
		// who asked last is served
		going.current?.abort();
		const mine = new AbortController();
		going.current = mine;
		const { signal } = mine;
		const began = performance.now();
		// what is soon done is not worth a bar
		const onShare = (part: number) => {
			if (going.current === mine && performance.now() - began > SOON_MS) tell(part);
		};
		const opened = await open({ storage, signal, onShare, now: Date.now });
		if (going.current !== mine) return null;
		going.current = null;
		tell(null);
		if (typeof opened === 'string') return opened;
		set(([, before]) => [opened, before + 1]);
		return null;
	};
	useEffect(() => {
		const take = () =>
			openOther(async (ways) => {
				const { hash } = location;
				const opened = await openBench(hash, ways);
				// from here on it lives in the device's store: loading the page again must not throw away what was done since
				if (holdsRig(hash) && location.hash === hash)
					history.replaceState(null, '', location.pathname + location.search);
				return opened;
			});
		take();
		const hear = () => {
			if (holdsRig(location.hash)) take();
		};
		window.addEventListener('hashchange', hear);
		return () => window.removeEventListener('hashchange', hear);
	}, []);
	return (
		<>
			{share !== null && <PlayingBack share={share} onStop={() => going.current?.abort()} />}
			{opening ? (
				<Opened key={turn} opening={opening} openOther={openOther} />
			) : (
				<p class="coming">{benchWords.loading}</p>
			)}
		</>
	);
}

function Opened({ opening, openOther }: { opening: BenchOpening; openOther: OpenOther }): JSX.Element {
	const { store, trouble, before } = opening;
	const [open, setOpen] = useState<'layOut' | 'share' | 'kept' | null>(null);
	const kept = useKeeping(opening, storage);
	const aside = useAsideCount(storage, kept);
	const close = () => setOpen(null);
	const bar = (
		<>
			<div class="bench-ways">
				<Button look="main" onClick={() => setOpen('layOut')}>
					{benchWords.layOut}
				</Button>
				<Undo store={store} />
				<Button onClick={() => setOpen('share')}>{benchWords.share}</Button>
				{aside > 0 && <Button onClick={() => setOpen('kept')}>{benchWords.keptBenches(aside)}</Button>}
			</div>
			{(trouble || before || kept !== 'kept') && <FreeNotices {...{ opening, kept, openOther }} />}
			{open === 'layOut' && <LayOut store={store} onClose={close} />}
			{open === 'share' && <Share store={store} openOther={openOther} onClose={close} />}
			{open === 'kept' && <KeptBenches storage={storage} openOther={openOther} onClose={close} />}
		</>
	);
	return <Bench store={store} bar={bar} />;
}

function Undo({ store }: { store: RigStore }): JSX.Element {
	const [canUndo] = useWatched(store, () => [store.canUndo]);
	return (
		<Button disabled={!canUndo} onClick={store.undo}>
			{benchWords.undo}
		</Button>
	);
}
