import jstat from 'jstat';
import { InputError } from '../error/index.ts';
import { variance } from './moments.ts';
import type { Interval } from './proportion.ts';

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
