import { makeOutcomeTable, makeSeconds, type TableSearch } from '../sequence/index.ts';
import type { WalkTable } from './route.ts';
import type { Candidate, RigOutcomes } from './table.ts';
import { isRepair } from './tried.ts';

/** The share one repair must hold for the walk to end. */
export const SURE = 0.95;

/**
 * An answer to any check but a repair: what was seen is nothing that any suspect would show. It speaks against all of them, and so
 * for what the model does not know.
 */
export const ELSE = 'something-else';

/** Text of a candidate's faults: permanent for a rig. */
export const idOf = ({ faults }: Pick<Candidate, 'faults'>): string =>
	faults.map(({ fault, place, detail }) => `${fault}@${place}${detail ? `:${detail}` : ''}`).join('+');

/**
 * The bench as the solver takes it, with one suspect more at the end: what the model does not know, which predicts nothing.
 * @param standing for each candidate, the one whose outcomes it shows by now (two faults with one repaired show the other's alone); -1 for none
 */
export function layOut(
	bench: RigOutcomes,
	ground: WalkTable,
	standing: readonly number[],
): Omit<TableSearch, 'weights'> {
	const table = makeOutcomeTable(
		bench.outcomes.map((row) => [...standing.map((at) => row[at] ?? null), null]),
		standing.length + 1,
		bench.checks.map((check, at) => (isRepair(check) ? ['still', 'cleared'] : [...new Set(bench.outcomes[at])])),
	);
	const repairs = new Map<string, number>();
	const repairOf = (repair: string): number => {
		const at = repairs.get(repair) ?? repairs.size;
		repairs.set(repair, at);
		return at;
	};
	return {
		table,
		repairs: Int32Array.from([
			...standing.map((at, own) => repairOf((bench.candidates[at] ?? bench.candidates[own])?.repair ?? '')),
			repairOf('unknown'),
		]),
		seconds: makeSeconds(
			bench.checks.map(({ seconds }) => seconds),
			{
				// a repair that clears the complaint is done: its seconds were not spent on finding alone
				refund: Float64Array.from(bench.checks, (check) => (isRepair(check) ? check.seconds : 0)),
				refundOutcome: Int32Array.from(bench.checks, (check, at) =>
					isRepair(check) ? (table.labels[at] ?? []).indexOf('cleared') : -1,
				),
				place: Int32Array.from(bench.checks, ({ at }) => ground.indexOf(at)),
				places: ground.places.length,
				walk: ground.walk,
			},
		),
		settled: SURE,
	};
}

/** Weights of what the finder knows and of what it does not, on one scale that sums to one. */
export interface Belief {
	/** By candidate. */
	readonly known: Float64Array;
	/**
	 * By candidate, a fault the finder does not know that looks much as that candidate does. Such a fault is what an unknown one is
	 * taken for: it shows what some known one shows, but at each check it may show anything, and known repairs seldom help it.
	 */
	readonly unlike: Float64Array;
}

/** The weight of what the finder does not know, against all it knows (common practice, no source). */
const UNKNOWN = 0.03;

/** Chance that a fault not known shows something of its own at a check, where any answer is as likely as the next (ours, no source). */
const OWN_WAY = 0.25;

/** Chance that the repair of the fault it looks like clears it all the same (ours, no source). */
const LUCK = 0.3;

/** What is not known keeps this share, whatever is answered (ours, no source). */
const FLOOR = 0.01;

/** What is left of the weight of a suspect whose repair was made and did not help: too little to be heard, and no hard nothing. */
const RULED_OUT = 1e-6;

/** What was heard: a check's answer, and what each candidate had predicted; null for nothing. */
export interface CheckAnswer {
	readonly predicted: readonly (string | null)[];
	readonly said: string;
	/** How many answers the check can have, 1 or more. */
	readonly answers: number;
	/** Chance of a wrong answer, 0 to below 1. */
	readonly error: number;
	/** Whether the check is a repair, tried. */
	readonly isRepair: boolean;
}

/** Before anything is answered. @param weights of the candidates, on any scale */
export function beginWith(weights: readonly number[]): Belief {
	const sum = weights.reduce((total, weight) => total + weight, 0);
	const known = Float64Array.from(weights, (weight) => (sum > 0 ? weight / sum : 0));
	return { known, unlike: known.map((weight) => weight * UNKNOWN) };
}

/**
 * Weights after an answer. A candidate that predicts it keeps `1 − error` of its weight; one that predicts another keeps its share of
 * the error; one that predicts nothing takes every answer for as likely as the next. Never a hard zero.
 */
export function hear({ known, unlike }: Belief, { predicted, said, answers, error, isRepair }: CheckAnswer): Belief {
	const others = Math.max(1, answers - 1);
	const any = 1 / Math.max(2, answers);
	const heard = known.map((weight, at) => {
		const says = predicted[at] ?? null;
		return weight * (says === null ? any : says === said ? 1 - error : error / others);
	});
	// one answer more than the check has: what nobody would show
	const own = OWN_WAY / (answers + 1);
	const odd = unlike.map((weight, at) => {
		const says = predicted[at] ?? null;
		if (isRepair) return weight * repairLikely(says, said, error);
		return weight * (says === null ? any : says === said ? 1 - OWN_WAY + own : own);
	});
	const sum = total(heard) + total(odd);
	return sum > 0
		? { known: heard.map((each) => each / sum), unlike: odd.map((each) => each / sum) }
		: { known, unlike };
}

function repairLikely(predicted: string | null, said: string, error: number): number {
	const clears = predicted === 'cleared' ? LUCK : error;
	return said === 'cleared' ? clears : 1 - clears;
}

/**
 * The shares of all that is in question, those of the candidates in their order and what is not known last; they sum to one.
 * @param isOut by candidate, whether its own repair has ruled it out
 */
export function sharesOf({ known, unlike }: Belief, isOut: readonly boolean[]): Float64Array {
	const left = known.map((weight, at) => (isOut[at] ? weight * RULED_OUT : weight));
	const [sure, odd] = [total(left), total(unlike)];
	const unknown = sure > 0 ? Math.max(FLOOR, odd / (sure + odd)) : 1;
	return Float64Array.from([...left.map((weight) => (sure > 0 ? (weight / sure) * (1 - unknown) : 0)), unknown]);
}

const total = (weights: Float64Array): number => weights.reduce((sum, weight) => sum + weight, 0);
