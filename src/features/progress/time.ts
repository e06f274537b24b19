/** A stretch of time, ms, as minutes and seconds: '0:42', '12:05'. */
export function minutesText(milliseconds: number): string {
	const seconds = Math.round(milliseconds / 1000);
	return `${Math.floor(seconds / 60)}:${`${seconds % 60}`.padStart(2, '0')}`;
}
