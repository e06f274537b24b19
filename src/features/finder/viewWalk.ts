import type { CautionId } from '#words/cautions/index.ts';
import { unknown } from '#words/faults/index.ts';
import { suspectWords } from '#words/finder/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import type { Bench, Finder, Suspect, Verdict } from '../../../sim/finder/index.ts';
import {
	checkTitle,
	complaintText,
	faultCause,
	faultName,
	faultTape,
	mendConfirm,
	mendText,
	mendTitle,
	placeName,
	spotOf,
} from '../../wording/index.ts';
import { type Ground, groundOf } from './ground.ts';
import { pictureOf } from './picture.ts';
import type { CauseView, LogLineView, LostView, MendView, SuspectView, VerdictView, WalkView } from './view.ts';
import { seenWords, viewCheck } from './viewCheck.ts';
import type { SetWalk } from './walk.ts';

/** A walk as it stands, in words. `finder` stands where the walk does. */
export function viewWalk(bench: Bench, finder: Finder, walk: SetWalk): WalkView {
	const ground = groundOf(bench, walk.rig.kind === 'quick');
	const suspects = viewSuspects(ground, finder, walk.steps);
	const verdict = finder.verdict();
	const next = verdict ? null : finder.next();
	return {
		complaint: complaintText(ground.sheet, ground.complaint).says,
		check: next && viewCheck(ground, next, suspects),
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
function suspectName({ sheet }: Ground, { id, faults }: Suspect): string {
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

function viewSuspects(ground: Ground, finder: Finder, steps: SetWalk['steps']): SuspectView[] {
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
function wordsOnce(ground: Ground, finder: Finder): (id: string) => CheckSays {
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

function causeOf({ sheet }: Ground, { faults }: Suspect): string {
	return faults.length === 0 ? unknown.cause : faults.map((placed) => faultCause(sheet, placed)).join(' ');
}

function viewVerdict(ground: Ground, finder: Finder, verdict: Verdict, { steps }: SetWalk): VerdictView {
	return {
		because: verdict.because,
		sure: verdict.sure,
		causes: verdict.suspects.flatMap((suspect) => (suspect.faults.length > 0 ? viewCause(ground, suspect) : [])),
		lost: verdict.because === 'unknown' ? viewLost(ground, verdict) : null,
		mends: verdict.mends.map((mend) => viewMend(ground, finder, mend)),
		asides: steps.filter(({ did }) => did !== 'answer').length,
	};
}

function viewLost({ sheet }: Ground, { near }: Verdict): LostView {
	const isOverhead = sheet.fixtures.some(({ place }) => place.overhead);
	return {
		near: near.map(({ place }) => placeName(sheet, place)),
		cautions: isOverhead ? ['mains', 'height', 'hanging'] : ['mains'],
		tape: [unknown.tape],
	};
}

function viewCause(ground: Ground, suspect: Suspect): CauseView {
	const { faults, id, weight } = suspect;
	return {
		id,
		name: suspectName(ground, suspect),
		cause: causeOf(ground, suspect),
		tape: faults.map((placed) => faultTape(ground.sheet, placed)),
		share: weight,
		faults: faults.map(({ fault }) => fault),
	};
}

function viewMend(
	{ sheet, complaint }: Ground,
	finder: Finder,
	{ id, place, check, seconds }: Verdict['mends'][number],
): MendView {
	// every mend of a verdict can be tried, and where it is done says more than what it is
	const { needs = [], disturbs = false, cautions = [] } = finder.check(check) ?? {};
	return {
		check,
		title: mendTitle(sheet, id, place),
		does: mendText(sheet, id, place),
		confirm: mendConfirm(sheet, id, place),
		seconds,
		cautions: cautions as readonly CautionId[],
		needs,
		disturbs,
		picture: pictureOf(sheet, spotOf({ kind: `mend-${id}`, place }), place, complaint.fixture),
	};
}
