import { makeRandom } from '../../shared/random/index.ts';
import { bundledRig, type RigId, type RigSheet } from '../../shared/sheet/index.ts';
import type { PlacedFault } from '../event/index.ts';
import { placedFaults } from '../fault/index.ts';
import { entropyOf } from '../sequence/index.ts';
import { COMPLAINTS, type Complaint, complaintsOf } from './complaints.ts';
import { finderOn } from './finder.ts';
import { idOf } from './layout.ts';
import { type Candidate, candidatesFor, offeredBy, type RigOutcomes, weightApart } from './table.ts';
import type { FinderOptions, WalkAnswer } from './types.ts';
import { together } from './widen.ts';
import { faultyWitness, meantWitness, type Witness } from './witness.ts';

/** A rig with something hidden in it. It follows from rig, seed and count alone, so a link need not hold the answer. */
export interface FaultDrill {
	/** What it is called in a link: one of the hall’s, or what its rig was made from. */
	readonly rig: string;
	readonly seed: number;
	readonly count: 1 | 2;
	readonly sheet: RigSheet;
	/** What somebody complains of. */
	readonly complaint: Complaint;
	/** The answer. */
	readonly faults: readonly PlacedFault[];
}

/** How many complaints are tried before a drill with two faults settles for one. */
const TRIES = 12;

/** A fault drill: the same rig, seed and count always hide the same. @param count of faults; two where two can be found that both show the complaint */
export const makeFaultDrill = (rig: RigId, seed: number, count: 1 | 2 = 1): FaultDrill =>
	hideFaults(rig, bundledRig(rig), seed, count);

/** As `makeFaultDrill`, by one who has the rig's sheet at hand: `loadRig` fetches it, or it was made. */
export function hideFaults(rig: string, sheet: RigSheet, seed: number, count: 1 | 2): FaultDrill {
	const meant = meantWitness(sheet);
	const random = makeRandom(seed).fork(`fault drill ${rig} ${count}`);
	const complaints = random.shuffle(complaintsOf(meant, sheet));
	let spare: FaultDrill | null = null;
	for (const complaint of complaints.slice(0, TRIES * 2)) {
		const candidates = causesOf(sheet, meant, complaint);
		if (candidates.length < 4) continue;
		const one = drawn(candidates, random.next());
		const drill = { rig, seed, count, sheet, complaint };
		if (count === 1) return { ...drill, faults: one.faults };
		spare ??= { ...drill, faults: one.faults };
		for (const two of random.shuffle(candidates).slice(0, TRIES)) {
			if (two.repair === one.repair) continue;
			const faults = [...one.faults, ...two.faults];
			const both = together(meant, faults);
			if (both && COMPLAINTS[complaint.kind].holds(both, meant, complaint.fixture)) return { ...drill, faults };
		}
	}
	if (spare) return spare;
	// no complaint of this rig leaves four to choose from: the first that any fault shows
	const [complaint] = complaints.filter((each) => causesOf(sheet, meant, each).length > 0);
	if (!complaint) throw new RangeError(`no fault of ${rig} shows`);
	return {
		rig,
		seed,
		count,
		sheet,
		complaint,
		faults: drawn(causesOf(sheet, meant, complaint), random.next()).faults,
	};
}

/** The edition of the catalogue that a drill hides from: a rig, a seed and a count name one for good. */
const EDITION = 1;

/** What can be hidden, with the weights of the catalogue: a learner meets the rig as it was switched on. */
const causesOf = (sheet: RigSheet, meant: Witness, complaint: Complaint): Candidate[] =>
	candidatesFor(sheet, meant, complaint, undefined, placedFaults(sheet, EDITION)).flatMap((candidate) =>
		candidate.came === 'warm' ? [] : { ...candidate, weight: weightApart(candidate) },
	);

/** One by weight: common faults are drawn more often. @param at 0..1 */
function drawn<T extends { readonly weight: number }>(list: readonly T[], at: number): T {
	const all = list.reduce((sum, { weight }) => sum + weight, 0);
	let left = at * all;
	for (const one of list) {
		left -= one.weight;
		if (left < 0) return one;
	}
	return list.at(-1) as T;
}

/** The rig of a drill as the learner finds it. */
export function hiddenRig({ sheet, faults }: FaultDrill): Witness {
	return faultyWitness(meantWitness(sheet), faults);
}

/**
 * What one choice was worth. The three ways to waste one are a training text's words (US Army IT0338, 1996, read second-hand):
 * irrelevant, showing the same whatever is wrong; redundant, its answer known before; premature, a swap or repair while
 * a look would have told more a second.
 */
