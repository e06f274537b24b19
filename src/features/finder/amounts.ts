import { amountWords } from '#words/finder/index.ts';

/** Seconds as people say them: to the second under a minute, to five seconds under ten minutes, then to the minute. */
export function timeText(seconds: number): string {
	if (seconds < 59.5) return amountWords.seconds(Math.round(seconds));
	const step = seconds < 600 ? 5 : 60;
	const whole = Math.round(seconds / step) * step;
	return amountWords.minutes(Math.floor(whole / 60), whole % 60);
}

/** A share of 0 to 1 in whole percent; what is there never rounds to nothing. */
export function shareText(share: number): string {
	return share < 0.005 ? amountWords.hardly : amountWords.percent(Math.round(share * 100));
}
