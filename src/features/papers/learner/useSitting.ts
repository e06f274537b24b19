import { useEffect, useRef, useState } from 'preact/hooks';
import { type Ask, Refused } from '../../../engine/index.ts';
import {
	DEVICE,
	dropText,
	type Hold,
	isNewer,
	KEPT,
	moveAside,
	putInPlace,
	putText,
	type Store,
	takeHold,
	textAt,
} from '../../../storage/index.ts';
import { troubleText } from '../asking.ts';
import type { PaperView } from '../view.ts';
import type { Sitting } from './sitting.ts';

/** Where this tab stands with a paper. */
export type Hand =
	| { readonly is: 'asking' }
	/** Another tab has it; `lost` where it was taken from this one. */
	| { readonly is: 'elsewhere'; readonly lost: boolean }
	/** What was kept could not be read for now: it is as it was. */
	| { readonly is: 'failed'; readonly sentence: string }
	| { readonly is: 'held' };

/** From how a sitting stands to how it is to stand; null is none. */
export type Change = (sitting: Sitting | null) => Sitting | null;

export interface SittingHand {
	readonly hand: Hand;
	/** Null before it is begun. */
	readonly sitting: Sitting | null;
	/** Whether it was there already when the page opened. */
	readonly resumed: boolean;
	/** What was kept was damaged and set aside, or a newer version of the site wrote it. */
	readonly trouble: 'damaged' | 'newer' | null;
	/** Other than `kept` once the device would not keep it. */
	readonly came: ReturnType<typeof keepSitting>;
	/** Changes it as it stands by then: two changes at once do not undo each other. */
	change(how: Change): void;
	takeOver(): void;
}

/** A paper's sitting on this device, held by one tab at a time and kept at every change. */
export function useSitting(paper: PaperView, ask: Ask): SittingHand {
	const [hand, setHand] = useState<Hand>({ is: 'asking' });
	const [sitting, set] = useState<Sitting | null>(null);
	const [resumed, resume] = useState(false);
	const [trouble, tell] = useState<SittingHand['trouble']>(null);
	const [came, setCame] = useState<SittingHand['came']>('kept');
	const [turn, again] = useState(0);
	const mayWrite = useRef(false);
	const latest = useRef<Sitting | null>(null);
	useEffect(() => {
		let hold: Hold | null = null;
		let gone = false;
		const lost = () => {
			mayWrite.current = false;
			if (!gone) setHand({ is: 'elsewhere', lost: true });
		};
		const open = async () => {
			hold = await takeHold(keyOf(paper.mark), turn > 0, lost);
			if (gone) return hold?.letGo();
			if (!hold) return setHand({ is: 'elsewhere', lost: false });
			const found = sittingText(DEVICE, paper.mark);
			let kept: Sitting | null = null;
			if (found?.isNewer) tell('newer');
			else if (found) {
				try {
					kept = await ask('papers.sitting', { text: found.text });
				} catch (error) {
					// with no worker to read it nothing is known of it
					if (!(error instanceof Refused)) {
						if (!gone) setHand({ is: 'failed', sentence: troubleText(error) });
						return;
					}
					setSittingAside(DEVICE, paper.mark, found.text);
					tell('damaged');
				}
			}
			if (gone) return;
			mayWrite.current = true;
			latest.current = kept;
			set(kept);
			resume(kept !== null);
			setHand({ is: 'held' });
		};
		void open();
		return () => {
			gone = true;
			mayWrite.current = false;
			hold?.letGo();
		};
	}, [paper.mark, turn]);
	return {
		hand,
		sitting,
		resumed,
		trouble,
		came,
		change(how) {
			if (!mayWrite.current) return;
			const next = how(latest.current);
			latest.current = next;
			set(next);
			if (next) setCame(keepSitting(DEVICE, next));
			else forgetSitting(DEVICE, paper.mark);
		},
		takeOver: () => again(turn + 1),
	};
}

const { sitting: kept, lastPaper: last } = KEPT;

/** The key of a paper's sitting. @param paper its digest */
export const keyOf = (paper: string): string => kept.key + paper;

/** What is kept of a paper's sitting: its text; null where there is none, or the device refuses; `newer` where it is not for this version. */
export function sittingText(store: Store, paper: string): { readonly text: string; readonly isNewer: boolean } | null {
	const text = textAt(store, keyOf(paper));
	return text === null ? null : { text, isNewer: isNewer(text, kept) };
}

/** Keeps it. */
export const keepSitting = (store: Store, sitting: Sitting): ReturnType<typeof putInPlace> =>
	putInPlace(store, kept, JSON.stringify(sitting), { name: sitting.paper });

/** Deletes it: gone from the device. */
export const forgetSitting = (store: Store, paper: string): boolean => dropText(store, keyOf(paper));

/** Moves what could not be read out of the way, so that it neither stops the paper nor is lost. */
export const setSittingAside = (store: Store, paper: string, text: string): boolean =>
	moveAside(store, { place: keyOf(paper), text, why: 'damaged', now: Date.now() });

/** Keeps the fragment of the paper begun last, so that it is found again when its link is not at hand; null takes it away. */
export function keepLast(store: Store, fragment: string | null): void {
	if (fragment === null) dropText(store, last.key);
	else putText(store, last.key, fragment);
}

/** The fragment of the paper begun last; null where there is none. What it holds is read as any link is. */
export function lastPaper(store: Store): string | null {
	const text = textAt(store, last.key);
	return text?.startsWith('#paper=') ? text : null;
}
