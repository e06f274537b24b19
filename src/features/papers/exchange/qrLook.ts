import { type Pixels, qrInPixels } from './qrPixels.ts';

/** What the worker is handed: a picture, which it closes, the part of it to look at, in dots, and how. */
export interface Look {
	readonly picture: ImageBitmap;
	readonly part: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
	/** Dots of the look for one of the picture. */
	readonly scale: number;
	readonly sizes: readonly number[];
	readonly inverted: boolean;
}

/** The text of the QR code in a picture; null where none is found. */
export const qrInLook = (look: Look): string | null => qrInPixels(drawn(look), look.sizes, look.inverted);

/** The dots of what is to be looked at. */
function drawn({ picture, part, scale }: Look): Pixels {
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
