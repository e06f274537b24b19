import { isInputError } from '../../shared/error/index.ts';
import { asideKeys, asidesIn, makeRoom, setAside } from './aside.ts';
import { type BrowserStore, dropText, isReadable, type KeepOutcome, putText, textAt } from './device.ts';
import { isNewer, KEPT, type KeptId, type KeptThing } from './kept.ts';

/** What was read: what could be, and what could not, by the name it stood under. */
export interface ReadResult<T> {
	readonly kept: T;
	readonly damaged: Readonly<Record<string, unknown>>;
}

/** What stands on a shelf, and what is to be said of it. */
export interface OnShelf<T> {
	readonly kept: T;
	/** Entries set aside just now; `whole` where nothing of it could be read; null where all is well. */
	readonly damaged: number | 'whole' | null;
	/** A newer version of the site left something there: it is as it was, and this begins afresh until something is kept. */
	readonly isNewer: boolean;
	/** False where the device did not keep all of it: what is missing there is held for as long as the page stands. */
	readonly keeps: boolean;
	/** Not kept for want of room, which a person can make. */
	readonly isFull: boolean;
}

export interface Shelf<T> {
	open(store: BrowserStore): Promise<OnShelf<T>>;
	/** @returns what is there then */
	change(store: BrowserStore, change: (kept: T) => T): Promise<OnShelf<T>>;
	/** What was set aside last, as text; null where there is none. */
	aside(store: BrowserStore): string | null;
	/** Gone, and what was set aside with it. Returns false where the store refuses. */
	clear(store: BrowserStore): boolean;
}

/** How one kind of thing is read, written and put together. */
export interface RecordKind<T> {
	/** What there is where nothing was kept. */
	readonly none: T;
	/** The reader, fetched when there is something to read; it throws InputError where the whole cannot be read. */
	readonly reader: () => Promise<(text: string) => ReadResult<T>>;
	readonly write: (kept: T) => string;
	/** Two as one, with nothing lost and none counted twice. */
	readonly merge: (one: T, other: T) => T;
}

const shown = <T>(kept: T, came: KeepOutcome, damaged: OnShelf<T>['damaged'] = null, newer = false): OnShelf<T> => ({
	kept,
	damaged,
	isNewer: newer,
	keeps: came === 'kept',
	isFull: came === 'full',
});

/** What the device holds, with what is damaged set aside first. */
async function onDevice<T>(
	store: BrowserStore,
	thing: KeptThing,
	{ none, reader, write }: RecordKind<T>,
): Promise<OnShelf<T>> {
	const { key } = thing;
	if (!isReadable(store)) return shown(none, 'refused');
	const text = textAt(store, key);
	if (text === null) return shown(none, 'kept');
	if (isNewer(text, thing)) return shown(none, 'kept', null, true);
	const read = await reader();
	try {
		const { kept, damaged } = read(text);
		const count = Object.keys(damaged).length;
		if (count === 0) return shown(kept, 'kept');
		const moved = setAside(store, {
			place: key,
			text: JSON.stringify(damaged),
			why: 'damaged',
			now: Date.now(),
		});
		return shown(kept, moved ? putText(store, key, write(kept)) : 'full', count);
	} catch (error) {
		if (!isInputError(error)) throw error;
		const moved = makeRoom(store, { place: key, text, why: 'damaged', now: Date.now() });
		return shown(none, moved ? putText(store, key, write(none)) : 'full', 'whole');
	}
}

/** A shelf for one kind of thing: entry by entry, and changed only after it was read again, since another tab may have written. */
export function shelfOf<T>(id: KeptId, kind: RecordKind<T>): Shelf<T> {
	const { reader, write, merge } = kind;
	const thing = KEPT[id];
	const { key } = thing;
	/** What a device would not take, until it does. */
	const unkept = new WeakMap<BrowserStore, { readonly kept: T; readonly came: KeepOutcome }>();

	const save = (store: BrowserStore, kept: T): KeepOutcome => {
		const came = putText(store, key, write(kept));
		if (came === 'kept') unkept.delete(store);
		else unkept.set(store, { kept, came });
		return came;
	};
	/** With what a newer version wrote before this one could read it: it comes back, and is set aside no more. */
	async function withNewer(store: BrowserStore, found: OnShelf<T>): Promise<OnShelf<T>> {
		let { kept } = found;
		const back: string[] = [];
		for (const { key: at, why, text } of asidesIn(store, id)) {
			if (why !== 'newer' || isNewer(text, thing)) continue;
			try {
				kept = merge(kept, (await reader())(text).kept);
				back.push(at);
			} catch (error) {
				if (!isInputError(error)) throw error;
			}
		}
		if (back.length === 0 || save(store, kept) !== 'kept') return found;
		for (const at of back) dropText(store, at);
		return { ...found, kept };
	}

	async function open(store: BrowserStore): Promise<OnShelf<T>> {
		const found = await onDevice(store, thing, kind);
		const held = unkept.get(store);
		if (held) return { ...found, ...shown(merge(found.kept, held.kept), held.came, found.damaged, found.isNewer) };
		return found.keeps && !found.isNewer ? withNewer(store, found) : found;
	}

	return {
		open,
		async change(store, change) {
			const found = await open(store);
			const kept = change(found.kept);
			const there = textAt(store, key);
			// what could not be set aside is not written over
			const isFree =
				(found.damaged === null || found.keeps) &&
				(there === null ||
					!isNewer(there, thing) ||
					makeRoom(store, { place: key, text: there, why: 'newer', now: Date.now() }));
			if (!isFree) unkept.set(store, { kept, came: 'full' });
			const came = isFree ? save(store, kept) : 'full';
			return { ...shown(kept, came, found.damaged), isNewer: found.isNewer };
		},
		aside: (store) => asidesIn(store, id)[0]?.text ?? null,
		clear(store) {
			unkept.delete(store);
			return [key, ...asideKeys(store, id)].every((each) => dropText(store, each));
		},
	};
}
