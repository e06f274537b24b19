import { unknown } from '#words/faults/index.ts';
import { standInWords, suspectWords } from '#words/finder/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import type { Check, Complaint, Finder, RigOutcomes, Suspect } from '../../../sim/finder/index.ts';
import type { Rig } from '../../../sim/rig/index.ts';
import { checkTitle, faultCause, faultName, outcomeText, placeName } from '../../wording/index.ts';
import type { AnswerView } from './view.ts';

/** What words about a walk are worked out from. */
export interface WalkContext {
	readonly sheet: RigSheet;
	/** The rig as its sheet has it. */
	readonly meant: Rig;
	readonly complaint: Complaint;
	/** Made from three answers: its values are stand-ins. */
	readonly isQuick: boolean;
}

export const groundOf = ({ sheet, meant, complaint }: RigOutcomes, isQuick: boolean): WalkContext => ({
	sheet,
	meant: meant.rig,
	complaint,
	isQuick,
});

const names = new WeakMap<RigSheet, Map<string, string>>();

/** Worked out once a sheet: suspects stand in view at every step. */
export function suspectName({ sheet }: WalkContext, { id, faults }: Suspect): string {
	if (faults.length === 0) return unknown.name;
	const known = names.get(sheet) ?? new Map<string, string>();
	names.set(sheet, known);
	let name = known.get(id);
	if (name === undefined) {
		name = faults
			.map((placed) => suspectWords.at(faultName(sheet, placed), placeName(sheet, placed.place)))
			.join(suspectWords.pair);
		known.set(id, name);
	}
	return name;
}

/** What is wrong, in a sentence or two. */
export function causeOf({ sheet }: WalkContext, { faults }: Suspect): string {
	return faults.length === 0 ? unknown.cause : faults.map((placed) => faultCause(sheet, placed)).join(' ');
}

interface CheckSays {
	readonly title: string;
	seen(outcome: string): string;
}

/** A check's title and what it shows, in words that are filled in once: the same few speak against nearly every suspect. */
export function wordsOnce(ground: WalkContext, finder: Finder): (id: string) => CheckSays {
	const known = new Map<string, CheckSays>();
	return (id) => {
		let says = known.get(id);
		if (!says) {
			const check = finder.check(id);
			const outcomes = new Map<string, string>();
			says = {
				title: check ? checkTitle(ground.sheet, ground.meant, check) : id,
				seen(outcome) {
					const words = outcomes.get(outcome) ?? seenWords(ground, check, outcome);
					outcomes.set(outcome, words);
					return words;
				},
			};
			known.set(id, says);
		}
		return says;
	};
}

/**
 * What would be seen. Where no sheet says what is meant, the value that a rig of three answers only stands in for is put
 * beside the words instead of among them.
 */
export function answerWords(
	{ sheet, meant, isQuick }: WalkContext,
	check: Check,
	outcome: string,
): Pick<AnswerView, 'words' | 'note'> {
	const words = outcomeText(sheet, meant, check, outcome);
	if (!isQuick || outcome !== 'as-meant') return { words, note: null };
	return { words: standInWords.asMeant, note: standInWords.note(words) };
}

/** The same in one line, for the log. */
export function seenWords(ground: WalkContext, check: Check | undefined, outcome: string): string {
	return check ? answerWords(ground, check, outcome).words : outcome;
}
