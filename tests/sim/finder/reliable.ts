import { makeRandom, type Random } from '../../../shared/random/index.ts';
import { bundledRig, type RigId } from '../../../shared/sheet/index.ts';
import {
	type Candidate,
	type Complaint,
	complaintsOf,
	ELSE,
	type Finder,
	faultyWitness,
	finderOn,
	meantWitness,
	type RigOutcomes,
	repairEvents,
	repairTriedBy,
	type Verdict,
	witness,
} from '../../../sim/finder/index.ts';
import { textOf } from './gig.ts';
import type { UnknownFault } from './unknown.ts';
import { benchFor, complaintsWith, isRight, MOST, walkUnknown } from './unknown-walk.ts';

/** What was said in one walk, held to what was so. */
export interface Said {
	/** `known`: the catalogue has the fault. */
	readonly about: 'known' | 'unknown';
	readonly family: string;
	/** Share at which the walk's first verdict was said; null where a repair had mended it before any was said. */
	readonly sure: number | null;
	readonly isRight: boolean;
	/** The last verdict named one cause, and that is not it. */
	readonly standsFalse: boolean;
	readonly isEnded: boolean;
	/** How it stands in a list of misses. */
	readonly text: string;
}

/** A walk with a fault of the catalogue, each answer wrong as often as its check is said to be. */
function walkKnown(bench: RigOutcomes, { faults, came }: Candidate, random: Random): Said {
	const finder = finderOn(bench);
	let rig = faultyWitness(bench.meant, faults, came === 'warm' ? 'warm' : 'cold');
	let first: Verdict | null = null;
	let asked = 0;
	let repairs = 0;
	for (; asked < MOST; asked++) {
		const next = finder.next();
		const verdict = finder.verdict();
		if (verdict) first ??= verdict;
		const check = next?.check.id ?? (verdict?.confirmed ? undefined : verdict?.repairs[0]?.check);
		if (!check) break;
		const shown = finder.check(check)?.read(rig) ?? ELSE;
		const repair = repairTriedBy(check);
		if (repair) {
			const events = repairEvents(bench.sheet, rig.rig, repair);
			rig = witness(rig.after(`mended ${repairs++}`, () => events));
			finder.answer(check, shown);
		} else finder.answer(check, heard(finder, check, shown, random));
	}
	const last = finder.verdict();
	const name = textOf(faults);
	const names = (verdict: Verdict | null): boolean => verdict?.suspects.some(({ id }) => id === name) ?? false;
	return {
		about: 'known',
		family: 'known',
		sure: first === null || first.because === 'mended' ? null : first.sure,
		isRight: names(first),
		standsFalse: isSingle(last) && !names(last),
		isEnded: asked < MOST,
		text: `${bench.complaint.kind} ${bench.complaint.fixture}: ${name}, ${last?.because} ${last?.suspects.map(({ id }) => id).slice(0, 3)}`,
	};
}

const isSingle = (verdict: Verdict | null): boolean =>
	verdict !== null && verdict.because !== 'unknown' && verdict.suspects.length === 1;

/** An answer as a person gives it: now and then another of those offered. */
function heard(finder: Finder, check: string, shown: string, random: Random): string {
	const { check: asked, outcomes = [] } = finder.next() ?? {};
	const others = outcomes.map(({ id }) => id).filter((id) => id !== shown);
	const isSlip = random.next() < (finder.check(check)?.error ?? 0) && others.length > 0;
	if (isSlip) return random.pick(others);
	return asked?.id !== check || outcomes.some(({ id }) => id === shown) ? shown : ELSE;
}

/** Known faults of a rig, drawn by their weights, so many for each complaint. */
export function saidOfKnown(rig: RigId, each: number, seed: number, isWanted = (_: Complaint) => true): Said[] {
	const random = makeRandom(seed).fork(rig);
	const sheet = bundledRig(rig);
	return complaintsOf(meantWitness(sheet), sheet)
		.filter(isWanted)
		.flatMap((complaint) => {
			const bench = benchFor(rig, complaint);
			const all = bench.candidates.reduce((sum, { weight }) => sum + weight, 0);
			if (all === 0) return [];
			return Array.from({ length: each }, () => {
				let left = random.next() * all;
				const drawn = bench.candidates.find(({ weight }) => {
					left -= weight;
					return left < 0;
				});
				return walkKnown(bench, drawn ?? (bench.candidates[0] as Candidate), random);
			});
		});
}

/** A fault outside the catalogue, one walk for each thing complained of, or for the first of them. */
export function saidOfUnknown(family: string, fault: UnknownFault, isFirstAlone = false): Said[] {
	return complaintsWith(fault)
		.slice(0, isFirstAlone ? 1 : undefined)
		.map((complaint) => {
			const { first, last, because, asked } = walkUnknown(fault, complaint);
			return {
				about: 'unknown',
				family,
				sure: first === null || first.because === 'mended' ? null : first.sure,
				isRight: first !== null && isRight(fault, first),
				standsFalse: last !== null && isSingle(last) && !isRight(fault, last),
				isEnded: asked < MOST,
				text: `${fault.id}, ${complaint.kind}: ${because} ${last?.suspects.map(({ id }) => id).slice(0, 3)}`,
			};
		});
}

/** Edges of what is said, as shares. */
const EDGES = [0, 0.5, 0.7, 0.85, 0.9, 0.95, 1.01] as const;

/** The reliability table: of what was said at so much, how much was right. @param share of the unknown among all; left out, as walked */
export function reliability(list: readonly Said[], share?: number): Record<string, string | number>[] {
	const weightOf = weigh(list, share);
	return [...EDGES.slice(0, -1).map((from, i) => [from, EDGES[i + 1] ?? 1] as const), [0.9, 1.01] as const].map(
		([from, to]) => {
			const here = list.filter(({ sure }) => sure !== null && sure >= from && sure < to);
			const all = here.reduce((sum, each) => sum + weightOf(each), 0);
			const mean = (value: (said: Said) => number): string =>
				all === 0 ? '' : (here.reduce((sum, each) => sum + value(each) * weightOf(each), 0) / all).toFixed(3);
			return {
				said: `${from} to ${Math.min(1, to)}`,
				walks: here.length,
				'said, mean': mean(({ sure }) => sure ?? 0),
				right: mean((said) => (said.isRight ? 1 : 0)),
			};
		},
	);
}

function weigh(list: readonly Said[], share: number | undefined): (said: Said) => number {
	const unknown = list.filter(({ about }) => about === 'unknown').length;
	const known = list.length - unknown;
	if (share === undefined) return () => 1;
	return ({ about }) => (about === 'unknown' ? share / unknown : (1 - share) / known);
}

/** Share that is right of all verdicts said at 90 % or more. */
export function rightAtNinety(list: readonly Said[], share?: number): number {
	const weightOf = weigh(list, share);
	const said = list.filter(({ sure }) => sure !== null && sure >= 0.9);
	const sum = (of: readonly Said[]): number => of.reduce((total, each) => total + weightOf(each), 0);
	return sum(said.filter((each) => each.isRight)) / sum(said);
}
