/**
 * The statistics a paper is judged by: means and correlations, how alike the questions of a paper measure (KR-20, Cronbach's
 * alpha), and 95 % intervals, also of answers that go together. Pure functions over lists of numbers; nonsense throws an `InputError`, and a figure that the
 * data cannot give (nobody differs from anybody) is null, never a number that looks like one.
 *
 * One convention throughout: variances divide by the number of people, as KR-20 has it (Kuder and Richardson 1937); the
 * variance of a sample would make it larger (shared facts: 0.6963 against 0.7378 on the same ten people).
 */
export { type CrossedShare, crossedShare } from './crossed.ts';
export { correlation, mean, variance } from './moments.ts';
export { exactInterval, type Interval, wilsonInterval } from './proportion.ts';
export { alpha, alphaInterval, kr20 } from './reliability.ts';
