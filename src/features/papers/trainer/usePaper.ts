import { useEffect, useRef, useState } from 'preact/hooks';
import type { PaperRecipeInput } from '../../../../shared/paper/index.ts';
import type { Ask } from '../../../engine/index.ts';
import { troubleText } from '../asking.ts';
import type { Offer, OpenedPaper } from '../protocol.ts';

/** Milliseconds after the last change before the paper is set: nobody waits for each letter of a title. */
const AFTER_MS = 250;

/**
 * The paper of a recipe, set a moment after it last changed; the one before stays until then.
 * @param started false while nobody has asked for a paper: nothing is fetched then
 */
export function usePaper(
	ask: Ask,
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
