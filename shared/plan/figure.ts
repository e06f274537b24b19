/** How a number came about: somebody said it, a profile says it, it is taken for want of better, or it follows from others. */
export type How = 'given' | 'profile' | 'assumed' | 'computed';

/** What goes into a figure, in the order of its sum. */
export interface FigurePart {
	readonly id:
		| 'watts'
		| 'volts'
		| 'power-factor'
		| 'metres'
		| 'ohms-per-km'
		| 'celsius'
		| 'amperes'
		| 'breaker'
		| 'watt-hours'
		| 'share'
		| 'look-watts'
		| 'charge-watts'
		| 'kilograms'
		| 'fixtures'
		| 'unknown'
		| 'battery-hours'
		| 'hours'
		| 'link'
		| 'surge'
		| 'times'
		| 'charging-watts';
	readonly value: number;
	readonly how: How;
}

export type FigureId =
	| 'watts'
	| 'amperes'
	| 'breaker-left'
	| 'lasting-left'
	| 'volt-drop'
	| 'drop-percent'
	| 'link-left'
	| 'surge'
	| 'surge-left'
	| 'charge-amperes'
	| 'battery-hours'
	| 'hours-spare'
	| 'charge-hours'
	| 'weight'
	| 'unit-loads'
	| 'cable-metres';

/** One number of the plan with its sum. Never a verdict: what a supply, a point or a night may take is for who is on site to say. */
export interface Figure {
	readonly id: FigureId;
	/** A circuit, a profile id, or a run as `universe.run`; empty for the whole plan. */
	readonly of: string;
	/** Null where something that nobody has given is needed first. */
	readonly value: number | null;
	readonly parts: readonly FigurePart[];
	/** What has to be given before it can be worked out. */
	readonly needs: 'breaker' | 'cable' | 'weight' | 'link' | 'surge' | 'curve' | 'electrician' | 'us-or-curve' | null;
}

/** A number that goes into a figure. */
export const part = (id: FigurePart['id'], value: number, how: How): FigurePart => ({ id, value, how });
/** A figure for which nothing is wanting. */
export const figure = (id: FigureId, of: string, value: number | null, parts: readonly FigurePart[]): Figure => ({
	id,
	of,
	value,
	parts,
	needs: null,
});

/**
 * What was given of some fixtures, added up: the sum is worked out, and stands among the parts only where somebody gave one of its
 * numbers.
 * @param each of each fixture; undefined where nobody gave it
 */
export function addedUp(
	id: FigurePart['id'],
	each: readonly (number | undefined)[],
): { readonly sum: number; readonly parts: readonly FigurePart[]; readonly unknown: number } {
	const known = each.filter((value) => value !== undefined);
	const sum = known.reduce((all, value) => all + value, 0);
	const unknown = each.length - known.length;
	return {
		sum,
		unknown,
		parts: [
			...(known.length > 0 ? [part(id, sum, 'computed')] : []),
			part('fixtures', each.length, 'given'),
			...(unknown > 0 ? [part('unknown', unknown, 'computed')] : []),
		],
	};
}
