import {
	asidesIn,
	type BrowserStore,
	dropText,
	isOurs,
	KEPT,
	type KeptId,
	keysIn,
	type SetAside,
	textAt,
	thingAt,
} from '../../storage/index.ts';

/** What pages go on from, by kind. */
export interface KeptLine {
	/** `other` for what another version of the site keeps under keys that this one does not know. */
	readonly id: KeptId | 'other';
	readonly keys: readonly string[];
	readonly bytes: number;
}

/** All of it, in the order in which it is declared. */
export function keptLines(store: BrowserStore): KeptLine[] {
	const asides = new Set(asidesIn(store).map(({ key }) => key));
	const keys = keysIn(store).filter((key) => isOurs(key) && !asides.has(key));
	return [...(Object.keys(KEPT) as KeptId[]), 'other' as const].flatMap((id) => {
		const own = keys.filter((key) => (thingAt(key) ?? 'other') === id).sort();
		return own.length === 0 ? [] : [{ id, keys: own, bytes: bytesOf(textOf(store, own)) }];
	});
}

/** What a file of these keys holds: the text of one as it stands, several as a list. */
export function textOf(store: BrowserStore, keys: readonly string[]): string {
	const texts = keys.flatMap((key) => textAt(store, key) ?? []);
	return texts.length === 1 ? (texts[0] ?? '') : `[${texts.join(',\n')}]`;
}

/** Bytes that a text comes to in a file. */
export const bytesOf = (text: string): number => new TextEncoder().encode(text).length;

/** Deletes for good. Returns false where the store refuses. */
export const forget = (store: BrowserStore, keys: readonly string[]): boolean =>
	keys.every((key) => dropText(store, key));

export type AsideLine = SetAside & { readonly bytes: number };

export const asideLines = (store: BrowserStore): AsideLine[] =>
	asidesIn(store).map((each) => ({ ...each, bytes: bytesOf(each.text) }));
