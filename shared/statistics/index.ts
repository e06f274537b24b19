/**
 * The statistics a paper is judged by: means and correlations, how alike the questions of a paper measure (KR-20, Cronbach's
 * alpha), and 95 % intervals, also of answers that go together. Pure functions over lists of numbers; nonsense throws an `InputError`, and a figure that the
 * data cannot give (nobody differs from anybody) is null, never a number that looks like one.
 *
 * One convention throughout: variances divide by the number of people, as KR-20 has it (Kuder and Richardson 1937); the
 * variance of a sample would make it larger (shared facts: 0.6963 against 0.7378 on the same ten people).
 */

import jstat from 'jstat';
import { InputError, requireWhole } from '../error/index.ts';

/** The mean; null of no numbers. */
export function mean(values: readonly number[]): number | null {
	return values.length === 0 ? null : sum(values) / values.length;
}

/** The variance, divided by the number of values; null of no numbers. */
export function variance(values: readonly number[]): number | null {
	const middle = mean(values);
	return middle === null ? null : sum(values.map((value) => (value - middle) ** 2)) / values.length;
}

/**
 * Pearson's product-moment correlation, −1 to 1; null where either list has no spread. With one list of 0s and 1s it is the
 * point-biserial correlation.
 * @throws InputError `statistics.length` where the lists are not of one length.
 */
export function correlation(xs: readonly number[], ys: readonly number[]): number | null {
	if (xs.length !== ys.length)
		throw new InputError('statistics.length', '', { expected: 'same-length', xs: xs.length, ys: ys.length });
	const [middleX, middleY] = [mean(xs) ?? 0, mean(ys) ?? 0];
	let [xx, yy, xy] = [0, 0, 0];
	for (const [at, x] of xs.entries()) {
		const [dx, dy] = [x - middleX, (ys[at] ?? 0) - middleY];
		xx += dx * dx;
		yy += dy * dy;
		xy += dx * dy;
	}
	// a spread that is only the rounding of sums is none
	if (xx <= FAINT * xs.length * middleX ** 2 || yy <= FAINT * ys.length * middleY ** 2 || xx === 0 || yy === 0)
		return null;
	return Math.max(-1, Math.min(1, xy / Math.sqrt(xx * yy)));
}

const FAINT = 1e-24;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/**
 * Cronbach's alpha: k/(k − 1) (1 − Σ variance of each question / variance of the totals). How far the questions of a paper
 * measure one thing: 1 wholly, 0 not at all, below 0 they pull apart. Null with fewer than two questions or people, or
 * where all totals are equal. Source: Cronbach 1951.
 * @param scores `scores[person][question]`
 * @throws InputError `statistics.length` where people have different numbers of questions
 */
export function alpha(scores: readonly (readonly number[])[]): number | null {
	const questions = scores[0]?.length ?? 0;
	if (scores.some(({ length }) => length !== questions))
		throw new InputError('statistics.length', 'scores', { expected: 'score-for-each' });
	if (questions < 2 || scores.length < 2) return null;
	const whole = variance(scores.map((row) => row.reduce((total, score) => total + score, 0))) ?? 0;
	if (whole === 0) return null;
	let parts = 0;
	for (let at = 0; at < questions; at++) parts += variance(scores.map((row) => row[at] ?? 0)) ?? 0;
	return (questions / (questions - 1)) * (1 - parts / whole);
}

/**
 * Kuder and Richardson's formula 20: alpha of questions that are right (1) or wrong (0), where a question's variance is p q.
 * Source: Kuder and Richardson 1937. Null as for `alpha`.
 * @throws InputError `statistics.right` on any other score, and as `alpha`
 */
export function kr20(scores: readonly (readonly number[])[]): number | null {
	if (scores.some((row) => row.some((score) => score !== 0 && score !== 1)))
		throw new InputError('statistics.right', 'scores', { expected: 'right-or-wrong' });
	return alpha(scores);
}

/**
 * Feldt's 95 % interval of alpha or KR-20: 1 − (1 − alpha) F, with F at 97.5 % and 2.5 % of n − 1 and (n − 1)(k − 1) degrees
 * of freedom. Source: Feldt 1965; Feldt, Woodruff and Salih 1987. It may reach below 0. Null where there is no alpha.
 * @param people 2 and more @param questions 2 and more
 */
export function alphaInterval(figure: number | null, people: number, questions: number): Interval | null {
	if (figure === null || people < 2 || questions < 2) return null;
	const [one, two] = [people - 1, (people - 1) * (questions - 1)];
	return {
		from: 1 - (1 - figure) * jstat.centralF.inv(0.975, one, two),
		to: 1 - (1 - figure) * jstat.centralF.inv(0.025, one, two),
	};
}

/** From where to where, both 0 to 1. */
export interface Interval {
	readonly from: number;
	readonly to: number;
}

/** The standard normal's 97.5 % point. */
const Z = 1.959963984540054;

/**
 * Wilson's 95 % interval for a share: (p + z²/2n ± z √(p(1 − p)/n + z²/4n²)) / (1 + z²/n). Good for few people and for
 * shares near 0 or 1, where the textbook's p ± z √(p(1 − p)/n) runs past the ends. Null of nobody.
 * Source: Wilson 1927; Newcombe 1998, method 3.
 * @param hits whole, 0 to `of` @param of whole, 0 and more
 * @throws InputError `statistics.share`
 */
