import type { CautionId } from '#words/cautions/index.ts';
import { checks, mendTried } from '#words/checks/index.ts';
import { standInWords } from '#words/finder/index.ts';
import { type Check, CLIMB, type NextCheck } from '../../../sim/finder/index.ts';
import { checkDoes, checkTitle, outcomeText, spotOf } from '../../wording/index.ts';
import type { Ground } from './ground.ts';
import { pictureOf } from './picture.ts';
import type { AnswerView, CheckView, SuspectView } from './view.ts';

/** The check to do now, in words. `suspects` as they stand, heaviest first. */
export function viewCheck(ground: Ground, next: NextCheck, suspects: readonly SuspectView[]): CheckView {
	const { sheet, meant, complaint } = ground;
	const { check, seconds } = next;
	return {
		id: check.id,
		sort: check.sort,
		title: checkTitle(sheet, meant, check),
		does: checkDoes(sheet, meant, check),
		seconds,
		walk: Math.max(0, seconds - check.seconds),
		climbs: check.needs.includes('ladder') && seconds - check.seconds >= CLIMB,
		needs: check.needs,
		disturbs: check.disturbs,
		cautions: check.cautions as readonly CautionId[],
		picture: pictureOf(sheet, spotOf(check), check.place, complaint.fixture),
		answers: outcomesOf(check).map((id) => viewAnswer(ground, next, suspects, id)),
		by: next.by,
		expected: next.expected,
	};
}

/** All that a check's words can tell, in their order: what no suspect would show may be seen all the same. */
function outcomesOf({ kind }: Check): string[] {
	return Object.keys((checks[kind] ?? mendTried).outcomes);
}

function viewAnswer(
	ground: Ground,
	{ check, outcomes }: NextCheck,
	suspects: readonly SuspectView[],
	id: string,
): AnswerView {
	const found = outcomes.find((each) => each.id === id);
	const who = found?.suspects ?? [];
	return {
		...answerWords(ground, check, id),
		id,
		chance: found?.chance ?? 0,
		suspects: [...new Set(suspects.flatMap((suspect) => (who.includes(suspect.id) ? suspect.name : [])))],
	};
}

/**
 * What would be seen. Where no sheet says what is meant, the value that a rig of three answers only stands in for is put
 * beside the words instead of among them.
 */
function answerWords(
	{ sheet, meant, isQuick }: Ground,
	check: Check,
	outcome: string,
): Pick<AnswerView, 'words' | 'note'> {
	const words = outcomeText(sheet, meant, check, outcome);
	if (!isQuick || outcome !== 'as-meant') return { words, note: null };
	return { words: standInWords.asMeant, note: standInWords.note(words) };
}

/** The same in one line, for the log. */
export function seenWords(ground: Ground, check: Check | undefined, outcome: string): string {
	return check ? answerWords(ground, check, outcome).words : outcome;
}
