import { checkWords as words } from '#words/plan/index.ts';
import { type FoundOff, type Plan, profileOf } from '../../../shared/plan/index.ts';
import { modeTitle, threeDigits } from './view.ts';

/** What a light that differs from the patch shows, and does at the desk, in sentences. */
export function foundText(plan: Plan, { row, shows, from, to, runsOut, own, movedBy }: FoundOff): string[] {
	const profile = profileOf(plan, row.profile);
	const pair = (it: { mode: string; address: number }): string =>
		words.pair(modeTitle(profile, it.mode), threeDigits(it.address));
	const names = movedBy.map((id) => plan.rows.find((each) => each.id === id)?.name ?? id);
	return [
		words.it(pair(shows), pair(row)),
		words.hears(row.universe, from, to),
		...(runsOut ? [words.runsOut] : []),
		words.own[own],
		names.length > 0 ? words.movedBy(names) : words.alone,
	];
}
