/** A time on the clock, and on which day before the show. */
export interface ClockTime {
	/** 0 to 23, and 0 to 59. */
	readonly hour: number;
	readonly minute: number;
	/** 0 for the day of the show. */
	readonly daysBefore: number;
}

const DAY = 24 * 60;
/** Minutes that times are told to: always the earlier. */
const STEP = 5;

/** Reads a time as a box for one has it, such as 19:30; null for none. */
export function readTime(text: string): { readonly hour: number; readonly minute: number } | null {
	const [, hour, minute] = /^([01]?\d|2[0-3])[:.]([0-5]\d)$/.exec(text.trim()) ?? [];
	return hour === undefined ? null : { hour: Number(hour), minute: Number(minute) };
}

/**
 * The latest time to plug in for a charge of so many hours to be done, rounded down to five minutes.
 * @param by when it is to be done, on the day of the show
 * @param hours 0 or more
 */
export function plugInBy(by: { readonly hour: number; readonly minute: number }, hours: number): ClockTime {
	// a hair of room: 2 h are 120 min, whatever the last bit of a division says
	const at = Math.floor((by.hour * 60 + by.minute - hours * 60 + 1e-6) / STEP) * STEP;
	const daysBefore = Math.max(0, -Math.floor(at / DAY));
	const minutes = at + daysBefore * DAY;
	return { hour: Math.floor(minutes / 60), minute: minutes % 60, daysBefore };
}
