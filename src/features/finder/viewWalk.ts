import type { CautionId } from '#words/cautions/index.ts';
import { checks, mendTried } from '#words/checks/index.ts';
import { unknown } from '#words/faults/index.ts';
import { standInWords, suspectWords } from '#words/finder/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import {
	type Check,
	CLIMB,
	type Complaint,
	type Finder,
	isRepair,
	type NextCheck,
	type RigOutcomes,
	type Suspect,
	triedBy,
	triesKind,
	type Verdict,
} from '../../../sim/finder/index.ts';
import type { Rig } from '../../../sim/rig/index.ts';
import {
	checkDoes,
	checkTitle,
	complaintText,
	faultCause,
	faultName,
	faultTape,
	outcomeText,
	placeName,
	repairConfirm,
	repairText,
	repairTitle,
	spotOf,
} from '../../wording/index.ts';
import { otherThanSheet } from './other.ts';
import { pictureOf } from './picture.ts';
import type {
	AnswerView,
	CauseView,
	CheckView,
	HingeView,
	LogLineView,
	LostView,
	MayBePlan,
	RepairView,
	SuspectView,
	VerdictView,
	WalkView,
} from './view.ts';
import type { SetWalk } from './walk.ts';

/** A walk as it stands, in words. `finder` stands where the walk does. */
export function viewWalk(bench: RigOutcomes, finder: Finder, walk: SetWalk): WalkView {
	const ground = groundOf(bench, walk.rig.kind === 'quick');
	const suspects = viewSuspects(ground, finder, walk.steps);
	const verdict = finder.verdict();
	const next = verdict ? null : finder.next();
	return {
		complaint: complaintText(ground.sheet, ground.complaint).says,
		check: next && viewCheck(ground, next, suspects, mayBePlan(ground, finder, next)),
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

const names = new WeakMap<RigSheet, Map<string, string>>();

/** Worked out once a sheet: suspects stand in view at every step. */
function suspectName({ sheet }: WalkContext, { id, faults }: Suspect): string {
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

interface CheckSays {
	readonly title: string;
	seen(outcome: string): string;
}

/** A check's title and what it shows, in words that are filled in once: the same few speak against nearly every suspect. */
function wordsOnce(ground: WalkContext, finder: Finder): (id: string) => CheckSays {
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

function causeOf({ sheet }: WalkContext, { faults }: Suspect): string {
	return faults.length === 0 ? unknown.cause : faults.map((placed) => faultCause(sheet, placed)).join(' ');
}

function viewVerdict(ground: WalkContext, finder: Finder, verdict: Verdict, { steps }: SetWalk): VerdictView {
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

/** The check to do now, in words. `suspects` as they stand, heaviest first. */
function viewCheck(
	ground: WalkContext,
	next: NextCheck,
	suspects: readonly SuspectView[],
	tries: MayBePlan | null,
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
		tries,
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

/**
 * What would be seen. Where no sheet says what is meant, the value that a rig of three answers only stands in for is put
 * beside the words instead of among them.
 */
function answerWords(
	{ sheet, meant, isQuick }: WalkContext,
	check: Check,
	outcome: string,
): Pick<AnswerView, 'words' | 'note'> {
	const words = outcomeText(sheet, meant, check, outcome);
	if (!isQuick || outcome !== 'as-meant') return { words, note: null };
	return { words: standInWords.asMeant, note: standInWords.note(words) };
}

/** The same in one line, for the log. */
function seenWords(ground: WalkContext, check: Check | undefined, outcome: string): string {
	return check ? answerWords(ground, check, outcome).words : outcome;
}

/** What words about a walk are worked out from. */
export interface WalkContext {
	readonly sheet: RigSheet;
	/** The rig as its sheet has it. */
	readonly meant: Rig;
	readonly complaint: Complaint;
	/** Made from three answers: its values are stand-ins. */
	readonly isQuick: boolean;
}

const groundOf = ({ sheet, meant, complaint }: RigOutcomes, isQuick: boolean): WalkContext => ({
	sheet,
	meant: meant.rig,
	complaint,
	isQuick,
});
