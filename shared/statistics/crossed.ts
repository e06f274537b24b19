import jstat from 'jstat';
import { InputError } from '../error/index.ts';
import type { Interval } from './proportion.ts';

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
