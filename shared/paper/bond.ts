/**
 * A secondary safety bond as it was rigged, and what is wrong with it. What a bond must be comes from the maker's manual, the rules of
 * the place and the person in charge of rigging; here is only what is wrong anywhere.
 */
export interface Bond {
	/** What it goes round. Pipe and truss chord are taken to be rated for the load by whoever is in charge of rigging. */
	readonly around: 'pipe' | 'truss-chord' | 'conduit' | 'tray';
	/** Where it holds the fixture: at the point the maker gives for it, at the arms it tilts in alone, or at its handle. */
	readonly to: 'makers-point' | 'yoke' | 'handle';
	/** Centimetres that the fixture would drop before the bond takes it. */
	readonly slack: number;
	/** Kilograms on its tag; 0: no tag. */
	readonly rated: number;
	/** Whether its link is closed, and screwed home. */
	readonly closed: boolean;
	/** `shocked`: it has caught a load before. */
	readonly state: 'good' | 'frayed' | 'shocked';
}

/**
 * Most slack, in centimetres: 150 mm is trade advice, no source (as in the lesson `floor-bracket-clamp-bond`); what the maker or the
 * person in charge says comes first.
 */
export const MOST_SLACK = 15;

export type BondFlaw = 'around' | 'to' | 'long' | 'rating' | 'open' | 'worn';

/** What is wrong with a bond on a fixture of so many kilograms, with everything on it; none: nothing that can be read off here. */
export function flawsOf({ around, to, slack, rated, closed, state }: Bond, kilograms: number): BondFlaw[] {
	const flaws: (readonly [BondFlaw, boolean])[] = [
		['around', around === 'conduit' || around === 'tray'],
		['to', to !== 'makers-point'],
		['long', slack > MOST_SLACK],
		['rating', rated < kilograms],
		['open', !closed],
		['worn', state !== 'good'],
	];
	return flaws.flatMap(([flaw, isSo]) => (isSo ? [flaw] : []));
}
