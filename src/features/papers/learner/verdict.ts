import { sitWords } from '#words/papers/index.ts';
import type { MarkedView } from '../view.ts';

/** An answer's verdict in a few words. Part of it right is said, though it scores nothing. */
export function verdictOf({ answered, right, practical }: MarkedView): string {
	if (right) return sitWords.right;
	if (!answered) return sitWords.skipped;
	return practical && practical.right > 0
		? `${sitWords.wrong}: ${sitWords.partly(practical.right, practical.of)}`
		: sitWords.wrong;
}
