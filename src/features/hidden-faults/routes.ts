/** What hidden faults do in the worker. */

import type { CautionId } from '#words/cautions/index.ts';
import { suspectWords } from '#words/finder/index.ts';
import { panelFrom } from '../../../shared/profile/index.ts';
import type { PlacedFault } from '../../../sim/event/index.ts';
import { faultOf } from '../../../sim/fault/index.ts';
import {
	type Check,
	type FaultDrill,
	hideFaults,
	isRepair,
	offeredBy,
	openOutcomes,
	type ReviewedStep,
	type RigOutcomes,
	reviewWalk,
	type WalkAnswer,
} from '../../../sim/finder/index.ts';
import {
	checkDoes,
	checkTitle,
	complaintText,
	faultCause,
	faultName,
	outcomeText,
	placeName,
	repairTitle,
} from '../../wording/index.ts';
import { type Did, finderGig, type Gig, openGig } from './gig.ts';
import { sheetFor } from './rigs.ts';
import { rowsOf } from './rows.ts';
import {
	type DoneView,
	type DrillOf,
	type DrillView,
	type HiddenCheckView,
	type JudgedView,
	type ReviewView,
	SEEDS,
	type StandView,
} from './view.ts';

/** Everything the page can ask, done with no page at hand: the same under test as in the worker. */
export interface HiddenWork {
	/** @throws InputError `hidden.rig`, and what a link's fixture is refused with */
	open(asks: DrillOf): Promise<DrillView>;
	/** A seed from this one on whose drill leaves something to find, where a few tries come upon one. */
	seed(asks: DrillOf): Promise<number>;
	/** Where these checks, done in this order, lead. What is no check of the drill, or comes after its end, is passed over. */
	stand(asks: { readonly drill: DrillOf; readonly steps: readonly string[] }): Promise<StandView>;
	/** The answer, and what each step was worth. */
	review(asks: { readonly drill: DrillOf; readonly steps: readonly string[] }): Promise<ReviewView>;
}

/** Different repairs from which a drill has something to find. */
const MANY = 4;
const TRIES = 6;

interface OpenDrill {
	readonly key: string;
	readonly drill: FaultDrill;
	readonly bench: RigOutcomes;
	gig: Gig;
	steps: readonly string[];
}

const stepOf = ({ check, told }: Did): WalkAnswer => ({ did: 'answer', check: check.id, outcome: told });

/** Keeps the drill last asked about, since the next question is nearly always about it. */
export function makeHiddenWork(): HiddenWork {
	let last: OpenDrill | null = null;
	const openedOf = async (asks: DrillOf): Promise<OpenDrill> => {
		const { rig, seed, count, on } = asks;
		const key = JSON.stringify([rig, seed, count, on]);
		if (last?.key !== key) {
			const drill = hideFaults(rig, await sheetFor(asks), seed, count);
			const bench = openOutcomes(drill.sheet, drill.complaint);
			last = { key, drill, bench, gig: openGig(bench, drill), steps: [] };
		}
		return last;
	};
	/** Goes on from where it stands where it can, and from the start where not. */
	const gigAt = (opened: OpenDrill, steps: readonly string[]): Gig => {
		if (opened.steps.some((step, i) => step !== steps[i])) {
			opened.gig = openGig(opened.bench, opened.drill);
			opened.steps = [];
		}
		for (const step of steps.slice(opened.steps.length)) opened.gig.do(step);
		opened.steps = steps;
		return opened.gig;
	};
	return {
		async seed(asks) {
			for (let on = 0; on < TRIES; on++) {
				const seed = (asks.seed + on) % SEEDS;
				const { bench } = await openedOf({ ...asks, seed });
				if (new Set(bench.candidates.map(({ repair }) => repair)).size >= MANY) return seed;
			}
			return asks.seed;
		},
		async open(asks) {
			const { bench } = await openedOf(asks);
			return viewDrill(bench);
		},
		async stand({ drill, steps }) {
			const opened = await openedOf(drill);
			const gig = gigAt(opened, steps);
			return {
				done: gig.done.map((did) => viewDone(opened.bench, did)),
				spent: gig.spent,
				cleared: gig.cleared,
				fitting: viewFitting(opened.bench, gig),
			};
		},
		async review({ drill, steps }) {
			const opened = await openedOf(drill);
			const gig = gigAt(opened, steps);
			const best = finderGig(opened.bench, opened.drill);
			return {
				faults: viewFaults(opened.bench, opened.drill),
				spent: gig.spent,
				finder: {
					spent: best.spent,
					cleared: best.cleared,
					done: best.done.map((did) => viewDone(opened.bench, did)),
				},
				steps: viewReview(opened.bench, gig, reviewWalk(opened.bench, gig.done.map(stepOf))),
			};
		},
	};
}

export const routes = makeHiddenWork();

/** A drill in words, its answer left out. */
export function viewDrill(bench: RigOutcomes): DrillView {
	const { sheet, complaint } = bench;
	return {
		rig: sheet.name,
		complaint: complaintText(sheet, complaint).says,
		isOwn: sheet.profiles.some((profile) => panelFrom(profile) !== 'invented'),
		rows: rowsOf(sheet),
		checks: offeredBy(bench).map((check) => viewCheck(bench, check)),
	};
}

function viewCheck({ sheet, meant }: RigOutcomes, check: Check): HiddenCheckView {
	return {
		id: check.id,
		sort: isRepair(check) ? 'mend' : check.sort,
		title: checkTitle(sheet, meant.rig, check),
		does: checkDoes(sheet, meant.rig, check),
		at: check.place,
		place: placeName(sheet, check.place),
		seconds: check.seconds,
		needs: check.needs,
		cautions: check.cautions as readonly CautionId[],
	};
}

/** One thing done, in words. */
export function viewDone({ sheet, meant }: RigOutcomes, { check, outcome, seconds }: Did): DoneView {
	return {
		check: check.id,
		title: checkTitle(sheet, meant.rig, check),
		seen: outcomeText(sheet, meant.rig, check, outcome),
		seconds,
	};
}

const nameOf = ({ sheet }: RigOutcomes, faults: readonly PlacedFault[]): string =>
	faults
		.map((placed) => suspectWords.at(faultName(sheet, placed), placeName(sheet, placed.place)))
		.join(suspectWords.pair);

/** What nothing seen speaks against; those alike in words are one. */
export function viewFitting(bench: RigOutcomes, { finder }: Gig): StandView['fitting'] {
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
export function viewFaults(bench: RigOutcomes, { faults }: FaultDrill): ReviewView['faults'] {
	const { sheet } = bench;
	return faults.map((placed) => {
		const { repair, repairAt } = faultOf(placed.fault);
		return {
			name: nameOf(bench, [placed]),
			cause: faultCause(sheet, placed),
			repair: repairTitle(sheet, repair, repairAt?.(sheet, placed) ?? placed.place),
		};
	});
}

/** The judgement of each thing done. */
export function viewReview(bench: RigOutcomes, gig: Gig, reviewed: readonly ReviewedStep[]): JudgedView[] {
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
