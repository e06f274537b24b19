/** A PDF file with these objects, numbered from 1, the first its catalogue, and with a true list of where each begins (ISO 32000-1, 7.5). */
function pdfOf(objects: readonly string[]): Uint8Array {
	let text = '%PDF-1.7\n';
	const at = objects.map((object, i) => {
		const here = text.length;
		text += `${i + 1} 0 obj\n${object}\nendobj\n`;
		return `${String(here).padStart(10, '0')} 00000 n \n`;
	});
	const xref = `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${at.join('')}`;
	const end = `${xref}trailer\n<< /Size ${objects.length + 1} /Root 1 0 R >>\nstartxref\n${text.length}\n%%EOF\n`;
	return new TextEncoder().encode(text + end);
}

const CATALOGUE = '<< /Type /Catalog /Pages 2 0 R >>';
const PAGES = '<< /Type /Pages /Kids [3 0 R] /Count 1 >>';
const FONT = '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>';
const page = (box: string, font = '5 0 R') =>
	`<< /Type /Page /Parent 2 0 R /MediaBox [${box}] /Contents 4 0 R /Resources << /Font << /F ${font} >> >> >>`;
const TEXT = 'BT /F 12 Tf 40 700 Td (1 Dimmer) Tj ET';
const stream = (text: string, length = text.length, more = '') =>
	`<< /Length ${length}${more} >>\nstream\n${text}\nendstream`;
const A4 = '0 0 595 842';

/** Files made to harm who opens them, by what is wrong with each. */
export const HOSTILE: Readonly<Record<string, Uint8Array>> = {
	'a page tree that goes round': pdfOf([CATALOGUE, '<< /Type /Pages /Kids [2 0 R] /Count 1 >>']),
	'a page tree that goes round by two': pdfOf([
		CATALOGUE,
		'<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
		'<< /Type /Pages /Parent 2 0 R /Kids [2 0 R] /Count 1 >>',
	]),
	'a count of pages that is made up': pdfOf([
		CATALOGUE,
		'<< /Type /Pages /Kids [3 0 R] /Count 2000000000 >>',
		page(A4),
		stream(TEXT),
		FONT,
	]),
	'a page a billion points wide': pdfOf([CATALOGUE, PAGES, page('0 0 1000000000 1000000000'), stream(TEXT), FONT]),
	'a page a hair wide': pdfOf([CATALOGUE, PAGES, page('0 0 1 1000000'), stream(TEXT), FONT]),
	'a stream that says it is longer than the file': pdfOf([
		CATALOGUE,
		PAGES,
		page(A4),
		stream(TEXT, 2_000_000_000),
		FONT,
	]),
	'a stream that says it has no length': pdfOf([CATALOGUE, PAGES, page(A4), stream(TEXT, -5), FONT]),
	'a stream that is not packed as it says': pdfOf([
		CATALOGUE,
		PAGES,
		page(A4),
		stream(TEXT, TEXT.length, ' /Filter [/FlateDecode /FlateDecode /LZWDecode]'),
		FONT,
	]),
	'a font that lies about its length': pdfOf([
		CATALOGUE,
		PAGES,
		page(A4),
		stream(TEXT),
		'<< /Type /Font /Subtype /TrueType /BaseFont /Made /FirstChar 0 /LastChar 255 /Widths 6 0 R /FontDescriptor 7 0 R >>',
		`[${'600 '.repeat(256)}]`,
		'<< /Type /FontDescriptor /FontName /Made /Flags 32 /FontBBox [0 0 1000 1000] /ItalicAngle 0 /Ascent 800 /Descent -200 /CapHeight 700 /StemV 80 /FontFile2 8 0 R >>',
		stream('\0\x01\0\0\xFF\xFF glyf loca \xFF\xFF\xFF\xFF', 24, ' /Length1 2000000000'),
	]),
	'a page that draws itself without an end': pdfOf([
		CATALOGUE,
		PAGES,
		'<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 4 0 R /Resources << /XObject << /X 5 0 R >> >> >>',
		stream('/X Do'),
		stream(
			'/X Do /X Do',
			11,
			' /Type /XObject /Subtype /Form /BBox [0 0 595 842] /Resources << /XObject << /X 5 0 R >> >>',
		),
	]),
};
