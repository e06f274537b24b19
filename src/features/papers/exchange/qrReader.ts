import { InputError } from '../../../../shared/error/index.ts';
import { CannotRun, Ended, openEngine } from '../../../engine/index.ts';
import type { Look } from './qrLook.ts';

/** Looks for QR codes off the page's own thread, one look at a time. */
export interface QrReader {
	/**
	 * @param within milliseconds it may take
	 * @param signal stops it
	 * @throws InputError `qr.slow` where that is over, `qr.stopped`, `qr.unfetched` where the worker could not be fetched
	 */
	look(look: Look, within: number, signal?: AbortSignal): Promise<string | null>;
	/** Ends the worker, whatever it is at. */
	close(): void;
}

/** A reader with a worker of its own: a look that takes too long ends it, and nothing else waits for that. */
export function openReader(): QrReader {
	const { ask, end } = openEngine();
	return {
		close: end,
		async look(look, within, signal) {
			try {
				return await ask('papers.code', look, { within, signal, hand: [look.picture] });
			} catch (error) {
				if (error instanceof Ended) throw qrTrouble(error.because);
				throw error instanceof CannotRun ? qrTrouble('unfetched') : error;
			}
		},
	};
}

/** What became of a picture: each has a code and words of its own. */
type QrTrouble = 'none' | 'slow' | 'stopped' | 'picture' | 'unfetched';

export const qrTrouble = (trouble: QrTrouble): InputError => new InputError(`qr.${trouble}`, '', {});
