import { idOf } from './layout.ts';
import type { RigOutcomes } from './table.ts';
import { isRepair, repairAtText, triedBy } from './tried.ts';
import type { Hinge, Suspect, Verdict } from './types.ts';

/** Seconds: more than any check takes. */
const LAST = 10_000;

/** Where a walk stands, as far as a hinge hangs on it. */
export interface HingeGround {
	readonly table: RigOutcomes;
	/** By candidate, what a check (by its number) would show now. */
	predictions(check: number): readonly (string | null)[];
	/** Whether a check may still be done. */
	isOpen(check: number): boolean;
	/** Seconds to go there and do it. */
	secondsTo(check: number): number;
}

/**
 * Whether one wrong answer would have led to this verdict although another cause holds. Each answer but one fits such a cause; of several
 * the heaviest is told. Left out are causes that the verdict's own repairs clear, those whose repair was seen to fail, and those that
 * nothing speaks against and are only rarer.
 * @param all suspects, heaviest first
 * @returns null where no such cause is left
 */
export function hingeOf(ground: HingeGround, { suspects }: Verdict, all: readonly Suspect[]): Hinge | null {
	const repairs = new Set(suspects.map(repairsText));
	const failed = new Set(all.flatMap(({ against }) => against.map(({ check }) => check)));
	const suspect = all.find(
		(each) =>
			each.faults.length > 0 &&
			each.against.length === 1 &&
			!repairs.has(repairsText(each)) &&
			// a repair that was made and did not help has ruled its cause out
			!each.repairs.some((repair) => failed.has(triedBy(repair))),
	);
	const [answer] = suspect?.against ?? [];
	return suspect && answer ? { suspect, answer, settle: settleOf(ground, suspects, suspect) } : null;
}

const repairsText = ({ repairs }: Suspect): string => repairs.map(repairAtText).join('+');

/** The check that parts one cause from those of the verdict, whenever they came. */
function settleOf(
	{ table, predictions, isOpen, secondsTo }: HingeGround,
	suspects: readonly Suspect[],
	{ id }: Suspect,
): Hinge['settle'] {
	const named = new Set(suspects.map((each) => each.id));
	let best: (NonNullable<Hinge['settle']> & { readonly cost: number }) | null = null;
	for (const [at, check] of table.checks.entries()) {
		if (isRepair(check) || !isOpen(at)) continue;
		const predicted = predictions(at);
		const shownBy = (wanted: (its: string) => boolean): Set<string | null> =>
			new Set(table.candidates.flatMap((each, n) => (wanted(idOf(each)) ? [predicted[n] ?? null] : [])));
		const [there, ...others] = shownBy((its) => its === id);
		const here = [...shownBy((its) => named.has(its))];
		if (there == null || others.length > 0 || here.includes(there) || here.includes(null)) continue;
		// a look before anything that changes the rig, however quick
		const cost = secondsTo(at) + (check.sort === 'look' && !check.disturbs ? 0 : LAST);
		if (!best || cost < best.cost) best = { check: check.id, here: here as string[], there, cost };
	}
	return best && { check: best.check, here: best.here, there: best.there };
}
