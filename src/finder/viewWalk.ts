import type { CautionId } from '../../content/cautions/index.ts';
import { unknown } from '../../content/faults/index.ts';
import { suspectWords } from '../../content/finder/index.ts';
import { MENDS } from '../../sim/fault/index.ts';
import type { Bench, Finder, Suspect, Verdict } from '../../sim/finder/index.ts';
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
} from '../words/index.ts';
import { type Ground, groundOf } from './ground.ts';
import { pictureOf } from './picture.ts';
import type { CauseView, LogLineView, MendView, SuspectView, VerdictView, WalkView } from './view.ts';
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
		verdict: verdict && viewVerdict(ground, verdict, walk),
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

function suspectName({ sheet }: Ground, { faults }: Suspect): string {
	if (faults.length === 0) return unknown.name;
	return faults
		.map((placed) => suspectWords.at(faultName(sheet, placed), placeName(sheet, placed.place)))
		.join(suspectWords.pair);
}

function viewSuspects(ground: Ground, finder: Finder, steps: SetWalk['steps']): SuspectView[] {
	// in the words of the person, whatever the finder took it for
	const saw = new Map(steps.flatMap((step) => (step.did === 'answer' ? [[step.check, step.outcome]] : [])));
	const named = finder.suspects().map((suspect) => ({ suspect, name: suspectName(ground, suspect) }));
	const times = new Map<string, number>();
	for (const { name } of named) times.set(name, (times.get(name) ?? 0) + 1);
	return named.map(({ suspect, name }) => ({
		...viewSuspect(ground, finder, suspect, saw),
		name,
		more: times.get(name) === 1 ? null : causeOf(ground, suspect),
	}));
}

function causeOf({ sheet }: Ground, { faults }: Suspect): string {
	return faults.length === 0 ? unknown.cause : faults.map((placed) => faultCause(sheet, placed)).join(' ');
}

function viewSuspect(
	ground: Ground,
	finder: Finder,
	suspect: Suspect,
	saw: ReadonlyMap<string, string>,
): Omit<SuspectView, 'name' | 'more'> {
	return {
		id: suspect.id,
		share: suspect.weight,
		against: suspect.against.map(({ check: id, seen, predicted }) => {
			const check = finder.check(id);
			return {
				check: check ? checkTitle(ground.sheet, ground.meant, check) : id,
				seen: seenWords(ground, check, saw.get(id) ?? seen),
				predicted: seenWords(ground, check, predicted),
			};
		}),
	};
}

function viewVerdict(ground: Ground, verdict: Verdict, { steps }: SetWalk): VerdictView {
	return {
		because: verdict.because,
		sure: verdict.sure,
		causes: verdict.suspects.map((suspect) => viewCause(ground, suspect)),
		mends: verdict.mends.map((mend) => viewMend(ground, mend)),
		asides: steps.filter(({ did }) => did !== 'answer').length,
	};
}

function viewCause(ground: Ground, suspect: Suspect): CauseView {
	const { faults, id, weight } = suspect;
	return {
		id,
		name: suspectName(ground, suspect),
		cause: causeOf(ground, suspect),
		tape: faults.length === 0 ? [unknown.tape] : faults.map((placed) => faultTape(ground.sheet, placed)),
		share: weight,
		faults: faults.map(({ fault }) => fault),
	};
}

function viewMend({ sheet, complaint }: Ground, { id, place, check, seconds }: Verdict['mends'][number]): MendView {
	const { needs, disturbs, cautions } = MENDS[id];
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
