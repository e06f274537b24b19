import { useEffect, useRef, useState } from 'preact/hooks';
import { type AskRoute, Refused } from '../../../engine/index.ts';
import { DEVICE, type Hold, takeHold } from '../../../storage/index.ts';
import { troubleText } from '../asking.ts';
import type { PaperView } from '../view.ts';
import { forgetSitting, keepSitting, keyOf, setSittingAside, sittingText } from './keepSitting.ts';
import type { Sitting } from './sitting.ts';

/** Where this tab stands with a paper. */
export type TabHold =
	| { readonly is: 'asking' }
	/** Another tab has it; `lost` where it was taken from this one. */
	| { readonly is: 'elsewhere'; readonly lost: boolean }
	/** What was kept could not be read for now: it is as it was. */
	| { readonly is: 'failed'; readonly sentence: string }
	| { readonly is: 'held' };

/** From how a sitting stands to how it is to stand; null is none. */
export type SittingChange = (sitting: Sitting | null) => Sitting | null;

export interface SittingHand {
	readonly hand: TabHold;
	/** Null before it is begun. */
	readonly sitting: Sitting | null;
	/** Whether it was there already when the page opened. */
	readonly resumed: boolean;
	/** What was kept was damaged and set aside, or a newer version of the site wrote it. */
	readonly trouble: 'damaged' | 'newer' | null;
	/** Other than `kept` once the device would not keep it. */
	readonly came: ReturnType<typeof keepSitting>;
	/** Changes it as it stands by then: two changes at once do not undo each other. */
	change(how: SittingChange): void;
	takeOver(): void;
}

/** A paper's sitting on this device, held by one tab at a time and kept at every change. */
export function useSitting(paper: PaperView, ask: AskRoute): SittingHand {
	const [hand, setHand] = useState<TabHold>({ is: 'asking' });
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
