import { isInputError } from '../../../../shared/error/index.ts';
import { errorText } from '../../../wording/index.ts';
import { laidOut, type Marked, markTaken, namedBy, type SortedOut } from './sort.ts';
import type { KeptCount, KeptName, PaperMarker, PaperSetter, Taken } from './types.ts';

/**
 * Sorts a pile of results out: each marked from its answers and laid into the table of its paper, told which count, the same
 * attempt taken once, what does not fit flagged, and what belongs to no paper that can be set told by itself.
 * @param set best `settingOnce`, since a class sits one paper
 */
export async function sortResults(
	pile: readonly Taken[],
	{
		set,
		mark,
		names = [],
		counts = [],
	}: { set: PaperSetter; mark: PaperMarker; names?: readonly KeptName[]; counts?: readonly KeptCount[] },
): Promise<SortedOut> {
	const marked: Marked[] = [];
	const unset: SortedOut['unset'][number][] = [];
	const nameOf = namedBy(names);
	for (const taken of pile) {
		try {
			marked.push(await markTaken(taken, set, mark));
		} catch (error) {
			if (!isInputError(error)) throw error;
			unset.push({ taken, name: nameOf(taken), flag: { code: 'not-set', item: '', sentence: errorText(error) } });
		}
	}
	return { ...laidOut(marked, names, counts), unset };
}
