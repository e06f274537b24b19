/**
 * Emitters as chromaticities, on or near the CIE 1931 locus (read: 465 nm .1355 .0399; 525 nm .1142 .8262;
 * 590 nm .5752 .4242; 625 nm .7006 .2993) and LED illuminants (read: LED-B4 .3422 .3502).
 * A real emitter sits a little inside the locus.
 */
export const CHROMATICITY: Readonly<Record<string, readonly [number, number]>> = Object.freeze({
	red: [0.7006, 0.2993],
	green: [0.1142, 0.8262],
	blue: [0.1355, 0.0399],
	amber: [0.5752, 0.4242],
	white: [0.3422, 0.3502],
	/** LED-B1, 2733 K, from memory. */
	'warm-white': [0.456, 0.4078],
	/** LED-B5, 6598 K, from memory. */
	'cool-white': [0.3118, 0.3236],
	/** A lime phosphor, from memory. */
	lime: [0.41, 0.54],
	/** 500 nm, from memory. */
	cyan: [0.0082, 0.5384],
	/** 395 nm, from memory: the far violet end of the locus. */
	ultraviolet: [0.1738, 0.005],
});
