import { useEffect, useState } from 'preact/hooks';
import { useUnderWay } from '../../site/updates/index.ts';
import { dropText, followKept } from '../../storage/index.ts';
import { asideCount, holdsPlace, holdsRig, isKept, keep, type RigStore } from '../rig/index.ts';
import { type BenchOpening, type DeviceStore, firstBench, type OpeningHelp, plainly } from './opened.ts';

/** Milliseconds between a change and its keeping. */
const KEEP_AFTER_MS = 800;

/** What became of the last keeping. */
export type BenchKeepOutcome = ReturnType<typeof keep>;

/** What was done to a bench, to compare: its sheet, and its log but for the clock that ran on since. */
function doneTo({ rig: { sheet, log } }: RigStore): readonly unknown[] {
	const count = log.length - (log.at(-1)?.type === 'clock.wait' ? 1 : 0);
	return [sheet, count, log[count - 1]];
}

const same = (a: readonly unknown[], b: readonly unknown[]): boolean => a.every((each, i) => each === b[i]);

/**
 * Keeps the bench on the device a moment after each change, and when the page is left. One that nobody touched is not written:
 * another tab's work may stand there by then.
 */
export function useKeeping(opening: BenchOpening, storage: DeviceStore): BenchKeepOutcome {
	const { store, place, keepAtOnce, isTheirs, before, by, backFrom } = opening;
	const [kept, set] = useState<BenchKeepOutcome>('kept');
	const [touched, touch] = useState(false);
	// kept as it is done: behind other tabs it holds no new version back
	useUnderWay(touched, true);
	useEffect(() => {
		let timer = 0;
		let isFirst = true;
		const asOpened = doneTo(store);
		let saved = asOpened;
		const save = () => {
			window.clearTimeout(timer);
			timer = 0;
			store.upToNow();
			const now = doneTo(store);
			const why = isFirst && before !== null ? by : isFirst && backFrom !== null ? 'back' : 'tab';
			const came = keep(storage, store.rig, place, {
				isTheirs: isTheirs && same(now, asOpened),
				why,
				now: Date.now(),
			});
			if ((came === 'kept' || came === 'aside') && backFrom !== null) dropText(storage, backFrom);
			// what makes room for a link, a file, or one brought back, is said there
			if (came !== 'aside' || why === 'tab') set(came);
			isFirst = false;
			saved = now;
		};
		const isDone = () => same(saved, doneTo(store));
		if (keepAtOnce) save();
		const stop = store.subscribe(() => {
			if (!isDone()) touch(true);
			if (timer === 0 && !isDone()) timer = window.setTimeout(save, KEEP_AFTER_MS);
		});
		// the clock alone is kept where this bench stands in the place already
		const leave = () => {
			if (!isDone() || holdsPlace(storage, place)) save();
		};
		const hide = () => {
			if (document.hidden) leave();
		};
		document.addEventListener('visibilitychange', hide);
		window.addEventListener('pagehide', leave);
		return () => {
			stop();
			leave();
			window.clearTimeout(timer);
			document.removeEventListener('visibilitychange', hide);
			window.removeEventListener('pagehide', leave);
		};
	}, [opening]);
	return kept;
}

/** How many benches are set aside, followed over every tab. @param turn another value has it look again */
export function useAsideCount(storage: DeviceStore, turn: unknown): number {
	const [count, set] = useState(() => asideCount(storage));
	useEffect(() => {
		const look = () => set(asideCount(storage));
		look();
		return followKept(look);
	}, [turn]);
	return count;
}

/**
 * Opens the bench that a link holds, else the one kept on the device, else a ready-made one. What reads the first two is fetched
 * only where there is something to read.
 */
export async function openBench(fragment: string, ways: OpeningHelp): Promise<BenchOpening> {
	if (!holdsRig(fragment) && !isKept(ways.storage)) return plainly(await firstBench());
	const { openKept, openLink } = await import('./reopening.ts');
	return holdsRig(fragment) ? openLink(fragment, ways) : openKept(ways);
}
