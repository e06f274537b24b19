import { InputError } from '../../../shared/error/index.ts';
import { loadRig, RIG_IDS, type RigId } from '../../../shared/sheet/index.ts';
import {
	type Bench,
	type FaultDrill,
	hideFaults,
	openBench,
	reviewWalk,
	type Step,
} from '../../../sim/finder/index.ts';
import { type Did, finderGig, type Gig, openGig } from './gig.ts';
import { SEEDS } from './link.ts';
import type { DrillOf, DrillView, ReviewView, StandView } from './view.ts';
import { viewDone, viewDrill, viewFaults, viewFitting, viewReview } from './viewDrill.ts';

/** Everything the page can ask, done with no page at hand: the same under test as in the worker. */
export interface HiddenWork {
	/** @throws InputError `hidden.rig` */
	open(asks: DrillOf): Promise<DrillView>;
	/** A seed from this one on whose drill leaves something to find, where a few tries come upon one. */
	seed(asks: DrillOf): Promise<number>;
	/** Where these checks, done in this order, lead. What is no check of the drill, or comes after its end, is passed over. */
	stand(asks: { readonly drill: DrillOf; readonly steps: readonly string[] }): Promise<StandView>;
	/** The answer, and what each step was worth. */
	review(asks: { readonly drill: DrillOf; readonly steps: readonly string[] }): Promise<ReviewView>;
}

/** Different mends from which a drill has something to find. */
const MANY = 4;
const TRIES = 6;

interface Opened {
	readonly key: string;
	readonly drill: FaultDrill;
	readonly bench: Bench;
	gig: Gig;
	steps: readonly string[];
}

const stepOf = ({ check, told }: Did): Step => ({ did: 'answer', check: check.id, outcome: told });

/** Keeps the drill last asked about, since the next question is nearly always about it. */
export function makeHiddenWork(): HiddenWork {
	let last: Opened | null = null;
	const openedOf = async ({ rig, seed, count }: DrillOf): Promise<Opened> => {
		const key = JSON.stringify([rig, seed, count]);
		if (last?.key !== key) {
			if (!RIG_IDS.includes(rig as RigId))
				throw new InputError('hidden.rig', 'rig', { trouble: 'no-such-rig', id: rig });
			const drill = hideFaults(rig as RigId, await loadRig(rig as RigId), seed, count);
			const bench = openBench(drill.sheet, drill.complaint);
			last = { key, drill, bench, gig: openGig(bench, drill), steps: [] };
		}
		return last;
	};
	/** Goes on from where it stands where it can, and from the start where not. */
	const gigAt = (opened: Opened, steps: readonly string[]): Gig => {
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
				if (new Set(bench.candidates.map(({ mend }) => mend)).size >= MANY) return seed;
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
