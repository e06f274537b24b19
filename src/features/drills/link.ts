import {
	DRILL_IDS,
	type DrillKind,
	isUnseen,
	seedInTurn,
	UNSEEN_LAW_TURNS,
	UNSEEN_TURNS,
} from '../../../sim/drill/index.ts';

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
 * A seed by chance for a kind. Of panels never seen it is one of the turn that was begun least, and never of the law of the last one.
 * @param tried seeds of the kind begun so far on this device, in any order
 * @param last the one of them that was begun last, where that is known
 */
export const seedFor = (kind: DrillKind, tried: readonly number[], last?: number): number =>
	isUnseen(kind) ? seedInTurn(anySeed(), turnAfter(tried, last)) : anySeed();

/**
 * Seeds begun after which they say no more which turn was begun least: a device keeps somewhat more of them (`MOST_TRIED`), and then
 * drops the lowest, not the oldest.
 */
const MOST_COUNTED = 256;

/** A turn of another law than the last: that begun least, of some alike the first, so that law follows law; past counting, any. */
function turnAfter(tried: readonly number[], last: number | undefined): number {
	const turns = Array.from({ length: UNSEEN_TURNS }, (_, turn) => turn);
	const others = turns.filter((turn) => last === undefined || turn % UNSEEN_LAW_TURNS !== last % UNSEEN_LAW_TURNS);
	if (tried.length >= MOST_COUNTED) return others[anySeed() % others.length] ?? 0;
	const begun = Map.groupBy(tried, (seed) => seed % UNSEEN_TURNS);
	const times = (turn: number): number => begun.get(turn)?.length ?? 0;
	return others.toSorted((a, b) => times(a) - times(b))[0] ?? 0;
}

/** A seed by chance after another of the same kind: of panels never seen the next law and the next goal. */
export const seedAfter = (kind: DrillKind, seed: number): number =>
	isUnseen(kind) ? seedInTurn(anySeed(), seed + 1) : anySeed(seed);

/** A seed by chance, 0 to 2^32 - 1, other than this one. */
export function anySeed(not?: number): number {
	const [seed = 0] = crypto.getRandomValues(new Uint32Array(1));
	return seed === not ? (seed + 1) % 2 ** 32 : seed;
}
