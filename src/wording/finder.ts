import { type CheckWords, checks, mendTried, type Spot } from '#words/checks/index.ts';
import { type ComplaintWords, complaints } from '#words/complaints/index.ts';
import { mends } from '#words/repairs/index.ts';
import type { Says } from '#words/rig/index.ts';
import { InputError } from '../../shared/error/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { MendId } from '../../sim/fault/index.ts';
import type { Complaint } from '../../sim/finder/index.ts';
import type { Rig } from '../../sim/rig/index.ts';
import { checkFacts, type PlacedCheck } from './checkFacts.ts';
import { mendText, mendTitle } from './fault.ts';
import { fill, sentence } from './fill.ts';
import { sheetKinds } from './sheetNames.ts';

/** What a check is about, in a few words with no full stop: 'Data lamp: wash 1, house left'. @throws InputError `words.check`. */
export function checkTitle(sheet: RigSheet, meant: Rig, check: PlacedCheck): string {
	const mend = mendOf(check);
	if (mend) return mendTitle(sheet, mend, check.place);
	return checkSays(sheet, meant, check, wordsFor(check).title);
}

/** What to look at or do, in a sentence or more, and how to put it back. @throws InputError `words.check`. */
export function checkDoes(sheet: RigSheet, meant: Rig, check: PlacedCheck): string {
	const mend = mendOf(check);
	if (mend) return fill(mendTried.does, { does: mendText(sheet, mend, check.place) });
	return checkSays(sheet, meant, check, wordsFor(check).does);
}

/**
 * What would be seen, as a button says it, with no full stop: 'Blinking slowly', 'It reads 21'.
 * @param meant the rig as its sheet has it: what is read where all is as meant comes from there
 * @throws InputError `words.check` or `words.outcome`
 */
export function outcomeText(sheet: RigSheet, meant: Rig, check: PlacedCheck, outcome: string): string {
	const outcomes: CheckWords['outcomes'] = mendOf(check) ? mendTried.outcomes : wordsFor(check).outcomes;
	const says = outcomes[outcome];
	if (says === undefined)
		throw new InputError('words.outcome', 'outcome', {
			trouble: 'no-words',
			kind: check.kind,
			outcome,
			known: Object.keys(outcomes),
		});
	return checkSays(sheet, meant, check, says);
}

/** Where to look or to put a hand, for a small picture. @throws InputError `words.check`. */
export function spotOf(check: PlacedCheck): Spot {
	const mend = mendOf(check);
	return (mend ? mends[mend]?.spot : undefined) ?? wordsFor(check).spot;
}

/** A complaint: what is wrong (no full stop), as a question on a button, and a sentence that tells it from its neighbours. */
export function complaintText(
	sheet: RigSheet,
	{ kind, fixture }: Complaint,
): { readonly says: string; readonly asks: string; readonly more: string } {
	const words = complaints[kind] as ComplaintWords;
	return { says: sentence(words.says, { fixture }, sheetKinds(sheet, fixture)), asks: words.asks, more: words.more };
}

/** The mend that a check tries; null where it is none. */
function mendOf({ kind }: PlacedCheck): MendId | null {
	const mend = kind.replace(/^mend-/, '');
	return mend !== kind && mend in mends ? (mend as MendId) : null;
}

function wordsFor({ kind }: PlacedCheck): CheckWords {
	const words = checks[kind];
	if (!words) throw new InputError('words.check', 'check', { trouble: 'no-words', kind });
	return words;
}

function checkSays(sheet: RigSheet, meant: Rig, check: PlacedCheck, says: Says): string {
	return sentence(says, checkFacts(sheet, meant, check), sheetKinds(sheet, check.place));
}
