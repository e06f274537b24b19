import { degrees, PDFDocument, rgb, StandardFonts } from 'pdf-lib';
import type { TextItem } from '../../../../shared/stock/index.ts';

/** A page to be made: its runs of text, as if the page were upright, and how a viewer is to turn it. */
export interface MadePage {
	readonly items: readonly TextItem[];
	/** Quarters clockwise that a viewer turns it by. */
	readonly quarters?: number;
	/** Lines between rows and columns, right across the page. */
	readonly isRuled?: boolean;
	/** A grey field over all of it and no text, as a scan has it. */
	readonly isScan?: boolean;
}

const WIDTH = 595;
const HEIGHT = 842;

/** A PDF file with these pages, made by pdf-lib (MIT): text in Helvetica, a face that is not in the file, as in many manuals. */
export async function madePdf(pages: readonly MadePage[]): Promise<Uint8Array> {
	const file = await PDFDocument.create();
	const face = await file.embedFont(StandardFonts.Helvetica);
	for (const { items, quarters = 0, isRuled = false, isScan = false } of pages) {
		const page = file.addPage([WIDTH, HEIGHT]);
		if (isScan) page.drawRectangle({ x: 40, y: 100, width: 400, height: 600, color: rgb(0.8, 0.8, 0.8) });
		// what a viewer turns clockwise stands turned the other way in the file
		page.setRotation(degrees(90 * quarters));
		for (const { str, x, y, h, turn } of items) {
			if (isScan) continue;
			const at = inFile(x, y, quarters);
			page.drawText(str, { ...at, size: h, font: face, rotate: degrees(90 * quarters - turn) });
			if (isRuled) page.drawLine({ start: { x: 30, y: at.y - 3 }, end: { x: 560, y: at.y - 3 }, thickness: 0.5 });
		}
	}
	return file.save({ useObjectStreams: false });
}

/** A place on the page as a viewer shows it, in the file's own places, which count up from the bottom left before it is turned. */
function inFile(x: number, y: number, quarters: number): { x: number; y: number } {
	if (quarters === 1) return { x: y, y: x };
	if (quarters === 2) return { x: WIDTH - x, y };
	if (quarters === 3) return { x: WIDTH - y, y: HEIGHT - x };
	return { x, y: HEIGHT - y };
}

/** The same file locked with a password (ISO 32000-1, 7.6.3): with keys that no password gives, so that none opens it. */
export async function lockedPdf(): Promise<Uint8Array> {
	const file = await PDFDocument.create();
	file.addPage();
	const text = new TextDecoder('latin1').decode(await file.save({ useObjectStreams: false }));
	const key = '<'.concat('ab'.repeat(32), '>');
	const locked = text.replace(
		/trailer\s*<</,
		`trailer\n<< /ID [${key} ${key}] /Encrypt << /Filter /Standard /V 1 /R 2 /O ${key} /U ${key} /P -4 >>`,
	);
	return Uint8Array.from(locked, (sign) => sign.charCodeAt(0));
}
