import type { Band, Profile } from '../../shared/profile/index.ts';

/** What a value of a band slot does, as small numbers for the table; 0 leaves the light alone. */
export const CLOSES = 1;
export const STROBES = 2;
export const HOLDS = 3;
export const RUNS = 4;

/** One band slot, looked up by value 0..255. */
export interface BandTable {
	/** `CLOSES`, `STROBES`, `HOLDS`, `RUNS`, or 0. */
	readonly does: Uint8Array;
	/** Index of the held colour or programme, where it has one. */
	readonly which: Uint16Array;
	/** Flashes a second, where it strobes. */
	readonly rate: Float32Array;
}

/** Flashes a second at a value of a strobe band: from slow at its first value to fast at its last, in a straight line. */
function strobeRate(band: { from: number; to: number }, slow: number, fast: number, value: number): number {
	return band.to === band.from ? slow : slow + ((fast - slow) * (value - band.from)) / (band.to - band.from);
}

/** Lays a slot's bands out by value. A value in no band leaves the light alone. */
export function bandTable(profile: Profile, bands: readonly Band[]): BandTable {
	const does = new Uint8Array(256);
	const which = new Uint16Array(256);
	const rate = new Float32Array(256);
	for (const band of bands) {
		const { effect } = band;
		for (let value = Math.max(0, band.from); value <= Math.min(255, band.to); value++) {
			switch (effect.do) {
				case 'dark':
					does[value] = CLOSES;
					break;
				case 'strobe':
					does[value] = STROBES;
					rate[value] = strobeRate(band, effect.slow, effect.fast, value);
					break;
				case 'held':
					does[value] = HOLDS;
					which[value] = profile.held.findIndex((it) => it.id === effect.held);
					break;
				case 'programme':
					does[value] = RUNS;
					which[value] = profile.programmes.findIndex((it) => it.id === effect.programme);
					break;
				case 'open':
				case 'nothing':
					break;
			}
		}
	}
	return { does, which, rate };
}
