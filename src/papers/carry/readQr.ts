import { InputError } from '../../../shared/error/index.ts';

/** A picture's dots, four numbers each (red, green, blue, opacity), row by row. */
export interface Pixels {
	readonly data: Uint8ClampedArray;
	readonly width: number;
	readonly height: number;
}

/** Longest side that a picture is looked at in, dots: first large, for a dense code, then small, for a blurred one. */
const SIDES = [1600, 800, 400];
/** Most bytes of a picture file. */
const LARGEST = 40_000_000;

/** The text of the QR code in a picture; null where none is found. The reader is fetched when there is a picture. */
export async function qrInPixels({ data, width, height }: Pixels): Promise<string | null> {
	const { default: find } = await import('jsqr');
	return find(data, width, height)?.data || null;
}

/**
 * The text of the QR code in a picture file: by the browser's own reader where it has one, else by ours.
 * @throws InputError `qr.picture` where it is no picture that the browser can open, `qr.none` where no code is found
 */
export async function qrInPicture(file: Blob): Promise<string> {
	if (file.size > LARGEST) throw noPicture();
	let picture: ImageBitmap;
	try {
		picture = await createImageBitmap(file);
	} catch {
		throw noPicture();
	}
	try {
		const text = (await byBrowser(picture)) ?? (await byUs(picture));
		if (text) return text;
	} finally {
		picture.close();
	}
	throw new InputError(
		'qr.none',
		'',
		'No QR code was found in this picture. Take it again: the whole code, sharp, and from straight above.',
	);
}

interface Detector {
	detect(picture: ImageBitmapSource): Promise<readonly { readonly rawValue: string }[]>;
}

/** By the browser's own reader; null where it has none, or finds nothing. */
export async function byBrowser(picture: ImageBitmapSource): Promise<string | null> {
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

async function byUs(picture: ImageBitmap): Promise<string | null> {
	const longest = Math.max(picture.width, picture.height);
	for (const side of SIDES) {
		const scale = Math.min(1, side / longest);
		const text = await qrInPixels(drawn(picture, scale));
		if (text) return text;
	}
	return null;
}

function drawn(picture: ImageBitmap, scale: number): Pixels {
	const width = Math.max(1, Math.round(picture.width * scale));
	const height = Math.max(1, Math.round(picture.height * scale));
	const canvas = document.createElement('canvas');
	canvas.width = width;
	canvas.height = height;
	const pen = canvas.getContext('2d', { willReadFrequently: true });
	if (!pen) throw noPicture();
	// what is see-through counts as paper
	pen.fillStyle = 'white';
	pen.fillRect(0, 0, width, height);
	pen.drawImage(picture, 0, 0, width, height);
	return pen.getImageData(0, 0, width, height);
}

const noPicture = (): InputError =>
	new InputError(
		'qr.picture',
		'',
		'This is no picture that the browser can open, or it is too large. Take one of under 40 MB, PNG or JPEG.',
	);
