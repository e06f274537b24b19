/** Hours, minutes, seconds of a number of milliseconds: `1:04:09`. */
export function timeText(ms: number): string {
	const seconds = Math.floor(ms / 1000);
	const two = (n: number) => `${n}`.padStart(2, '0');
	return `${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
}
