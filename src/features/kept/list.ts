import {
	asidesIn,
	dropText,
	KEPT,
	type KeptId,
	keysIn,
	LISTS,
	mayHoldRecords,
	openRecords,
	type RecordAside,
	type Records,
	type SetAside,
	type Store,
	textAt,
	thingAt,
} from '../../storage/index.ts';

/** What all keys of the site begin with. */
const OURS = 'prep-bay.';

/** What pages go on from, by kind. */
export interface KeptLine {
	/** `other` for what another version of the site keeps under keys that this one does not know. */
	readonly id: KeptId | 'other';
	readonly keys: readonly string[];
	readonly bytes: number;
}

/** All of it, in the order in which it is declared. */
export function keptLines(store: Store): KeptLine[] {
	const asides = new Set(asidesIn(store).map(({ key }) => key));
	const keys = keysIn(store).filter((key) => key.startsWith(OURS) && !asides.has(key));
	return [...(Object.keys(KEPT) as KeptId[]), 'other' as const].flatMap((id) => {
		const own = keys.filter((key) => (thingAt(key) ?? 'other') === id).sort();
		return own.length === 0 ? [] : [{ id, keys: own, bytes: bytesOf(textOf(store, own)) }];
	});
}

/** What a file of these keys holds: the text of one as it stands, several as a list. */
export function textOf(store: Store, keys: readonly string[]): string {
	const texts = keys.flatMap((key) => textAt(store, key) ?? []);
	return texts.length === 1 ? (texts[0] ?? '') : `[${texts.join(',\n')}]`;
}

/** Bytes that a text comes to in a file. */
export const bytesOf = (text: string): number => new TextEncoder().encode(text).length;

/** Deletes for good. Returns false where the store refuses. */
export const forget = (store: Store, keys: readonly string[]): boolean => keys.every((key) => dropText(store, key));

export type AsideLine = SetAside & { readonly bytes: number };

export const asideLines = (store: Store): AsideLine[] =>
	asidesIn(store).map((each) => ({ ...each, bytes: bytesOf(each.text) }));

/** The records of a trainer, as they are listed. */
export interface RecordLines {
	readonly papers: number;
	readonly results: number;
	/** All of them, as the papers page takes them in again. */
	readonly text: string;
	readonly asides: readonly RecordAside[];
}

/** Null where there never were any. @throws whatever the browser refuses with */
export async function recordLines(): Promise<RecordLines | null> {
	if (!(await mayHoldRecords())) return null;
	return withRecords(async (records) => {
		const lists = await Promise.all(
			LISTS.map(async (list) => [list, (await records.all(list)).map(([, each]) => each)] as const),
		);
		const held = Object.fromEntries(lists);
		const asides = await records.asides();
		if (asides.length === 0 && lists.every(([, list]) => list.length === 0)) return null;
		return {
			papers: held['papers']?.length ?? 0,
			results: held['results']?.length ?? 0,
			text: JSON.stringify({ prepBay: 'papers', version: 1, ...held }),
			asides,
		};
	});
}

/** Does something on the records, and lets go of them. */
export async function withRecords<T>(act: (records: Records) => Promise<T>): Promise<T> {
	const records = await openRecords(() => undefined);
	try {
		return await act(records);
	} finally {
		records.close();
	}
}

/** Deletes every record for good; what was set aside stays, each with a button of its own. */
export const forgetRecords = (): Promise<void> => withRecords((records) => records.clear('asides'));
