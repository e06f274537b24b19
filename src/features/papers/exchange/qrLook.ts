import find from 'jsqr';

/** What the worker is handed: a picture, which it closes, the part of it to look at, in dots, and how. */
export interface PictureLook {
	readonly picture: ImageBitmap;
	readonly part: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
	/** Dots of the look for one of the picture. */
	readonly scale: number;
	readonly sizes: readonly number[];
	readonly inverted: boolean;
}

/** The text of the QR code in a picture; null where none is found. */
export const qrInLook = (look: PictureLook): string | null => qrInPixels(drawn(look), look.sizes, look.inverted);

/** The dots of what is to be looked at. */
function drawn({ picture, part, scale }: PictureLook): Pixels {
	const width = Math.max(1, Math.round(part.width * scale));
	const height = Math.max(1, Math.round(part.height * scale));
	const pen = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
	if (!pen) throw new Error('there is nothing to draw on');
	// what is see-through counts as paper
	pen.fillStyle = 'white';
	pen.fillRect(0, 0, width, height);
	pen.drawImage(picture, part.x, part.y, part.width, part.height, 0, 0, width, height);
	picture.close();
	return pen.getImageData(0, 0, width, height);
}

/** A picture's dots, four numbers each (red, green, blue, opacity), row by row. */
export interface Pixels {
	readonly data: Uint8ClampedArray;
	readonly width: number;
	readonly height: number;
}

/**
 * The text of the QR code in a picture; null where none is found. It may take half a minute over a picture of gravel: for a worker,
 * which can be stopped.
 * @param sizes tried one after another, 1 as it is
 * @param inverted whether light on dark is looked for too
 */
export function qrInPixels(pixels: Pixels, sizes: readonly number[], inverted: boolean): string | null {
	for (const size of sizes) {
		const { data, width, height } = size === 1 ? pixels : resized(pixels, size);
		const text = find(data, width, height, { inversionAttempts: inverted ? 'attemptBoth' : 'dontInvert' })?.data;
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
