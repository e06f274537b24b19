import { hash01 } from '../../shared/random/index.ts';
import { xlog2 } from './gain.ts';
import type { TableSearch } from './table.ts';

/** Suspects below this share of the heaviest are left out of play: two wrong answers away, at an error rate of .05. */
export const FAINT = 0.003;

/** A check that tells less than this, in bits, is not worth asking. */
export const LEAST_TOLD = 1e-6;

/** Entropy, in bits, that is left when one repair holds the share `settled` and one other the rest. */
export function entropyAt(settled: number): number {
	return -xlog2(settled) - xlog2(1 - settled);
}

/** Who is in question: the first `size` of `suspects`, with their weights. */
interface SuspectsHeld {
	readonly weights: Float64Array;
	readonly suspects: Int32Array;
	size: number;
}

/** A first check, and where it is made. */
export interface SoftQuestion {
	/** Those in question, those with one repair side by side; the weights are the search's, of any sum. */
	readonly suspects: Int32Array;
	/** Those that may be made; quickest with those that are alike side by side. */
	readonly checks: Int32Array;
	readonly here: number;
}

/** Where a line of play stands after so many checks: working space, laid in anew for each answer. */
export interface PlayLevel extends SuspectsHeld {
	/** Those of them that are not faint: checks are ranked by them. */
	readonly near: Int32Array;
	/** The first `checksSize` of them tell something; what each tells a second, and what it takes. */
	readonly checks: Int32Array;
	readonly rates: Float64Array;
	readonly spent: Float64Array;
	checksSize: number;
	/** Bits that they tell, each by itself, and seconds that they take, together. */
	told: number;
	takes: number;
	/** Chance of being here. */
	chance: number;
	/** The place where the tech stands. */
	here: number;
	/** The sum of the marks of the answers that led here, in any order. */
	mark: number;
}

/** Working space for so many suspects and checks. */
export function makeLevel(suspects: number, checks: number): PlayLevel {
	return {
		weights: new Float64Array(suspects),
		suspects: new Int32Array(suspects),
		size: 0,
		near: new Int32Array(suspects),
		checks: new Int32Array(checks),
		rates: new Float64Array(checks),
		spent: new Float64Array(checks),
		checksSize: 0,
		told: 0,
		takes: 0,
		chance: 0,
		here: 0,
		mark: 0,
	};
}

/** Lays in where a line of play begins, the weights scaled to sum to 1. */
export function layFirst(
	level: SuspectsHeld & Pick<PlayLevel, 'checks' | 'checksSize' | 'chance' | 'here'>,
	weights: ArrayLike<number>,
	{ suspects, checks, here }: SoftQuestion,
): void {
	let sum = 0;
	for (const suspect of suspects) sum += weights[suspect] as number;
	for (const suspect of suspects) level.weights[suspect] = (weights[suspect] as number) / sum;
	level.suspects.set(suspects);
	level.checks.set(checks);
	level.size = suspects.length;
	level.checksSize = checks.length;
	level.chance = 1;
	level.here = here;
}

/** Lays in `next` the weights after an answer to a check that is wrong so often, not scaled; their sum, the chance of that answer. */
export function layAnswer(
	next: Float64Array,
	{ weights, suspects, size }: SuspectsHeld,
	{ table }: TableSearch,
	check: number,
	answer: number,
	errors: ArrayLike<number>,
): number {
	const count = table.counts[check] as number;
	const row = check * table.suspects;
	const error = count > 1 ? (errors[check] as number) : 0;
	const wrong = count > 1 ? error / (count - 1) : 0;
	let sum = 0;
	for (let i = 0; i < size; i++) {
		const suspect = suspects[i] as number;
		const outcome = table.cells[row + suspect] as number;
		const likely = outcome === answer ? 1 - error : outcome === count ? 1 / count : wrong;
		const weight = (weights[suspect] as number) * likely;
		next[suspect] = weight;
		sum += weight;
	}
	return sum;
}

/** The share of the heaviest repair, and the entropy over repairs in bits, of a level's weights over the suspects of `over`, those with one repair side by side. */
export function standingOf(
	{ weights }: SuspectsHeld,
	over: SuspectsHeld,
	repairs: Int32Array,
): { heaviest: number; entropy: number } {
	let heaviest = 0;
	let entropy = 0;
	let run = 0;
	for (let i = 0; i < over.size; i++) {
		const suspect = over.suspects[i] as number;
		if (i > 0 && repairs[suspect] !== repairs[over.suspects[i - 1] as number]) {
			entropy -= xlog2(run);
			run = 0;
		}
		run += weights[suspect] as number;
		if (run > heaviest) heaviest = run;
	}
	return { heaviest, entropy: entropy - xlog2(run) };
}

/** A mark for an answer to a check: their sum, modulo 2^52, stands for a set of answers. */
export function markOf(check: number, answer: number): number {
	const high = Math.floor(hash01(check, 2 * answer + 1) * 2 ** 26);
	return high * 2 ** 26 + Math.floor(hash01(check, 2 * answer + 2) * 2 ** 26);
}

export function swap(list: Float64Array | Int32Array, a: number, b: number): void {
	const kept = list[a] as number;
	list[a] = list[b] as number;
	list[b] = kept;
}

/** Lists the suspects of a level that are not faint, out of those of the level before, their weights scaled to sum to 1. */
export function dropFaint(level: SuspectsHeld, before: SuspectsHeld): void {
	const { weights, suspects } = level;
	let top = 0;
	for (let i = 0; i < before.size; i++) top = Math.max(top, weights[before.suspects[i] as number] as number);
	let kept = 0;
	let sum = 0;
	for (let i = 0; i < before.size; i++) {
		const suspect = before.suspects[i] as number;
		const weight = weights[suspect] as number;
		if (weight < top * FAINT) continue;
		suspects[kept++] = suspect;
		sum += weight;
	}
	for (let i = 0; i < kept; i++) weights[suspects[i] as number] = (weights[suspects[i] as number] as number) / sum;
	level.size = kept;
}

/** Lists the suspects of a level that are not faint in `near`; how many they are. */
export function nearOf({ weights, suspects, size, near }: PlayLevel): number {
	let top = 0;
	for (let i = 0; i < size; i++) top = Math.max(top, weights[suspects[i] as number] as number);
	let kept = 0;
	for (let i = 0; i < size; i++) {
		const suspect = suspects[i] as number;
		if ((weights[suspect] as number) >= top * FAINT) near[kept++] = suspect;
	}
	return kept;
}

/** Takes over all suspects of the level before. */
export function keepAll(level: PlayLevel, before: PlayLevel): void {
	for (let i = 0; i < before.size; i++) level.suspects[i] = before.suspects[i] as number;
	level.size = before.size;
}
