import type { CautionId } from '#words/cautions/index.ts';
import { checks, mendTried } from '#words/checks/index.ts';
import {
	type Check,
	CLIMB,
	type Finder,
	isRepair,
	type NextCheck,
	type RigOutcomes,
	triedBy,
} from '../../../sim/finder/index.ts';
import { checkDoes, checkTitle, complaintText, spotOf } from '../../wording/index.ts';
import { otherThanSheet } from './other.ts';
import { pictureOf } from './picture.ts';
import type { AnswerView, CheckView, LogLineView, MayBePlan, SuspectView, WalkView } from './view.ts';
import { viewVerdict } from './viewVerdict.ts';
import type { SetWalk } from './walk.ts';
import { answerWords, causeOf, groundOf, seenWords, suspectName, type WalkContext, wordsOnce } from './walkWords.ts';

/** A walk as it stands, in words. `finder` stands where the walk does. */
export function viewWalk(bench: RigOutcomes, finder: Finder, walk: SetWalk): WalkView {
	const ground = groundOf(bench, walk.rig.kind === 'quick');
	const suspects = viewSuspects(ground, finder, walk.steps);
	const verdict = finder.verdict();
	const next = verdict ? null : finder.next();
	return {
		complaint: complaintText(ground.sheet, ground.complaint).says,
		check:
			next &&
			viewCheck(ground, next, suspects, {
				tries: mayBePlan(ground, finder, next),
				said: saidBefore(finder, walk.steps, next.check),
			}),
		verdict: verdict && viewVerdict(ground, finder, verdict, walk),
		suspects,
		log: walk.steps.map((step): LogLineView => {
			const check = finder.check(step.check);
			return {
				check: check ? checkTitle(ground.sheet, ground.meant, check) : step.check,
				seen: step.did === 'answer' ? seenWords(ground, check, step.outcome) : null,
				did: step.did,
			};
		}),
		spent: finder.spent,
		isPart: false,
	};
}

function viewSuspects(ground: WalkContext, finder: Finder, steps: SetWalk['steps']): SuspectView[] {
	// in the words of the person, whatever the finder took it for
	const saw = new Map(steps.flatMap((step) => (step.did === 'answer' ? [[step.check, step.outcome]] : [])));
	const wordsOf = wordsOnce(ground, finder);
	const named = finder.suspects().map((suspect) => ({ suspect, name: suspectName(ground, suspect) }));
	const times = new Map<string, number>();
	for (const { name } of named) times.set(name, (times.get(name) ?? 0) + 1);
	return named.map(({ suspect, name }) => ({
		id: suspect.id,
		name,
		more: times.get(name) === 1 ? null : causeOf(ground, suspect),
		share: suspect.weight,
		against: suspect.against.map(({ check, seen, predicted }) => ({
			check: wordsOf(check).title,
			seen: wordsOf(check).seen(saw.get(check) ?? seen),
			predicted: wordsOf(check).seen(predicted),
		})),
	}));
}

/** What a repair that is tried would set to the sheet, though it may be right as it is; null for a check of another sort. */
function mayBePlan(ground: WalkContext, finder: Finder, { check }: NextCheck): MayBePlan | null {
	if (!isRepair(check)) return null;
	for (const suspect of finder.suspects()) {
		if (!suspect.repairs.some((repair) => check.id === triedBy(repair))) continue;
		const other = otherThanSheet(ground.sheet, suspect.faults);
		if (other) return { name: suspectName(ground, suspect), other };
	}
	return null;
}

/** Cautions of a check that a check answered before had in full. All are told in full again where hands do something, or the check climbs. */
function saidBefore(finder: Finder, steps: SetWalk['steps'], { sort, cautions, needs }: Check): readonly CautionId[] {
	if (sort !== 'look' || needs.includes('ladder')) return [];
	const said = new Set(
		steps.flatMap((step) => (step.did === 'answer' ? (finder.check(step.check)?.cautions ?? []) : [])),
	);
	return cautions.filter((id) => said.has(id)) as readonly CautionId[];
}

/** The check to do now, in words. `suspects` as they stand, heaviest first. */
function viewCheck(
	ground: WalkContext,
	next: NextCheck,
	suspects: readonly SuspectView[],
	more: Pick<CheckView, 'tries' | 'said'>,
): CheckView {
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
		...more,
	};
}

/** All that a check's words can tell, in their order: what no suspect would show may be seen all the same. */
function outcomesOf({ kind }: Check): string[] {
	return Object.keys((checks[kind] ?? mendTried).outcomes);
}

function viewAnswer(
	ground: WalkContext,
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
