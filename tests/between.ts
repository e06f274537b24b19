import fc from 'fast-check';

/**
 * A number from `min` to `max`, both included: three in four evenly spread over the way, the rest by its bits, as fast-check draws a
 * double. By bits alone nearly all that lies between 0 and 90 is less than a millionth, and a property over it holds next to nothing.
 */
export function between(min: number, max: number): fc.Arbitrary<number> {
	const steps = 2 ** 30;
	return fc.oneof(
		{ weight: 3, arbitrary: fc.nat(steps).map((step) => Math.min(max, min + ((max - min) * step) / steps)) },
		{ weight: 1, arbitrary: fc.double({ min, max, noNaN: true }) },
	);
}
