import { LISTS, openRecords, type RecordAside, type Records } from '../../storage/index.ts';

/** The records of a trainer, as they are listed. */
export interface RecordLines {
	readonly papers: number;
	readonly results: number;
	/** All of them, as the papers page takes them in again. */
	readonly text: string;
	readonly asides: readonly RecordAside[];
}

/** Null where there are none. @throws whatever the browser refuses with */
export async function recordLines(): Promise<RecordLines | null> {
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
