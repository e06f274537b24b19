import { counted, locale } from '../locale/index.ts';

/** The manual's own file, opened on the device, and what was read of a page of it. */
export const manualWords = {
	open: 'Open the manual’s PDF',
	openHint: (size: string) =>
		`The file stays on this device. The part that opens it is fetched the first time you ask (${size}), and works with no network from then on.`,
	size: 'about 550 kB',
	name: 'PDF of the manual',
	heading: (name: string) => `Manual: ${name}`,
	opening: 'Opening the manual…',
	close: 'Close the manual',
	closeAsk: 'Close the manual?',
	closeLoses: 'What you changed in its text isn’t in your chart yet. It goes when you close.',
	closeAnyway: 'Close it and lose the changes',
	stay: 'Stay here',
	goBack: (page: number) => `Back to your text from page ${locale.number(page)}`,
	/** One of several parts of a page. @param first its first line; empty where it has none */
	goBackPart: (page: number, part: number, first: string) =>
		`Back to your text from page ${locale.number(page)}, part ${locale.number(part)}${first === '' ? '' : `: ${first}`}`,
	coming: 'Getting the part that opens manuals…',
	failed:
		'The part that opens manuals isn’t on this device yet, and it didn’t come. Find a network once, then it works with none. Or type the chart, or paste it.',
	again: 'Try again',
	pageOf: (page: number, pages: number) => `Page ${locale.number(page)} of ${locale.number(pages)}`,
	back: 'Page before',
	next: 'Next page',
	goTo: 'Go to page',
	go: 'Go',
	noPage: (pages: number) => `Write a page from 1 to ${locale.number(pages)}.`,
	drawing: 'Drawing the page…',
	picture: (page: number) => `Picture of page ${locale.number(page)}`,
	how: 'Find the page with the channel chart. Mark the table: drag from corner to corner, or tap one corner, then the other.',
	keys: 'Keys: arrows move the box, Shift and arrows size it.',
	box: (left: number, top: number, right: number, bottom: number) =>
		`Marked part: from ${left} to ${right} percent across, from ${top} to ${bottom} percent down. Arrows move it, Shift and arrows size it.`,
	corner: 'One corner is set. Tap the other one.',
	whole: 'Mark the whole page',
	larger: 'Larger',
	smaller: 'Smaller',
	read: 'Read the marked part',
	none: 'There’s no text in the marked part. Move the box over the table.',
	scanned: 'This page is only a picture, so there’s no text to read. Type the chart, or paste it from somewhere else.',
	garbled: 'The letters on this page are in a code of their own, and can’t be read. Type the chart.',
	found: (page: number) => `Read from page ${locale.number(page)}`,
	foundLead: 'Nothing is in your chart yet. Check it against the page first, and fix it here.',
	text: 'Text from the page',
	textHint: 'Cells of a row have a tab between them. What’s in doubt is underlined.',
	doubts: 'Check these against the page',
	unchecked: (places: number) =>
		`${counted(places, 'place wasn’t', 'places weren’t')} checked. A value in the wrong row may strobe.`,
	/** Where a chart is shown or printed. */
	uncheckedShown: 'Each is marked [?]. Hold it against the manual, then take the mark out in your stock.',
	uncheckedMarked: 'Each is marked [?] in your chart. Take the mark out once it’s checked.',
	use: 'Add it to the chart',
	mark: 'Mark again',
	added: (page: number) => `Page ${locale.number(page)} is in the chart. Undo takes it out.`,
	full: (most: number) => `There’s room for ${locale.number(most)} letters in a chart. Mark a smaller part.`,
} as const;

/** Why a manual can't be opened, or a page of it can't be shown. */
export const manualTroubles = {
	'too-large':
		'This file is larger than 64 MB. Save only the pages with the chart as a PDF of their own, and open that.',
	unreadable: 'This file can’t be read. Save a copy on this device and open that. Or type the chart, or paste it.',
	'not-pdf': 'This isn’t a PDF. Pick the manual’s PDF file, or type the chart.',
	locked:
		'This PDF needs a password. Open it where you can, save it with no password, and open that. Or type the chart.',
	damaged: 'This PDF is damaged, and can’t be opened. Download it again, or type the chart.',
	'too-many':
		'This PDF has more than 400 pages. Save only the pages with the chart as a PDF of their own, and open that.',
	slow: 'It took too long, and was stopped. Try again, or type the chart.',
	'no-part':
		'The part that opens manuals didn’t come. Find a network once and open the file again. Or type the chart, or paste it.',
	'page-damaged': 'This page is damaged, and can’t be shown. Try another page, or type the chart.',
} as const;

/** What is said of a place in the text of a page, by the code of its doubt. */
export const pageDoubtWords = {
	turned: ({ text }: { text: string }) =>
		`‘${text}’ runs another way than the rest, and was left out. Does it belong to the chart?`,
	small: ({ text }: { text: string }) =>
		`‘${text}’ is small and raised, like the number of a footnote, and was left out. Is it part of a number?`,
	beside: () => 'Here the table on the right begins. It was put after the one on the left. Are they two modes?',
	'not-level': () => 'Which values belong to this channel? They aren’t level with its number on the page.',
	'which-row': ({ text }: { text: string }) => `‘${text}’: does it belong to this row, or to one next to it?`,
	'cut-word': ({ text }: { text: string }) => `‘${text}’ was cut at the end of a line. Is it one word?`,
	'too-much': ({ most }: { most: number }) =>
		`There’s too much text in the marked part: ${counted(most, 'piece was', 'pieces were')} read. Mark a smaller part.`,
} as const;
