import { InputError } from '../../../../shared/error/index.ts';
import { damaged, otherVersion } from './bounds.ts';
import { checkOf, inKeyOrder } from './check.ts';
import { readResult, readSlip } from './schema.ts';
import type { Held, PaperSlip, Refused, Result, Taken } from './types.ts';
import { heldFrom, heldParts } from './whole.ts';

/** The version that files have. */
const FILE_VERSION = 1;

/** A paper as a file: JSON, laid out to be looked at. */
export const paperFile = ({ recipe, seed }: PaperSlip): string => sealed('paper', { recipe, seed });

/** A result as a file. */
export const resultFile = (result: Result): string => sealed('result', result);

/** All that is kept, as one file. */
export const storeFile = (held: Held): string =>
	`${JSON.stringify({ prepBay: 'papers', version: FILE_VERSION, ...heldParts(held) })}\n`;

function sealed(what: 'paper' | 'result', content: unknown): string {
	// by way of JSON, as whoever reads it finds it
	const check = checkOf(inKeyOrder(JSON.parse(JSON.stringify(content))));
	return `${JSON.stringify({ prepBay: what, version: FILE_VERSION, [what]: content, check }, null, '\t')}\n`;
}

/** What a file was found to be. */
export type FromFile =
	| ({ readonly is: 'paper' } & PaperSlip)
	| ({ readonly is: 'result' } & Taken)
	| { readonly is: 'store'; readonly held: Held; readonly refused: readonly Refused[] };

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
