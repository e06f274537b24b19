import { type Learnt, learn } from '../../../sim/finder/index.ts';
import {
	type BrowserStore,
	dropText,
	isNewer,
	KEPT,
	moveAside,
	putInPlace,
	readRecord,
	textAt,
} from '../../storage/index.ts';
import type { FinderScene, HandedNote } from './scene.ts';
import type { VerdictView } from './view.ts';
import type { FinderRecord, FinderWalk, WalkFound } from './walk.ts';

/** The finder's two kept things: its walk with what the gig allows, and its count of verdicts. */
type KeptOf = 'walk' | 'verdicts';

/** The text that is kept of either; null where there is none, or none may be read; `newer` where it is not for this version. */
export function found(store: BrowserStore, what: KeptOf): { readonly text: string; readonly isNewer: boolean } | null {
	const text = textAt(store, KEPT[what].key);
	return text === null ? null : { text, isNewer: isNewer(text, KEPT[what]) };
}

/** Keeps the walk and what the gig allows. */
export const keepWalk = (store: BrowserStore, { allows, walk }: FinderRecord): ReturnType<typeof putInPlace> =>
	putInPlace(store, KEPT.walk, JSON.stringify({ version: KEPT.walk.version, allows, walk }));

/**
 * Keeps what is yet to be read of a walk that was handed on, and no longer once it was. It has a place of its own beside the walk:
 * earlier versions of the site take a walk that says more than they know for a damaged one.
 */
export function keepNote(store: BrowserStore, { walk, note }: FinderScene): ReturnType<typeof putInPlace> {
	const { key, version } = KEPT.handed;
	if (walk && note) return putInPlace(store, KEPT.handed, JSON.stringify({ version, began: walk.began, note }));
	if (textAt(store, key) !== null) dropText(store, key);
	return 'kept';
}

/** What is yet to be read of this walk; null where that is nothing. */
export function keptNote(store: BrowserStore, walk: FinderWalk | null): HandedNote | null {
	const text = textAt(store, KEPT.handed.key);
	const found = text === null ? null : readRecord(text, KEPT.handed);
	if (!walk || !found) return null;
	// better read once too often
	if (found.is !== 'record') return 'taken';
	if (found.record['began'] !== walk.began) return null;
	return found.record['note'] === 'aside' ? 'aside' : 'taken';
}

/** Keeps the count of verdicts, apart from any walk. */
export const keepCounts = (store: BrowserStore, counts: Learnt): ReturnType<typeof putInPlace> =>
	putInPlace(store, KEPT.verdicts, JSON.stringify({ version: KEPT.verdicts.version, counts }));

/**
 * Moves what stands there out of the way, so that it is not lost: it could not be read, or another walk comes in by a link.
 * @returns false where there is no room, or the store refuses: it stays where it was
 */
export function setAside(store: BrowserStore, what: KeptOf, why: 'damaged' | 'link' = 'damaged'): boolean {
	const { key } = KEPT[what];
	const text = textAt(store, key);
	return text === null || moveAside(store, { place: key, text, why, now: Date.now() });
}

/** Share of what a repair may have cleared at which one kind of fault is taken to have been it. */
const LIKELY = 0.5;

/** Kinds of the faults a verdict adds to the count: none before a repair has confirmed it, nor where it may as well have been another. */
export function countable(verdict: VerdictView | null): readonly string[] {
	if (verdict?.because !== 'mended') return [];
	const shares = new Map<string, { readonly faults: readonly string[]; share: number }>();
	for (const { faults, share } of verdict.causes) {
		const kind = faults.join('+');
		const known = shares.get(kind);
		if (known) known.share += share;
		else shares.set(kind, { faults, share });
	}
	return [...shares.values()].find(({ share }) => share >= LIKELY)?.faults ?? [];
}

/** What a plan is told of a verdict that a repair has confirmed; undefined before, and where the verdict does not name the one that was done. */
function foundOn({ steps }: FinderWalk, verdict: VerdictView | null, at: number): WalkFound | undefined {
	const [cause, ...others] = verdict?.causes ?? [];
	if (verdict?.because !== 'mended' || !cause) return undefined;
	const tried = steps.at(-1)?.check;
	const repair = verdict.repairs.find(({ check }) => check === tried);
	return repair && { was: cause.name, isSure: others.length === 0, repair: repair.title, other: cause.other, at };
}

/**
 * A walk that began from a plan with what that is told: what a repair has confirmed, and no longer when it is taken back. The same
 * walk where nothing changes.
 * @param now ms since 1970
 */
export function withFound(walk: FinderWalk, verdict: VerdictView | null, now: number): FinderWalk {
	if (walk.plan === undefined) return walk;
	const { found: was, ...rest } = walk;
	const told = foundOn(walk, verdict, was?.at ?? now);
	if (JSON.stringify(told) === JSON.stringify(was)) return walk;
	return told ? { ...rest, found: told } : rest;
}

/** The count with one verdict fewer: it was taken back. */
export function unlearn(learnt: Learnt, faults: readonly string[]): Learnt {
	const next: Record<string, number> = { ...learnt };
	for (const fault of faults) {
		const left = (next[fault] ?? 0) - 1;
		if (left > 0) next[fault] = left;
		else delete next[fault];
	}
	return next;
}

/** Verdicts counted, over all faults. */
export const totalOf = (learnt: Learnt): number => Object.values(learnt).reduce((sum, count) => sum + count, 0);

/** A verdict that a repair has confirmed is counted once, and no longer counted when it is taken back. @returns null where nothing changes */
export function withCount({ walk, view, learnt }: FinderScene): Pick<FinderScene, 'learnt' | 'walk'> | null {
	const faults = countable(view?.verdict ?? null);
	if (!walk || faults.length > 0 === walk.counted.length > 0) return null;
	const seen = faults.map((fault) => ({ fault, place: '' }));
	return {
		learnt: seen.length > 0 ? learn(learnt, seen) : unlearn(learnt, walk.counted),
		walk: { ...walk, counted: faults },
	};
}
