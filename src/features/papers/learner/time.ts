/** Seconds as a clock face: '9:05', '1:02:00'. */
export function clockText(seconds: number): string {
	const whole = Math.max(0, Math.floor(seconds));
	const [hours, minutes, rest] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
	const two = (n: number) => String(n).padStart(2, '0');
	return hours > 0 ? `${hours}:${two(minutes)}:${two(rest)}` : `${minutes}:${two(rest)}`;
}
