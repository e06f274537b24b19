import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { PaperRecipeInput } from '../../../../shared/paper/index.ts';
import type { AskRoute } from '../../../engine/index.ts';
import { mayHoldRecords } from '../../../storage/index.ts';
import { troubleText } from '../asking.ts';
import type { Offer, OpenedPaper } from '../protocol.ts';
import { type ClassView, type HoldView, summaryOf } from './views.ts';

export interface KeptHand {
	/** Null until it is known. */
	readonly hold: HoldView | null;
	/** The paper whose results are shown; null where none has any, or is picked. */
	readonly picked: string | null;
	readonly shown: ClassView | null;
	readonly trouble: string;
	/** Looks again, and shows this paper if it is named. */
	look(mark?: string | null): Promise<void>;
}

/** Before anything was ever kept. */
const NOTHING: HoldView = { keeps: true, asides: summaryOf([]), papers: [], results: 0, unset: summaryOf([]) };

/** What is kept on this device, and the class table of one paper of it; looked at again whenever something was changed. */
export function useKept(ask: AskRoute): KeptHand {
	const [hold, setHold] = useState<HoldView | null>(null);
	const [picked, pick] = useState<string | null>(null);
	const [shown, show] = useState<ClassView | null>(null);
	const [trouble, tell] = useState('');
	const look = useCallback(
		async (mark: string | null = null) => {
			try {
				const found = await ask('papers.hold', null);
				setHold(found);
				pick((before) => {
					const wanted = mark ?? before;
					const there = found.papers.find((each) => each.mark === wanted);
					return (there ?? found.papers.find(({ results }) => results > 0))?.mark ?? null;
				});
				tell('');
			} catch (error) {
				tell(troubleText(error));
			}
		},
		[ask],
	);
	useEffect(() => {
		mayHoldRecords().then((may) => (may ? look() : setHold((before) => before ?? NOTHING)));
	}, [look]);
	useEffect(() => {
		if (picked === null) return show(null);
		let gone = false;
		ask('papers.classOf', { mark: picked }).then(
			(found) => {
				if (!gone) show(found);
			},
			(error: unknown) => tell(troubleText(error)),
		);
		return () => {
			gone = true;
		};
		// what is held may have changed under the same mark
	}, [picked, hold]);
	return { hold, picked, shown, trouble, look };
}

/** Milliseconds after the last change before the paper is set: nobody waits for each letter of a title. */
const AFTER_MS = 250;

/**
 * The paper of a recipe, set a moment after it last changed; the one before stays until then.
 * @param started false while nobody has asked for a paper: nothing is fetched then
 */
export function usePaper(
	ask: AskRoute,
	recipe: PaperRecipeInput | null,
	seed: number,
	started: boolean,
): { opened: OpenedPaper | null; offer: Offer | null; trouble: string } {
	const [opened, open] = useState<OpenedPaper | null>(null);
	const [offer, setOffer] = useState<Offer | null>(null);
	const [trouble, tell] = useState('');
	const asked = useRef(0);
	const text = JSON.stringify([recipe, seed]);
	useEffect(() => {
		const mine = ++asked.current;
		if (!started) return;
		if (!recipe) {
			open(null);
			return;
		}
		const set = async () => {
			try {
				const can = await ask('papers.offer', { recipe });
				if (mine === asked.current) setOffer(can);
				const found = await ask('papers.set', { recipe, seed });
				if (mine !== asked.current) return;
				open(found);
				tell('');
			} catch (error) {
				if (mine !== asked.current) return;
				open(null);
				tell(troubleText(error));
			}
		};
		const timer = window.setTimeout(set, opened ? AFTER_MS : 0);
		return () => window.clearTimeout(timer);
	}, [text, started]);
	return { opened, offer, trouble: recipe ? trouble : '' };
}
