/** Where a drill's steps are kept between visits. */
const KEY = 'prep-bay.hidden';

/** A drill as it is kept: which, by its link, the checks done, and whether it was given up. */
export interface Kept {
	readonly drill: string;
	readonly steps: readonly string[];
	readonly gaveUp: boolean;
}

/** The device's store; getting at it may be refused. */
type Store = () => Pick<Storage, 'getItem' | 'setItem'>;

/** What is kept of this drill; null where there is nothing, or nothing that can be read. */
export function keptOf(store: Store, drill: string): Kept | null {
	try {
		const kept: unknown = JSON.parse(store().getItem(KEY) ?? 'null');
		return isKept(kept) && kept.drill === drill ? kept : null;
	} catch {
		return null;
	}
}

/** Keeps a drill in the place of the last. Where the device refuses, the drill goes on unkept. */
export function keep(store: Store, kept: Kept): void {
	try {
		store().setItem(KEY, JSON.stringify(kept));
	} catch {
		// private browsing, or full: the drill can be had again from its link
	}
}

function isKept(kept: unknown): kept is Kept {
	const { drill, steps, gaveUp } = (kept ?? {}) as Partial<Record<keyof Kept, unknown>>;
	return (
		typeof drill === 'string' &&
		typeof gaveUp === 'boolean' &&
		Array.isArray(steps) &&
		steps.length <= 1000 &&
		steps.every((step) => typeof step === 'string')
	);
}
