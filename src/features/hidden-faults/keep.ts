import { type BrowserStore, KEPT, moveAside, putInPlace, readJson, textAt } from '../../storage/index.ts';

/** A drill as it is kept: which, by its link, the checks done, and whether it was given up. */
export interface HiddenDrillRecord {
	readonly drill: string;
	readonly steps: readonly string[];
	readonly gaveUp: boolean;
}

const { hidden } = KEPT;

/** What is kept of this drill; null where there is nothing. What cannot be read is set aside, since the next is kept in its place. */
export function keptOf(store: BrowserStore, drill: string): HiddenDrillRecord | null {
	const text = textAt(store, hidden.key);
	if (text === null) return null;
	const found = readJson(text, hidden.bounds);
	const kept = typeof found === 'string' ? null : found.value;
	if (isKept(kept)) return kept.drill === drill ? kept : null;
	moveAside(store, { place: hidden.key, text, why: 'damaged', now: Date.now() });
	return null;
}

/** Keeps a drill in the place of the last. Where the device refuses, the drill goes on unkept: it can be had again from its link. */
export function keep(store: BrowserStore, kept: HiddenDrillRecord): void {
	putInPlace(store, hidden, JSON.stringify(kept));
}

function isKept(kept: unknown): kept is HiddenDrillRecord {
	const { drill, steps, gaveUp } = (kept ?? {}) as Partial<Record<keyof HiddenDrillRecord, unknown>>;
	return (
		typeof drill === 'string' &&
		typeof gaveUp === 'boolean' &&
		Array.isArray(steps) &&
		steps.length <= 1000 &&
		steps.every((step) => typeof step === 'string')
	);
}
