import { counted, locale } from '../locale/index.ts';

/** A fixture read from an open fixture file, and one written to such a file. */
export const fileWords = {
	heading: 'Found in the file',
	lead: 'Nothing is kept yet. Look at what was lost and what was assumed first.',
	reading: 'Reading the file…',
	slow: 'The file took too long to read. Choose another file.',
	noWorker:
		'The part that reads fixture files didn’t come. Check the network, load the page again, and open the file again.',
	broke: 'The file couldn’t be read. Load the page again, and open the file again.',
	tooLong: 'There’s too much in this file to keep. Pick fewer modes.',
	full: (most: number) => `There’s room for ${most} fixtures. Delete one first, then open the file again.`,
	keep: 'Keep it',
	leave: 'Don’t keep it',
	kept: (name: string) => `${name} is in your stock.`,
	modes: 'Modes to take',
	modesHint: 'Pick those you use. Fewer modes make a shorter menu.',
	mode: (name: string, channels: number | null) =>
		channels === null ? name : `${name} (${counted(channels, 'channel', 'channels')})`,
	modeUnnamed: (place: number) => `Mode ${place}`,
	noMode: 'Pick at least one mode.',
	chart: 'What was read',
	lost: (n: number) => (n === 0 ? 'Nothing was lost' : `Lost or changed: ${locale.number(n)}`),
	lostLead: 'The file says these things. Here they’re lost, or not quite the same.',
	lostNone: 'Everything the file says of its channels and its light has a place here.',
	group: (name: string, n: number) => `${name} (${locale.number(n)})`,
	more: (n: number) => `Show ${locale.number(n)} more`,
	notWorded: (n: number) => `${counted(n, 'note', 'notes')} can’t be shown. Open the fixture file again to see them.`,
	alsoAssumed: 'Assumed because the file doesn’t say',
	assumedLead:
		'No file says everything. Each line below is our guess, with what it changes. Read its label and manual. Then look at the real one, with everyone told.',
	labelHint: 'What you fill in here replaces what the file says. Leave a box empty to go by the file.',
	standIn: 'Its panel is a stand-in: no such file says anything of a panel. The real one has other keys and menus.',
	write: 'Save as GDTF',
	writeOne: (name: string) => `Save as GDTF: ${name}`,
	writeTitle: 'Save as GDTF',
	writeLead:
		'GDTF is an open format for fixture files. It can’t hold everything. This isn’t in the file, or not as it was:',
	writeDo: 'Save the file',
	writeClose: 'Close',
	writing: 'Writing the file…',
	written: 'The file is saved. Check it on the desk before doors, with everyone told: it may flash.',
	writeFailed: 'The file couldn’t be written. Load the page again, and try once more.',
	fileName: (name: string) => `${name}.gdtf`,
} as const;
