import { handedNames } from '#words/papers/index.ts';
import { InputError, isInputError } from '../../../../shared/error/index.ts';
import { fill } from '../../../wording/index.ts';
import { refusedFor } from './refuse.ts';
import { readKeptCount, readKeptName, readKeptPaper, readKeptResult } from './schema.ts';
import type { Held, KeptCount, KeptName, KeptPaper, KeptResult, Refused } from './types.ts';

/** Most of each that a store file is read for: more than any school year. */
const MOST = 20_000;

/** A store's lists, in the order they are written. */
export const heldParts = ({ papers, results, names, counts }: Held): Held => ({
	papers,
	results,
	names,
	counts,
});

/**
 * A store from a file, each record read by itself: one that is damaged does not take the others along.
 * @param from what the file is called
 */
export function heldFrom(
	file: Readonly<Record<string, unknown>>,
	from: string,
): { held: Held; refused: readonly Refused[] } {
	const refused: Refused[] = [];
	const all = <T>(list: string, what: string, read: (record: unknown) => T): T[] => {
		const records = file[list];
		if (!Array.isArray(records)) {
			const error = new InputError('handed.shape', list, { trouble: 'no-list', list });
			refused.push(refusedFor(fill(handedNames.list, { from, list }), error));
			return [];
		}
		if (records.length > MOST)
			refused.push(
				refusedFor(
					fill(handedNames.list, { from, list }),
					new InputError('handed.long', list, {
						trouble: 'list-too-long',
						list,
						count: records.length,
						limit: MOST,
					}),
				),
			);
		return records.slice(0, MOST).flatMap((record, i) => {
			try {
				return [read(record)];
			} catch (error) {
				if (!isInputError(error)) throw error;
				refused.push(refusedFor(fill(handedNames.record, { from, what, n: i + 1 }), error));
				return [];
			}
		});
	};
	const papers = all<KeptPaper>('papers', 'paper', readKeptPaper);
	const results = all<KeptResult>('results', 'result', readKeptResult);
	const names = all<KeptName>('names', 'name', readKeptName);
	// files from before there was such a list have none
	const counts = file['counts'] === undefined ? [] : all<KeptCount>('counts', 'count', readKeptCount);
	return { held: { papers, results, names, counts }, refused };
}
