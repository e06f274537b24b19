import { InputError, isInputError } from '../../../../shared/error/index.ts';
import { CannotRun, Ended, openEngine } from '../../../engine/index.ts';
import type { PictureLook } from './qrLook.ts';

/** Longest side that a picture is looked at in, dots: enough for a dense code, and what a phone works through in a second. */
const LONGEST_SIDE = 1600;
/** Sizes that a picture is tried in: where the edges of the modules fall between dots, another size often reads. */
export const PICTURE_SIZES: readonly number[] = [1, 0.7, 1.37, 0.5, 0.85];
/** Most bytes of a picture file. */
const LARGEST = 40_000_000;
/** Milliseconds that a picture is looked at for: many times what one with a code takes. The words of `qr.slow` say it. */
const PICTURE_MS = 10_000;

/**
 * The text of the QR code in a picture file: by the browser's own reader where it has one, else by ours, which never holds up the
 * page and comes to an end.
 * @param signal stops it
 * @throws InputError `qr.picture` where it is no picture that the browser can open, `qr.none` where no code is found, and what
 * `QrReader.look` throws
 */
export async function qrInPicture(file: Blob, signal?: AbortSignal): Promise<string> {
	if (file.size > LARGEST) throw qrTrouble('picture');
	let picture: ImageBitmap;
	try {
		picture = await createImageBitmap(file);
	} catch {
		throw qrTrouble('picture');
	}
	const reader = openReader();
	try {
		const { width, height } = picture;
		const look = {
			picture,
			part: { x: 0, y: 0, width, height },
			scale: Math.min(1, LONGEST_SIDE / Math.max(width, height)),
			sizes: PICTURE_SIZES,
			inverted: true,
		};
		const text = (await byBrowser(picture)) ?? (await reader.look(look, PICTURE_MS, signal));
		if (text) return text;
	} finally {
		reader.close();
		picture.close();
	}
	throw qrTrouble('none');
}

/** Longest side that a frame of the camera is looked at in, dots: fewer than a picture's, since the next frame comes at once. */
const FRAME_SIDE = 1080;
/** Sizes that frames are looked at in by turns. */
const FRAME_SIZES = [1, 0.7];
/** Milliseconds that one frame is looked at for. */
const FRAME_MS = 3000;

/** Reads what a camera shows. */
export interface FrameReader {
	/** The text of the QR code in the middle of the picture now; null where none is found, or there is no picture yet. */
	read(video: HTMLVideoElement): Promise<string | null>;
	close(): void;
}

export function frameReader(): FrameReader {
	const reader = openReader();
	let turn = 0;
	return {
		close: () => reader.close(),
		async read(video) {
			const { videoWidth: width, videoHeight: height } = video;
			const side = Math.min(width, height);
			if (side === 0 || video.readyState < video.HAVE_CURRENT_DATA) return null;
			const text = await byBrowser(video);
			if (text) return text;
			const size = FRAME_SIZES[turn++ % FRAME_SIZES.length] ?? 1;
			return inFrame(reader, {
				picture: await createImageBitmap(video),
				part: { x: (width - side) / 2, y: (height - side) / 2, width: side, height: side },
				scale: size * Math.min(1, FRAME_SIDE / side),
				sizes: [1],
				// light on dark is no code of ours, and would take as long again
				inverted: false,
			});
		},
	};
}

/** One frame that is too busy is none, and the next is looked at. */
async function inFrame(reader: QrReader, look: Parameters<QrReader['look']>[0]): Promise<string | null> {
	try {
		return (await reader.look(look, FRAME_MS)) || null;
	} catch (error) {
		if (isInputError(error) && error.code === 'qr.slow') return null;
		throw error;
	}
}

interface Detector {
	detect(picture: ImageBitmapSource): Promise<readonly { readonly rawValue: string }[]>;
}

/** By the browser's own reader; null where it has none, or finds nothing. */
async function byBrowser(picture: ImageBitmapSource): Promise<string | null> {
	const Own: unknown = Reflect.get(globalThis, 'BarcodeDetector');
	if (typeof Own !== 'function') return null;
	try {
		const detector = Reflect.construct(Own, [{ formats: ['qr_code'] }]) as Detector;
		return (await detector.detect(picture))[0]?.rawValue || null;
	} catch {
		// there, and of no use: some systems have the name and not the reader
		return null;
	}
}

/** Looks for QR codes off the page's own thread, one look at a time. */
export interface QrReader {
	/**
	 * @param within milliseconds it may take
	 * @param signal stops it
	 * @throws InputError `qr.slow` where that is over, `qr.stopped`, `qr.unfetched` where the worker could not be fetched
	 */
	look(look: PictureLook, within: number, signal?: AbortSignal): Promise<string | null>;
	/** Ends the worker, whatever it is at. */
	close(): void;
}

/** A reader with a worker of its own: a look that takes too long ends it, and nothing else waits for that. */
function openReader(): QrReader {
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

const qrTrouble = (trouble: QrTrouble): InputError => new InputError(`qr.${trouble}`, '', {});
