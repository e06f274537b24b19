import type { Learnt } from '../../../sim/finder/index.ts';
import type { VerdictView } from './view.ts';

/** Share of what a mend may have cleared at which one kind of fault is taken to have been it. */
const LIKELY = 0.5;

/** Kinds of the faults a verdict adds to the count: none before a mend has confirmed it, nor where it may as well have been another. */
export function countable(verdict: VerdictView | null): readonly string[] {
	if (verdict?.because !== 'mended') return [];
	const shares = new Map<string, { readonly faults: readonly string[]; share: number }>();
	for (const { faults, share } of verdict.causes) {
		const kind = faults.join('+');
		const known = shares.get(kind);
		if (known) known.share += share;
		else shares.set(kind, { faults, share });
	}
	return [...shares.values()].find(({ share }) => share >= LIKELY)?.faults ?? [];
}

/** The count with one verdict fewer: it was taken back. */
export function unlearn(learnt: Learnt, faults: readonly string[]): Learnt {
	const next: Record<string, number> = { ...learnt };
	for (const fault of faults) {
		const left = (next[fault] ?? 0) - 1;
		if (left > 0) next[fault] = left;
		else delete next[fault];
	}
	return next;
}

/** Verdicts counted, over all faults. */
export const totalOf = (learnt: Learnt): number => Object.values(learnt).reduce((sum, count) => sum + count, 0);
