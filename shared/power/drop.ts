import { type ErrorFacts, InputError, requireNumber, shown } from '../error/index.ts';

/**
 * Ohms of a kilometre of flexible copper at 20 °C by its area in mm². Source: IEC 60228, class 5 (read in three restatements that
 * agree).
 */
export const COPPER_OHMS: Readonly<Record<string, number>> = Object.freeze({
	1: 19.5,
	1.5: 13.3,
	2.5: 7.98,
	4: 4.95,
	6: 3.3,
	10: 1.91,
	16: 1.21,
});

/** Copper's resistance grows by this share of its value at 20 °C with each degree (read in a restatement of IEC 60228). */
const PER_DEGREE = 0.00393;

/**
 * Volts lost along a single-phase cable: `2 I L R (1 + 0.00393 (t − 20))`, there and back, all of the load at the far end. Source:
 * the usual formula of handbooks with no reactance, which counts little in cables this thin.
 * @param amperes 0 or more
 * @param metres one way, 0 or more
 * @param area of a conductor, mm²: one of `COPPER_OHMS`
 * @param celsius of the copper, −40 to 90; 20 unless told
 * @throws InputError `power.range`, or `power.area` for an area that is not in the table
 */
export function voltDrop(amperes: number, metres: number, area: number, celsius = 20): number {
	const ohms = COPPER_OHMS[String(area)];
	if (ohms === undefined)
		throw new InputError('power.area', 'area', {
			expected: 'one-of',
			known: Object.keys(COPPER_OHMS),
			found: shown(area),
		});
	requireNumber(celsius, { lo: -40, hi: 90, code: 'power.range', path: 'celsius', of: 'celsius' });
	return (
		2 *
		requireFrom0(amperes, 'amperes', 'amperes') *
		(requireFrom0(metres, 'metres', 'metres') / 1000) *
		ohms *
		(1 + PER_DEGREE * (celsius - 20))
	);
}

type Of = Extract<ErrorFacts['power.range'], { readonly expected: 'from-0' }>['of'];

function requireFrom0(found: number, path: string, of: Of): number {
	if (!(typeof found === 'number' && found >= 0 && found < Number.POSITIVE_INFINITY))
		throw new InputError('power.range', path, { expected: 'from-0', of, found: shown(found) });
	return found;
}
