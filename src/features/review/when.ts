import { reviewWords } from '#words/review/index.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** How long until then, in words, to the nearest that a person would say. @param due and @param now ms since 1970 */
export function whenText(due: number, now: number): string {
	const { when } = reviewWords;
	const left = due - now;
	if (left <= 0) return when.now;
	if (left < 90 * MINUTE) return when.minutes(Math.max(1, Math.round(left / MINUTE)));
	if (left < 20 * HOUR) return when.hours(Math.round(left / HOUR));
	if (left < 60 * DAY) return when.days(Math.max(1, Math.round(left / DAY)));
	return when.months(Math.round(left / (30 * DAY)));
}
