/** What checks take: their own seconds, what an outcome gives back, and the walk from where the tech stands. */
export interface Seconds {
	/** Seconds of each check where it stands, 0 or more. */
	readonly base: Float64Array;
	/** Seconds given back when `refundOutcome` is what the check shows, 0 to `base`. */
	readonly refund: Float64Array;
	/** Which outcome gives back; -1 for none. It means that the complaint is gone: `bestCheck` plays on no further. */
	readonly refundOutcome: Int32Array;
	/** The place of each check, 0 to `places - 1`. */
	readonly place: Int32Array;
	/** How many places there are, 1 or more. */
	readonly places: number;
	/** Seconds from place to place: `walk[from * places + to]`. */
	readonly walk: Float64Array;
}

/** Seconds of checks that stand side by side and give nothing back, or with what is given laid over that. */
export function makeSeconds(base: ArrayLike<number>, given: Partial<Omit<Seconds, 'base'>> = {}): Seconds {
	return {
		base: Float64Array.from(base),
		refund: new Float64Array(base.length),
		refundOutcome: new Int32Array(base.length).fill(-1),
		place: new Int32Array(base.length),
		places: 1,
		walk: new Float64Array(1),
		...given,
	};
}

/** Seconds of a check for a tech who stands at `here`: the walk and the check, nothing given back. */
export function secondsFrom(seconds: Seconds, here: number, check: number): number {
	const walk = seconds.walk[here * seconds.places + (seconds.place[check] as number)] as number;
	return walk + (seconds.base[check] as number);
}
