import type { CautionId } from '#words/cautions/index.ts';
import { suspectWords } from '#words/finder/index.ts';
import type { PlacedFault } from '../../../sim/event/index.ts';
import { faultOf } from '../../../sim/fault/index.ts';
import { type Bench, type Check, type FaultDrill, offeredBy, type ReviewedStep } from '../../../sim/finder/index.ts';
import {
	checkDoes,
	checkTitle,
	complaintText,
	faultCause,
	faultName,
	mendTitle,
	outcomeText,
	placeName,
} from '../../wording/index.ts';
import { type Did, type Gig, isMend } from './gig.ts';
import type { CheckView, DoneView, DrillView, JudgedView, ReviewView, StandView } from './view.ts';

/** A drill in words, its answer left out. */
export function viewDrill(bench: Bench): DrillView {
	const { sheet, complaint } = bench;
	return {
		rig: sheet.name,
		complaint: complaintText(sheet, complaint).says,
		checks: offeredBy(bench).map((check) => viewCheck(bench, check)),
	};
}

function viewCheck({ sheet, meant }: Bench, check: Check): CheckView {
	return {
		id: check.id,
		sort: isMend(check) ? 'mend' : check.sort,
		title: checkTitle(sheet, meant.rig, check),
		does: checkDoes(sheet, meant.rig, check),
		place: placeName(sheet, check.place),
		seconds: check.seconds,
		needs: check.needs,
		cautions: check.cautions as readonly CautionId[],
	};
}

/** One thing done, in words. */
export function viewDone({ sheet, meant }: Bench, { check, outcome, seconds }: Did): DoneView {
	return {
		check: check.id,
		title: checkTitle(sheet, meant.rig, check),
		seen: outcomeText(sheet, meant.rig, check, outcome),
		seconds,
	};
}

const nameOf = ({ sheet }: Bench, faults: readonly PlacedFault[]): string =>
	faults
		.map((placed) => suspectWords.at(faultName(sheet, placed), placeName(sheet, placed.place)))
		.join(suspectWords.pair);

/** What nothing seen speaks against; those alike in words are one. */
export function viewFitting(bench: Bench, { finder }: Gig): StandView['fitting'] {
	const fitting = finder.suspects().filter(({ faults, against }) => faults.length > 0 && against.length === 0);
	const all = fitting.reduce((sum, { weight }) => sum + weight, 0);
	const shares = new Map<string, number>();
	for (const { faults, weight } of fitting) {
		const name = nameOf(bench, faults);
		shares.set(name, (shares.get(name) ?? 0) + (all > 0 ? weight / all : 0));
	}
	return [...shares].map(([name, share]) => ({ name, share })).sort((a, b) => b.share - a.share);
}

/** The answer. */
export function viewFaults(bench: Bench, { faults }: FaultDrill): ReviewView['faults'] {
	const { sheet } = bench;
	return faults.map((placed) => {
		const { mend, mendAt } = faultOf(placed.fault);
		return {
			name: nameOf(bench, [placed]),
			cause: faultCause(sheet, placed),
			mend: mendTitle(sheet, mend, mendAt?.(sheet, placed) ?? placed.place),
		};
	});
}

/** The judgement of each thing done. */
export function viewReview(bench: Bench, gig: Gig, reviewed: readonly ReviewedStep[]): JudgedView[] {
	const checkOf = (id: string): Check | undefined =>
		bench.checks.find((check) => check.id === id) ?? gig.finder.check(id);
	return gig.done.flatMap((did, at) => {
		const step = reviewed[at];
		if (step?.check !== did.check.id) return [];
		const { judged, best, before, after } = step;
		const better = best && best.check !== step.check ? checkOf(best.check) : undefined;
		return [
			{
				...viewDone(bench, did),
				judged,
				better: better ? checkTitle(bench.sheet, bench.meant.rig, better) : null,
				before,
				after,
			},
		];
	});
}