export function wilsonInterval(hits: number, of: number): Interval | null {
	requireShare(hits, of);
	if (of === 0) return null;
	const p = hits / of;
	const middle = p + Z ** 2 / (2 * of);
	const half = Z * Math.sqrt((p * (1 - p)) / of + Z ** 2 / (4 * of ** 2));
	const whole = 1 + Z ** 2 / of;
	return { from: hits === 0 ? 0 : (middle - half) / whole, to: hits === of ? 1 : (middle + half) / whole };
}

/**
 * The exact 95 % interval of Clopper and Pearson (1934), by the beta distribution: never too narrow, often too wide.
 * Null of nobody. @throws InputError `statistics.share`
 */
export function exactInterval(hits: number, of: number): Interval | null {
	requireShare(hits, of);
	if (of === 0) return null;
	return {
		from: hits === 0 ? 0 : jstat.beta.inv(0.025, hits, of - hits + 1),
		to: hits === of ? 1 : jstat.beta.inv(0.975, hits + 1, of - hits),
	};
}

function requireShare(hits: number, of: number): void {
	const code = 'statistics.share';
	requireWhole(of, { lo: 0, hi: Number.MAX_SAFE_INTEGER, code, path: 'of', of: 'share-of' });
	requireWhole(hits, { lo: 0, hi: of, code, path: 'hits', of: 'share-hits' });
}

/** A share of answers, each by a person to a question, where both are some of many. */
export interface CrossedShare {
	/** 95 %. 0 to 1 where there is no telling. */
	readonly interval: Interval;
	/** What most of the doubt comes from. */
	readonly from: 'people' | 'questions';
}

const ALL: Interval = Object.freeze({ from: 0, to: 1 });

/**
 * The 95 % interval of a share for people like these and questions like these. A person's answers go together, and so do the answers
 * to a question, so they are no people × questions separate trials: the variance is that of the persons' means plus that of the
 * questions' means (the two main effects of a crossed design, each by its own spread: Cronbach and others 1972), its degrees of
 * freedom are Satterthwaite's (1946), and both go into Clopper and Pearson's interval by way of as many separate answers as would be
 * as sure: Korn and Graubard 1998 (all from memory). What the two have in common is counted twice, which makes it a little wide.
 * Where all are right or all wrong there is no spread to go by, and the fewer of people and questions is taken for how many answers
 * there are.
 * @param scores `scores[person][question]`, 0 or 1
 * @returns null of nobody or nothing
 * @throws InputError `statistics.length` where people have different numbers of questions
 */
export function crossedShare(scores: readonly (readonly number[])[]): CrossedShare | null {
	const [people, questions] = [scores.length, scores[0]?.length ?? 0];
	if (scores.some(({ length }) => length !== questions))
		throw new InputError('statistics.length', 'scores', { expected: 'score-for-each' });
	if (people === 0 || questions === 0) return null;
	const byPerson = scores.map((row) => row.reduce((sum, score) => sum + score, 0));
	const byQuestion = Array.from({ length: questions }, (_, at) => scores.reduce((sum, row) => sum + (row[at] ?? 0), 0));
	const share = byPerson.reduce((sum, count) => sum + count, 0) / (people * questions);
	// of one alone nobody knows how much others would differ
	if (people < 2 || questions < 2) return { interval: ALL, from: people < 2 ? 'people' : 'questions' };
	const fewer = people < questions ? 'people' : 'questions';
	if (share === 0 || share === 1) return { interval: betaInterval(share, Math.min(people, questions)), from: fewer };
	const [ofPeople, ofQuestions] = [varianceOfMean(byPerson, questions), varianceOfMean(byQuestion, people)];
	const from = ofPeople === ofQuestions ? fewer : ofPeople > ofQuestions ? 'people' : 'questions';
	const answers = people * questions;
	const doubt = ofPeople + ofQuestions;
	// no spread of either: as of answers that are each on their own
	if (doubt === 0) return { interval: betaInterval(share, answers), from };
	const free = doubt ** 2 / (ofPeople ** 2 / (people - 1) + ofQuestions ** 2 / (questions - 1));
	const asSure = Math.min(answers, (share * (1 - share)) / doubt) * Math.min(1, tSquared(answers - 1) / tSquared(free));
	return { interval: betaInterval(share, asSure), from };
}

/** The variance of a mean share, from the spread of counts of so many each. In whole numbers, so that no order of adding shows. */
function varianceOfMean(counts: readonly number[], of: number): number {
	const n = counts.length;
	const [sum, squares] = counts.reduce(([a, b], count) => [a + count, b + count ** 2], [0, 0]) as [number, number];
	return (n * squares - sum ** 2) / (n ** 2 * (n - 1) * of ** 2);
}

/** The square of Student's t at 97.5 %, which is F at 95 % with 1 and so many degrees of freedom. */
const tSquared = (free: number): number => jstat.centralF.inv(0.95, 1, free);

/** Clopper and Pearson's interval (1934) with any number of answers above 0, whole or not. */
function betaInterval(share: number, answers: number): Interval {
	const right = share * answers;
	const from = right === 0 ? 0 : jstat.beta.inv(0.025, right, answers - right + 1);
	const to = right === answers ? 1 : jstat.beta.inv(0.975, right + 1, answers - right);
	// of far fewer than one answer the library knows no bound, and there is none
	return { from: Number.isFinite(from) ? Math.min(from, share) : 0, to: Number.isFinite(to) ? Math.max(to, share) : 1 };
}
