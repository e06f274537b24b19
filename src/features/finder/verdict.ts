import { verdictWords } from '#words/finder/index.ts';
import { shareText } from './amounts.ts';
import type { MendView, VerdictView } from './view.ts';
import type { Allows, Spare } from './walk.ts';

/** What stands over a verdict. */
export function titleOf({ because, causes }: VerdictView): string {
	if (because === 'mended') return verdictWords.titleMended;
	if (because === 'unknown') return verdictWords.titleUnknown;
	return causes.length > 1 ? verdictWords.titleFew : verdictWords.title;
}

/** Why the walk ends here, in a sentence. */
export function becauseOf({ because, sure }: VerdictView): string {
	return because === 'sure' ? verdictWords.because.sure(shareText(sure)) : verdictWords.because[because];
}

/** What to do where nothing known fits, one way after the other. */
export function waysOn({ lost }: Pick<VerdictView, 'lost'>): string[] {
	if (!lost) return [];
	const near = lost.near.length > 0 ? [verdictWords.near(lost.near.join(verdictWords.and))] : [];
	return [
		verdictWords.unknownNext,
		...near,
		`${verdictWords.halves} ${verdictWords.halvesCare}`,
		verdictWords.handOver,
	];
}

/** What a mend needs that the gig does not have. */
export function lacking({ needs }: Pick<MendView, 'needs'>, { without }: Allows): Spare[] {
	return without.filter((spare) => needs.includes(spare));
}
