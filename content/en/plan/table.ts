import { counted, locale } from '../locale/index.ts';

/** Words by which the columns of a pasted list are known, plain and lower case. */
export const tableWords = {
	headers: {
		name: ['name', 'label', 'what', 'description', 'purpose', 'channel name'],
		type: ['fixture', 'fixture type', 'type', 'light', 'model', 'instrument'],
		mode: ['mode', 'personality', 'footprint', 'channels', 'ch'],
		universe: ['universe', 'uni', 'u', 'line'],
		address: ['address', 'start address', 'start', 'addr', 'dmx', 'patch', 'dmx address'],
		place: ['place', 'x', 'metres', 'metres from left', 'm'],
		circuit: ['circuit', 'power', 'outlet', 'feed'],
		count: ['count', 'qty', 'quantity', 'how many', 'number of'],
	},
	channels: ['ch', 'chan', 'channel', 'channels'],
};

export const pasteWords = {
	title: 'Paste a list',
	words: 'Copy the rows in your spreadsheet and paste them here. Tabs, commas, semicolons and quotes all work.',
	box: 'Your list',
	columns: 'What each column holds',
	column: (n: number) => `Column ${n}`,
	fields: {
		name: 'Name',
		type: 'Fixture',
		mode: 'Mode',
		universe: 'Universe',
		address: 'Start address',
		place: 'Place',
		circuit: 'Circuit',
		count: 'How many',
	},
	early: 'Filled in as you did for a list with these headings.',
	skip: 'Leave out',
	header: 'The first row is a heading',
	types: 'Which fixture is meant',
	type: (found: string) => `‘${found}’ is`,
	noType: 'none of these',
	needsType: 'Say which column holds the fixture.',
	openQuote: (line: number) => `A quote that opens on line ${line} never closes. Close it, or take it out.`,
	leftOut: (n: number, most: number) =>
		`${counted(n, 'row is', 'rows are')} past the ${locale.number(most)} a plan takes, and left out.`,
	good: (n: number) => `${counted(n, 'fixture', 'fixtures')} read.`,
	bad: (n: number) => `${counted(n, 'row needs', 'rows need')} a look:`,
	line: (n: number) => `Line ${n}`,
	cell: (line: number, field: string) => `Line ${line}, ${field}`,
	more: (n: number) => `And ${n} more rows.`,
	add: (n: number) => `Add ${counted(n, 'fixture', 'fixtures')}`,
	addGood: (n: number, bad: number) =>
		`Add ${counted(n, 'fixture', 'fixtures')} and leave out ${counted(bad, 'row', 'rows')}`,
	full: (most: number) => `A plan takes ${locale.number(most)} fixtures. Add fewer.`,
	close: 'Close',
} as const;

/** Most of what a cell may say. */
interface ReadMost {
	readonly universe: number;
	readonly address: number;
	readonly metres: number;
	readonly count: number;
	readonly characters: number;
}

/** What keeps a row from being read, by its id. */
export const rowTroubles = {
	'no-type': () => 'says no fixture',
	'unknown-type': () => 'names a fixture that isn’t here',
	'unknown-mode': () => 'names a mode this fixture doesn’t have',
	'no-universe': ({ universe }: ReadMost) => `a universe is a whole number from 1 to ${universe}`,
	'no-address': ({ address }: ReadMost) => `a start address is a whole number from 1 to ${address}`,
	'no-place': ({ metres }: ReadMost) => `a place is metres from the left, up to ${metres}`,
	'no-count': ({ count }: ReadMost) => `a count is a whole number from 1 to ${count}`,
	'too-many-cells': () => 'has more cells than there are columns',
	'too-long': ({ characters }: ReadMost) => `is longer than ${characters} characters`,
} as const;
