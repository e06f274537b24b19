import type { Paper } from '../../../../shared/paper/index.ts';
import type { PaperSetter } from './types.ts';

/** Papers kept at once. */
const MOST = 32;

/** A setter that sets each paper once, for as long as the last few papers: a class hands in one paper many times. */
export function settingOnce(set: PaperSetter): PaperSetter {
	const papers = new Map<string, Paper | Promise<Paper>>();
	return (recipe, seed) => {
		const key = JSON.stringify([recipe, seed]);
		const known = papers.get(key) ?? set(recipe, seed);
		// what failed may do the next time: a part that was not to be fetched, say
		if (known instanceof Promise) known.catch(() => papers.delete(key));
		papers.delete(key);
		papers.set(key, known);
		if (papers.size > MOST) for (const oldest of [...papers.keys()].slice(0, 1)) papers.delete(oldest);
		return known;
	};
}
