import { type Pixels, qrInPixels } from './qrPixels.ts';
import type { Found, Look } from './qrReader.ts';

// one look at a time, in the order asked; who has waited long enough ends the worker
addEventListener('message', ({ data: look }: MessageEvent<Look>) => {
	let found: Found;
	try {
		found = { text: qrInPixels(drawn(look), look.sizes, look.inverted) };
	} catch (error) {
		found = { broke: String(error) };
	}
	postMessage(found);
});

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
