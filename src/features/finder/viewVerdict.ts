import type { CautionId } from '#words/cautions/index.ts';
import { unknown } from '#words/faults/index.ts';
import { type Finder, type Suspect, triesKind, type Verdict } from '../../../sim/finder/index.ts';
import {
	checkDoes,
	faultTape,
	placeName,
	repairConfirm,
	repairText,
	repairTitle,
	spotOf,
} from '../../wording/index.ts';
import { otherThanSheet } from './other.ts';
import { pictureOf } from './picture.ts';
import type { CauseView, HingeView, LostView, RepairView, VerdictView } from './view.ts';
import type { SetWalk } from './walk.ts';
import { causeOf, suspectName, type WalkContext, wordsOnce } from './walkWords.ts';

/** The end of a walk, in words. */
export function viewVerdict(ground: WalkContext, finder: Finder, verdict: Verdict, { steps }: SetWalk): VerdictView {
	return {
		because: verdict.because,
		sure: verdict.sure,
		causes: verdict.suspects.flatMap((suspect) => (suspect.faults.length > 0 ? viewCause(ground, suspect) : [])),
		lost: verdict.because === 'unknown' ? viewLost(ground, finder, verdict, steps) : null,
		repairs: verdict.repairs.map((repair) => viewRepair(ground, finder, repair)),
		asides: steps.filter(({ did }) => did !== 'answer').length,
		hinge: verdict.confirmed || verdict.because === 'unknown' ? null : { on: viewHinge(ground, finder) },
	};
}

function viewHinge(ground: WalkContext, finder: Finder): HingeView | null {
	const hinge = finder.hinge();
	if (!hinge) return null;
	const { suspect, answer, settle } = hinge;
	const wordsOf = wordsOnce(ground, finder);
	const says = settle && wordsOf(settle.check);
	const check = settle && finder.check(settle.check);
	return {
		name: suspectName(ground, suspect),
		check: wordsOf(answer.check).title,
		seen: wordsOf(answer.check).seen(answer.seen),
		settle:
			says && check
				? {
						title: says.title,
						does: checkDoes(ground.sheet, ground.meant, check),
						sort: check.sort,
						disturbs: check.disturbs,
						there: says.seen(settle.there),
						here: settle.here.map((outcome) => says.seen(outcome)),
					}
				: null,
		cautions: (finder.check((settle ?? answer).check)?.cautions ?? []) as readonly CautionId[],
	};
}

function viewLost(ground: WalkContext, finder: Finder, { near, common }: Verdict, steps: SetWalk['steps']): LostView {
	const { sheet } = ground;
	const wordsOf = wordsOnce(ground, finder);
	const saw = new Map(steps.flatMap((step) => (step.did === 'answer' ? [[step.check, step.outcome]] : [])));
	const isOverhead = sheet.fixtures.some(({ place }) => place.overhead);
	return {
		near: near.map(({ place }) => placeName(sheet, place)),
		odd: (common?.odd ?? []).map((id) => ({ check: wordsOf(id).title, seen: wordsOf(id).seen(saw.get(id) ?? '') })),
		fine: (common?.fine ?? []).map((id) => wordsOf(id).title),
		families: common?.families ?? [],
		cautions: isOverhead ? ['mains', 'height', 'hanging'] : ['mains'],
		tape: [unknown.tape],
	};
}

function viewCause(ground: WalkContext, suspect: Suspect): CauseView {
	const { faults, id, weight } = suspect;
	return {
		id,
		name: suspectName(ground, suspect),
		cause: causeOf(ground, suspect),
		tape: faults.map((placed) => faultTape(ground.sheet, placed)),
		share: weight,
		faults: faults.map(({ fault }) => fault),
		other: otherThanSheet(ground.sheet, faults),
	};
}

function viewRepair(
	{ sheet, complaint }: WalkContext,
	finder: Finder,
	{ id, place, check, seconds }: Verdict['repairs'][number],
): RepairView {
	// every repair of a verdict can be tried, and where it is done says more than what it is
	const { needs = [], disturbs = false, cautions = [] } = finder.check(check) ?? {};
	return {
		check,
		title: repairTitle(sheet, id, place),
		does: repairText(sheet, id, place),
		confirm: repairConfirm(sheet, id, place),
		seconds,
		cautions: cautions as readonly CautionId[],
		needs,
		disturbs,
		picture: pictureOf(sheet, spotOf({ kind: triesKind(id), place }), place, complaint.fixture),
	};
}
