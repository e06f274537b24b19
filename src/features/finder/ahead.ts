import type { Stand } from './stand.ts';
import type { WalkView } from './view.ts';
import type { Allows, SetWalk, WalkStep } from './walk.ts';

/** What may be answered next, likeliest first: each answer to the check asked, or that the mend to try first did not help. */
function answersTo({ check, verdict }: WalkView): WalkStep[] {
	if (check)
		return check.answers
			.toSorted((a, b) => b.chance - a.chance)
			.map(({ id }) => ({ did: 'answer', check: check.id, outcome: id }));
	const mend = verdict?.because === 'mended' ? undefined : verdict?.mends[0];
	return mend ? [{ did: 'answer', check: mend.check, outcome: 'still' }] : [];
}

/**
 * Works out what comes of each answer while the person is still at the check, one at a time: what a mend that did not help brings
 * in takes longest, and the mend itself takes minutes.
 */
export const aheadOf = (stand: Stand, walk: SetWalk, allows: Allows, view: WalkView): (() => void)[] =>
	answersTo(view).map((step) => () => void stand.at({ steps: [...walk.steps, step] }, allows).next());
