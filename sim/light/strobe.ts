/** Share of each flash that is lit. `common practice, no source`: real gear gives anything from a blink to a half. */
export const STROBE_DUTY = 0.5;

/**
 * Whether a strobe is lit at a moment: 1 in the first half of each flash, 0 in the second.
 * @param hz flashes a second; 0 or less is a steady light, always 1
 * @param elapsedMs milliseconds since the strobing began
 */
export function strobeGate(hz: number, elapsedMs: number): 0 | 1 {
	if (!(hz > 0)) return 1;
	const flashes = (elapsedMs / 1000) * hz;
	return flashes - Math.floor(flashes) < STROBE_DUTY ? 1 : 0;
}
