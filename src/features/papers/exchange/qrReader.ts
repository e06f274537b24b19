import { InputError } from '../../../../shared/error/index.ts';

/** What the worker is handed: a picture, which it closes, the part of it to look at, in dots, and how. */
export interface Look {
	readonly picture: ImageBitmap;
	readonly part: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
	/** Dots of the look for one of the picture. */
	readonly scale: number;
	readonly sizes: readonly number[];
	readonly inverted: boolean;
}

/** What it found: a code's text or null; or it broke down. */
export type Found = { readonly text: string | null } | { readonly broke: string };

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

/** A reader whose worker is started with the first look, and anew after one that was ended. */
export function openReader(
	start: () => Worker = () => new Worker(new URL('./qrWorker.ts', import.meta.url), { type: 'module' }),
): QrReader {
	let worker: Worker | null = null;
	const close = () => {
		worker?.terminate();
		worker = null;
	};
	return {
		close,
		look: (look, within, signal) =>
			new Promise((resolve, reject) => {
				if (signal?.aborted) return reject(qrTrouble('stopped'));
				worker ??= start();
				const own = worker;
				const over = () => {
					clearTimeout(timer);
					signal?.removeEventListener('abort', stop);
					own.onmessage = null;
					own.onerror = null;
				};
				const fail = (trouble: QrTrouble) => {
					over();
					close();
					reject(qrTrouble(trouble));
				};
				const stop = () => fail('stopped');
				const timer = setTimeout(() => fail('slow'), within);
				signal?.addEventListener('abort', stop);
				own.onmessage = ({ data }: MessageEvent<Found>) => {
					over();
					if ('text' in data) resolve(data.text);
					else reject(new Error(data.broke));
				};
				own.onerror = () => fail('unfetched');
				own.postMessage(look, [look.picture]);
			}),
	};
}

/** What became of a picture: each has a code and words of its own. */
type QrTrouble = 'none' | 'slow' | 'stopped' | 'picture' | 'unfetched';

export const qrTrouble = (trouble: QrTrouble): InputError => new InputError(`qr.${trouble}`, '', {});
