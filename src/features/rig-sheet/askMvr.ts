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

/** A file that was chosen, with a number that tells it from those before it. */
export interface RigFile {
	readonly file: File;
	readonly n: number;
}

let chosen = 0;

export const rigFileOf = (file: File): RigFile => ({ file, n: ++chosen });

/**
 * Reads an MVR file; null where the device doesn't hand it over. The worker keeps what it read for the next picks.
 * @param own the crew's own fixtures @throws as the worker's route `mvr.read`
 */
export const readRigFile = ({ file, n }: RigFile, own: readonly Profile[], picks: MvrPicks) =>
	opened().ask('mvr.read', { file, n, own, picks }, { within: WITHIN_MS });

/** Has the worker let go of the file it read last. */
export const dropRigFile = (): void => void engine?.ask('mvr.letGo', {}).catch(() => undefined);

/** Writes an MVR file. @throws as the worker's route `mvr.write` */
export const writeRigFile = (plan: Plan) => opened().ask('mvr.write', { plan }, { within: WITHIN_MS });

/** What went wrong with either, as a sentence. */
export const rigFileTrouble = (error: unknown): string =>
	error instanceof Ended && error.because === 'slow' ? mvrWords.slow : troubleText(error, mvrWords);
