import { InputError } from '../../../shared/error/index.ts';

/** A picture's dots, four numbers each (red, green, blue, opacity), row by row. */
export interface Pixels {
	readonly data: Uint8ClampedArray;
	readonly width: number;
	readonly height: number;
}

/** Longest side that a picture is looked at in, dots: enough for a dense code, and what a phone works through in a second. */
const LONGEST_SIDE = 1600;
/** Sizes that a picture is tried in: where the edges of the modules fall between dots, another size often reads. */
const SIZES = [1, 0.7, 1.37, 0.5, 0.85];
/** Most bytes of a picture file. */
const LARGEST = 40_000_000;

/** The text of the QR code in a picture; null where none is found. The reader is fetched when there is a picture. */
export async function qrInPixels(pixels: Pixels): Promise<string | null> {
	const { default: find } = await import('jsqr');
	for (const size of SIZES) {
		const { data, width, height } = size === 1 ? pixels : resized(pixels, size);
		const text = find(data, width, height)?.data;
		if (text) return text;
	}
	return null;
}

/** A picture in grey, larger or smaller, each dot weighed from the four it falls between. */
function resized({ data, width, height }: Pixels, size: number): Pixels {
	const [wide, high] = [Math.max(1, Math.round(width * size)), Math.max(1, Math.round(height * size))];
	const out = new Uint8ClampedArray(wide * high * 4);
	const green = (x: number, y: number): number =>
		data[(Math.min(height - 1, y) * width + Math.min(width - 1, x)) * 4 + 1] ?? 255;
	for (let y = 0; y < high; y++) {
		const fromY = Math.max(0, (y + 0.5) / size - 0.5);
		for (let x = 0; x < wide; x++) {
			const fromX = Math.max(0, (x + 0.5) / size - 0.5);
			const [left, top] = [Math.floor(fromX), Math.floor(fromY)];
			const [right, low] = [fromX - left, fromY - top];
			const upper = green(left, top) * (1 - right) + green(left + 1, top) * right;
			const lower = green(left, top + 1) * (1 - right) + green(left + 1, top + 1) * right;
			out.fill(upper * (1 - low) + lower * low, (y * wide + x) * 4, (y * wide + x) * 4 + 3);
			out[(y * wide + x) * 4 + 3] = 255;
		}
	}
	return { data: out, width: wide, height: high };
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

/** Longest side that a frame of the camera is looked at in, dots: fewer than a picture's, since the next frame comes at once. */
const FRAME_SIDE = 1080;
/** Sizes that frames are looked at in by turns. */
const FRAME_SIZES = [1, 0.7];

/**
 * A reader of what a camera shows: each time it is asked, the text of the QR code in the middle of the picture now; null where none
 * is found, or there is no picture yet.
 */
export function frameReader(): (video: HTMLVideoElement) => Promise<string | null> {
	const canvas = document.createElement('canvas');
	let turn = 0;
	return async (video) => {
		const { videoWidth: width, videoHeight: height } = video;
		const side = Math.min(width, height);
		if (side === 0) return null;
		const text = await byBrowser(video);
		if (text) return text;
		const { default: find } = await import('jsqr');
		const size = FRAME_SIZES[turn++ % FRAME_SIZES.length] ?? 1;
		const middle = { x: (width - side) / 2, y: (height - side) / 2, width: side, height: side };
		const pixels = drawn(video, middle, size * Math.min(1, FRAME_SIDE / side), canvas);
		// light on dark is no code of ours, and would take as long again
		return find(pixels.data, pixels.width, pixels.height, { inversionAttempts: 'dontInvert' })?.data || null;
	};
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

async function byUs(picture: ImageBitmap): Promise<string | null> {
	const { width, height } = picture;
	return qrInPixels(drawn(picture, { x: 0, y: 0, width, height }, Math.min(1, LONGEST_SIDE / Math.max(width, height))));
}

/** A part of a picture, in dots. */
interface Part {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

function drawn(
	picture: CanvasImageSource,
	part: Part,
	scale: number,
	canvas: HTMLCanvasElement = document.createElement('canvas'),
): Pixels {
	const width = Math.max(1, Math.round(part.width * scale));
	const height = Math.max(1, Math.round(part.height * scale));
	canvas.width = width;
	canvas.height = height;
	const pen = canvas.getContext('2d', { willReadFrequently: true });
	if (!pen) throw noPicture();
	// what is see-through counts as paper
	pen.fillStyle = 'white';
	pen.fillRect(0, 0, width, height);
	pen.drawImage(picture, part.x, part.y, part.width, part.height, 0, 0, width, height);
	return pen.getImageData(0, 0, width, height);
}

const noPicture = (): InputError =>
	new InputError(
		'qr.picture',
		'',
		'This is no picture that the browser can open, or it is too large. Take one of under 40 MB, PNG or JPEG.',
	);