export interface ReviewedStep {
	readonly check: string;
	readonly outcome: string | null;
	readonly seconds: number;
	/** Bits of doubt about the cause before and after. */
	readonly before: number;
	readonly after: number;
	readonly judged: 'best' | 'good' | 'premature' | 'redundant' | 'irrelevant' | 'set-aside';
	/** What the finder would have asked there, and what it told a second in bits, next to what this one was to tell. */
	readonly best: { readonly check: string; readonly rate: number } | null;
	readonly rate: number;
}

/** Share of the best check's bits a second from which a choice is called good. */
const GOOD = 0.5;

/** Chance of one outcome from which an answer counts as known before. */
const KNOWN = 0.97;

/**
 * Goes through a walk again, step by step, next to what the finder would have done there.
 * @param steps of checks that the bench offers (see `offeredBy`), those that tell nothing too
 */
export function reviewWalk(
	table: RigOutcomes,
	steps: readonly WalkAnswer[],
	options: FinderOptions = {},
): ReviewedStep[] {
	const finder = finderOn(table, options);
	const doubt = (): number => entropyOf(finder.suspects().map(({ weight }) => weight));
	return steps.map((step) => {
		const before = doubt();
		const next = finder.next();
		const best = next && { check: next.check.id, rate: next.seconds > 0 ? next.bits / next.seconds : 0 };
		const outcome = step.did === 'answer' ? step.outcome : null;
		const idle = finder.check(step.check) ? undefined : offeredBy(table).find(({ id }) => id === step.check);
		if (idle) {
			const { seconds } = idle;
			return { check: step.check, outcome, seconds, before, after: before, best, rate: 0, judged: 'irrelevant' };
		}
		const spent = finder.spent;
		const chances = chancesOf(table, finder.suspects(), step.check);
		const told = chances ? before - expectedAfter(table, finder.suspects(), step.check) : 0;
		if (step.did === 'answer') finder.answer(step.check, step.outcome);
		else finder.cannot(step.check);
		const seconds = finder.spent - spent;
		const rate = seconds > 0 ? told / seconds : 0;
		const base = {
			check: step.check,
			outcome,
			seconds,
			before,
			after: doubt(),
			best,
			rate,
		};
		return { ...base, judged: judge(table, step, best, rate, chances) };
	});
}

function judge(
	table: RigOutcomes,
	step: WalkAnswer,
	best: ReviewedStep['best'],
	rate: number,
	chances: ReadonlyMap<string, number> | null,
): ReviewedStep['judged'] {
	if (step.did === 'cannot') return 'set-aside';
	if (!best || step.check === best.check) return 'best';
	const check = table.checks.find(({ id }) => id === step.check);
	if (!chances || chances.size < 2) return 'irrelevant';
	if (Math.max(...chances.values()) >= KNOWN) return 'redundant';
	if (rate >= GOOD * best.rate) return 'good';
	return check?.sort === 'swap' || check?.sort === 'mend'
		? 'premature'
		: rate >= 0.1 * best.rate
			? 'good'
			: 'redundant';
}

type WeighedSuspects = readonly { readonly id: string; readonly weight: number; readonly faults: readonly unknown[] }[];

/** What a check was to show, by the weights then; null where it was not among those that tell anything. */
function chancesOf(table: RigOutcomes, suspects: WeighedSuspects, check: string): ReadonlyMap<string, number> | null {
	const row = table.outcomes[table.checks.findIndex(({ id }) => id === check)];
	if (!row) return null;
	const weights = weightsBy(table, suspects);
	const chances = new Map<string, number>();
	let all = 0;
	for (const [at, outcome] of row.entries()) {
		chances.set(outcome, (chances.get(outcome) ?? 0) + (weights[at] ?? 0));
		all += weights[at] ?? 0;
	}
	for (const [outcome, chance] of chances) chances.set(outcome, all > 0 ? chance / all : 0);
	return chances;
}

/** Doubt to be expected after a check, bits. */
function expectedAfter(table: RigOutcomes, suspects: WeighedSuspects, check: string): number {
	const row = table.outcomes[table.checks.findIndex(({ id }) => id === check)] ?? [];
	const weights = weightsBy(table, suspects);
	const groups = new Map<string, number[]>();
	for (const [at, outcome] of row.entries()) groups.set(outcome, [...(groups.get(outcome) ?? []), weights[at] ?? 0]);
	const all = weights.reduce((sum, weight) => sum + weight, 0);
	return [...groups.values()].reduce(
		(sum, group) => sum + (group.reduce((total, weight) => total + weight, 0) / all) * entropyOf(group),
		0,
	);
}

function weightsBy(table: RigOutcomes, suspects: WeighedSuspects): number[] {
	const byId = new Map(suspects.map(({ id, weight }) => [id, weight]));
	return table.candidates.map((candidate) => byId.get(idOf(candidate)) ?? 0);
}
