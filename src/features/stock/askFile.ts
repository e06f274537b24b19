import { fileWords as words } from '#words/stock/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import type { Question, StockEntry } from '../../../shared/stock/index.ts';
import { Ended, type Engine, openEngine, troubleText } from '../../engine/index.ts';
import type { SettleAnswer } from './routes.ts';

/** Milliseconds after which a file is given up: any that a fixture needs is read in a few hundred. */
const WITHIN_MS = 60_000;

let engine: Engine | null = null;

/** What reads and writes fixture files, in the page's worker. */
const opened = (): Engine => {
	engine ??= openEngine();
	return engine;
};

/** Reads a GDTF file. @param modes by their names in the file; left out: all. @throws as the worker's route `gdtf.read` */
export const readFile = (bytes: Uint8Array, modes: readonly string[] | undefined) =>
	opened().ask('gdtf.read', { bytes, modes }, { within: WITHIN_MS });

/** Writes a GDTF file. @throws as the worker's route `gdtf.write` */
export const writeFile = (profile: Profile) => opened().ask('gdtf.write', { profile }, { within: WITHIN_MS });

/** The check of fewest presses on the real fixture. @param signal ends it @throws as the worker's route `stock.settle` */
export const settlePanel = (
	entry: StockEntry,
	left: Readonly<Partial<Record<Question, readonly string[]>>>,
	signal: AbortSignal,
): Promise<SettleAnswer | null> => opened().ask('stock.settle', { entry, left }, { within: WITHIN_MS, signal });

/** What went wrong with a question to the worker, as a sentence. @param troubles where it took too long, and where it broke */
export const fileTrouble = (
	error: unknown,
	{
		slow,
		broke,
		noWorker = words.noWorker,
	}: { readonly slow: string; readonly broke: string; readonly noWorker?: string },
): string => (error instanceof Ended && error.because === 'slow' ? slow : troubleText(error, { noWorker, broke }));
