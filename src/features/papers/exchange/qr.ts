import { correction, generate, mode } from 'lean-qr';
import { InputError } from '../../../../shared/error/index.ts';

/** Empty modules round a code (ISO/IEC 18004, from memory: at least 4). */
const QUIET = 4;

/** Most bytes that one code carries: version 40 at its lowest correction (ISO/IEC 18004, from memory). */
export const MOST_QR_BYTES = 2953;
/** And at the next, which a crumpled or ill-lit sheet can do with. */
const MOST_AT_MIDDLE = 2331;

/** Ways of writing that every reader we know takes as it was meant: not all of them know a Western alphabet from UTF-8. */
const MODES = [mode.numeric, mode.alphaNumeric, mode.ascii, mode.utf8];

/** A QR code to be drawn. */
export interface QrDrawing {
	/** Modules along a side, quiet zone included: the side of an SVG `viewBox`. */
	readonly size: number;
	/** The dark modules, as the `d` of one SVG path. */
	readonly path: string;
}

/**
 * A text as a QR code, with as much correction as its size has room for.
 * @throws InputError `qr.long` where no code carries as much
 */
export function qrDrawing(text: string): QrDrawing {
	const bytes = new TextEncoder().encode(text).length;
	if (bytes > MOST_QR_BYTES) throw new InputError('qr.long', '', { trouble: 'too-long' });
	const minCorrectionLevel = bytes > MOST_AT_MIDDLE ? correction.L : correction.M;
	const code = generate(text, { minCorrectionLevel, modes: MODES });
	let path = '';
	for (let y = 0; y < code.size; y++) {
		for (let x = 0; x < code.size; x++) {
			let run = 0;
			while (code.get(x + run, y)) run++;
			if (run > 0) path += `M${x + QUIET} ${y + QUIET}h${run}v1h-${run}z`;
			x += run;
		}
	}
	return { size: code.size + 2 * QUIET, path };
}
