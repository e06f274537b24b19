import { useEffect, useRef, useState } from 'preact/hooks';
import type { AskPapers } from '../asking.ts';
import type { PaperView } from '../view.ts';
import { type Hold, type Holders, holdSitting } from './hold.ts';
import { forgetSitting, keepSitting, setSittingAside, sittingText } from './keepSitting.ts';
import type { Sitting } from './sitting.ts';

const storage = () => localStorage;

const holders = (): Holders => ({
	locks: navigator.locks,
	channel: typeof BroadcastChannel === 'undefined' ? undefined : (name) => new BroadcastChannel(name),
});

/** Where this tab stands with a paper. */
export type Hand =
	| { readonly is: 'asking' }
	/** Another tab has it; `lost` where it was taken from this one. */
	| { readonly is: 'elsewhere'; readonly lost: boolean }
	| { readonly is: 'held' };

/** From how a sitting stands to how it is to stand; null is none. */
export type Change = (sitting: Sitting | null) => Sitting | null;

export interface SittingHand {
	readonly hand: Hand;
	/** Null before it is begun. */
	readonly sitting: Sitting | null;
	/** Whether it was there already when the page opened. */
	readonly resumed: boolean;
	readonly damaged: boolean;
	/** False once the device has refused to keep it. */
	readonly keeps: boolean;
	/** Changes it as it stands by then: two changes at once do not undo each other. */
	change(how: Change): void;
	takeOver(): void;
}

/** A paper's sitting on this device, held by one tab at a time and kept at every change. */
export function useSitting(paper: PaperView, ask: AskPapers): SittingHand {
	const [hand, setHand] = useState<Hand>({ is: 'asking' });
	const [sitting, set] = useState<Sitting | null>(null);
	const [resumed, resume] = useState(false);
	const [damaged, damage] = useState(false);
	const [keeps, setKeeps] = useState(true);
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
			hold = await holdSitting(`prep-bay.sitting.${paper.mark}`, turn > 0, lost, holders());
			if (gone) return hold?.letGo();
			if (!hold) return setHand({ is: 'elsewhere', lost: false });
			const text = sittingText(storage, paper.mark);
			const kept =
				text === null
					? null
					: await ask('sitting', { text }).catch(() => {
							setSittingAside(storage, paper.mark);
							damage(true);
							return null;
						});
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
		damaged,
		keeps,
		change(how) {
			if (!mayWrite.current) return;
			const next = how(latest.current);
			latest.current = next;
			set(next);
			if (next) setKeeps(keepSitting(storage, next));
			else forgetSitting(storage, paper.mark);
		},
		takeOver: () => again(turn + 1),
	};
}
