import { handedNames } from '#words/papers/index.ts';
import { InputError, isInputError } from '../../../../shared/error/index.ts';
import { fill } from '../../../wording/index.ts';
import { checkOf, damaged, inKeyOrder, otherVersion, refusedFor } from './bounds.ts';
import { readKeptCount, readKeptName, readKeptPaper, readKeptResult, readResult, readSlip } from './schema.ts';
import type {
	KeptCount,
	KeptName,
	KeptPaper,
	KeptResult,
	PaperResult,
	PaperSlip,
	Refusal,
	TakenResult,
	TrainerRecords,
} from './types.ts';

/** The version that files have. */
const FILE_VERSION = 1;

/** A paper as a file: JSON, laid out to be looked at. */
export const paperFile = ({ recipe, seed }: PaperSlip): string => sealed('paper', { recipe, seed });

/** A result as a file. */
export const resultFile = (result: PaperResult): string => sealed('result', result);

/** All that is kept, as one file. */
export const storeFile = (held: TrainerRecords): string =>
	`${JSON.stringify({ prepBay: 'papers', version: FILE_VERSION, ...heldParts(held) })}\n`;

function sealed(what: 'paper' | 'result', content: unknown): string {
	// by way of JSON, as whoever reads it finds it
	const check = checkOf(inKeyOrder(JSON.parse(JSON.stringify(content))));
	return `${JSON.stringify({ prepBay: what, version: FILE_VERSION, [what]: content, check }, null, '\t')}\n`;
}

/** What a file was found to be. */
export type FromFile =
	| ({ readonly is: 'paper' } & PaperSlip)
	| ({ readonly is: 'result' } & TakenResult)
	| { readonly is: 'store'; readonly held: TrainerRecords; readonly refused: readonly Refusal[] };

/**
 * Reads what a file holds, once parsed.
 * @param from what the file is called, for what of a store cannot be read
 * @throws InputError `handed.unknown`, `handed.version`, `handed.damaged`, `handed.shape`, and what `readRecipe` and `readAnswers` throw
 */
export function readFile(file: unknown, from: string): FromFile {
	const said = isRecord(file) ? file['prepBay'] : undefined;
	if (!isRecord(file) || !(said === 'paper' || said === 'result' || said === 'papers')) throw unknownFile();
	if (typeof file['version'] === 'number' && file['version'] > FILE_VERSION) throw otherVersion();
	if (file['version'] !== FILE_VERSION) throw damaged();
	if (said === 'papers') return { is: 'store', ...heldFrom(file, from) };
	const content = file[said];
	const whole = isRecord(content) && file['check'] === checkOf(inKeyOrder(content));
	if (said === 'result') return { is: 'result', result: readResult(content), whole };
	const slip = readSlip(content);
	if (!whole) throw damaged();
	return { is: 'paper', ...slip };
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
	typeof value === 'object' && value !== null && !Array.isArray(value);

const unknownFile = (): InputError => new InputError('handed.unknown', '', { trouble: 'not-ours' });

/** Most of each that a store file is read for: more than any school year. */
const MOST = 20_000;

/** A store's lists, in the order they are written. */
const heldParts = ({ papers, results, names, counts }: TrainerRecords): TrainerRecords => ({
	papers,
	results,
	names,
	counts,
});

/**
 * A store from a file, each record read by itself: one that is damaged does not take the others along.
 * @param from what the file is called
 */
function heldFrom(
	file: Readonly<Record<string, unknown>>,
	from: string,
): { held: TrainerRecords; refused: readonly Refusal[] } {
	const refused: Refusal[] = [];
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
