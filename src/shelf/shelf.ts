import { isInputError } from '../../shared/error/index.ts';

/** Asked for late: a browser may refuse it by throwing. */
export type Store = () => Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** What was read: what could be, and what could not, by the name it stood under. */
export interface Read<T> {
	readonly kept: T;
	readonly damaged: Readonly<Record<string, unknown>>;
}

/** What was found on the device. */
export interface Found<T> {
	readonly kept: T;
	/** Entries set aside just now; `whole` where nothing of it could be read; null where all is well. */
	readonly damaged: number | 'whole' | null;
	/** False where the device refuses to keep anything. */
	readonly keeps: boolean;
}

export interface Shelf<T> {
	open(store: Store): Promise<Found<T>>;
	/** @returns what is there then */
	change(store: Store, change: (kept: T) => T): Promise<Found<T>>;
	/** What was set aside so far, as text; null where there is none. */
	aside(store: Store): string | null;
	/** Gone, and what was set aside with it. Returns false where the store refuses. */
	clear(store: Store): boolean;
}

/**
 * A shelf for one kind of thing.
 * @param key where it is kept; what is damaged goes to `<key>.damaged`, a list to which more may be added
 * @param none what there is where nothing was kept
 * @param read from text; throws InputError where the whole cannot be read
 */
export function shelfOf<T>(
	key: string,
	none: T,
	read: () => Promise<(text: string) => Read<T>>,
	write: (kept: T) => string,
): Shelf<T> {
	const asideKey = `${key}.damaged`;

	const save = (store: Store, kept: T): boolean => tried(() => store().setItem(key, write(kept)));
	const setAside = (store: Store, found: unknown): boolean =>
		tried(() => store().setItem(asideKey, JSON.stringify([...listed(store().getItem(asideKey)), found])));

	async function open(store: Store): Promise<Found<T>> {
		let text: string | null;
		try {
			text = store().getItem(key);
		} catch {
			return { kept: none, damaged: null, keeps: false };
		}
		if (text === null) return { kept: none, damaged: null, keeps: true };
		const reader = await read();
		try {
			const { kept, damaged } = reader(text);
			const count = Object.keys(damaged).length;
			if (count === 0) return { kept, damaged: null, keeps: true };
			return { kept, damaged: count, keeps: setAside(store, damaged) && save(store, kept) };
		} catch (error) {
			if (!isInputError(error)) throw error;
			return { kept: none, damaged: 'whole', keeps: setAside(store, text) && save(store, none) };
		}
	}

	return {
		open,
		async change(store, change) {
			const found = await open(store);
			const kept = change(found.kept);
			return { ...found, kept, keeps: found.keeps && save(store, kept) };
		},
		aside(store) {
			try {
				return store().getItem(asideKey);
			} catch {
				return null;
			}
		},
		clear: (store) =>
			tried(() => {
				store().removeItem(key);
				store().removeItem(asideKey);
			}),
	};
}

/** Whether the store took it: private browsing and a full store refuse. */
function tried(act: () => void): boolean {
	try {
		act();
		return true;
	} catch {
		return false;
	}
}

function listed(text: string | null): unknown[] {
	if (text === null) return [];
	try {
		const list: unknown = JSON.parse(text);
		if (Array.isArray(list)) return list;
	} catch {
		// whatever it is, it stays
	}
	return [text];
}
