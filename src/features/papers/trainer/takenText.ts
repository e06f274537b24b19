import { trainerWords } from '#words/papers/index.ts';
import type { TakenView } from './views.ts';

/** What the paste box holds once it was read: nothing where all was taken in, else what it held, to be mended. */
export function leftInBox(held: string, read: string, taken: TakenView | null): string {
	// typed on meanwhile: that was not read
	return held === read && taken?.refused.count === 0 ? '' : held;
}

/** What became of what was brought in, in a sentence or two. */
export function takenText({ fresh, again, papers, refused }: TakenView): string {
	const parts = [
		...(fresh > 0 ? [trainerWords.took(fresh)] : []),
		...(again > 0 ? [trainerWords.hadAlready(again)] : []),
		...papers.map(trainerWords.tookPaper),
		...(refused.count > 0 ? [trainerWords.notRead(refused.count)] : []),
	];
	return parts.length > 0 ? parts.join(' ') : trainerWords.tookNone;
}
