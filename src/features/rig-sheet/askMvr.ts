import { mvrWords } from '#words/mvr/index.ts';
import type { MvrPicks } from '../../../shared/mvr/index.ts';
import type { Plan } from '../../../shared/plan/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import { Ended, type Engine, openEngine, troubleText } from '../../engine/index.ts';

/** Milliseconds after which a file is given up. */
const WITHIN_MS = 60_000;

let engine: Engine | null = null;

const opened = (): Engine => {
	engine ??= openEngine();
	return engine;
};

/** What of an MVR file is read; null where the device doesn't hand it over. @throws as the worker's route `mvr.gather` */
export const gatherRigFile = (file: File) => opened().ask('mvr.gather', { file }, { within: WITHIN_MS });

/** Reads an MVR file. @param own the crew's own fixtures @throws as the worker's route `mvr.read` */
export const readRigFile = (bytes: Uint8Array, own: readonly Profile[], picks: MvrPicks) =>
	opened().ask('mvr.read', { bytes, own, picks }, { within: WITHIN_MS });

/** Writes an MVR file. @throws as the worker's route `mvr.write` */
export const writeRigFile = (plan: Plan) => opened().ask('mvr.write', { plan }, { within: WITHIN_MS });

/** What went wrong with either, as a sentence. */
export const rigFileTrouble = (error: unknown): string =>
	error instanceof Ended && error.because === 'slow' ? mvrWords.slow : troubleText(error, mvrWords);
