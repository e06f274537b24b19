import { DRILL_IDS, type DrillKind, isUnseen, seedInTurn } from '../../../sim/drill/index.ts';

/** What a fragment asks for. */
export type DrillRequest =
	| { readonly is: 'drill'; readonly kind: DrillKind; readonly seed: number }
	/** A kind, and whichever drill of it. */
	| { readonly is: 'any'; readonly kind: DrillKind }
	/** Nothing at all: no fragment. */
	| { readonly is: 'nothing' }
	| { readonly is: 'bad' };

/** Reads a fragment, with or without its `#`. What is not exactly a kind and a seed is bad, and nothing of it is used. */
export function readAsked(fragment: string): DrillRequest {
	const text = fragment.replace(/^#/, '');
	if (text === '') return { is: 'nothing' };
	const [, id, digits] = /^kind=([a-z0-9-]{1,60})(?:&seed=(\d{1,16}))?$/.exec(text) ?? [];
	const kind = DRILL_IDS.find((each) => each === id);
	if (kind === undefined) return { is: 'bad' };
	if (digits === undefined) return { is: 'any', kind };
	const seed = Number(digits);
	return Number.isSafeInteger(seed) ? { is: 'drill', kind, seed } : { is: 'bad' };
}

/** The fragment, with its `#`, that asks for a drill. */
export const drillLink = (kind: DrillKind, seed: number): string => `#kind=${kind}&seed=${seed}`;

/**
 * A seed by chance for a kind. Of panels never seen it is the turn of another law than the one before, by how many of them were begun.
 * @param begun seeds of the kind begun so far, on this device
 */
export const seedFor = (kind: DrillKind, begun: number): number =>
	isUnseen(kind) ? seedInTurn(anySeed(), begun) : anySeed();

/** A seed by chance after another of the same kind: of panels never seen the next law and the next goal. */
export const seedAfter = (kind: DrillKind, seed: number): number =>
	isUnseen(kind) ? seedInTurn(anySeed(), seed + 1) : anySeed(seed);

/** A seed by chance, 0 to 2^32 - 1, other than this one. */
export function anySeed(not?: number): number {
	const [seed = 0] = crypto.getRandomValues(new Uint32Array(1));
	return seed === not ? (seed + 1) % 2 ** 32 : seed;
}
