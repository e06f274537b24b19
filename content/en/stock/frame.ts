import { counted, locale } from '../locale/index.ts';

/** The page. */
export const stockPage = {
	title: 'Your stock: Prep Bay',
	description:
		'Your crew’s own fixtures: paste the chart from the manual or open a GDTF file, check what was read, and put the fixture on the bench.',
	heading: 'Your stock',
	lead: 'Put in the fixtures you’ll meet tonight. Paste the chart from the manual, or open its PDF or a GDTF file. Check what was read, and try it on the bench.',
	needsScript: 'Your stock is read in the page and needs JavaScript, which is turned off here.',
	loading: 'Getting your stock…',
	/** While a part of the page comes, and when it does not. */
	coming: 'Getting it…',
	failed: 'It didn’t come. Check the network.',
	again: 'Try again',
} as const;

/** The list and the editor. */
export const stockWords = {
	list: 'Your fixtures',
	none: 'No fixtures yet. Add one and paste its chart from the manual, or open a GDTF file.',
	add: 'Add a fixture',
	nameNew: (n: number) => `Fixture ${n}`,
	open: 'Edit',
	openOne: (name: string) => `Edit ${name}`,
	put: 'Put it on the bench',
	putOne: (name: string) => `Put it on the bench: ${name}`,
	remove: 'Delete',
	removeOne: (name: string) => `Delete ${name}`,
	removed: (name: string) => `${name} is deleted.`,
	bringBack: 'Bring it back',
	changed: (when: string) => `Last changed ${when}`,
	back: 'Back to the list',
	name: 'Name',
	nameHint: 'What your crew calls it.',
	chart: 'Chart',
	chartHint:
		'Paste or type the channel chart. A line for each channel: its number, its name, then values and what they do. A table from a spreadsheet works too. Cells: write the first one’s channels, then 3-5 for each of 4 cells.',
	example: '1 Dimmer 0-255\n2 Strobe 0-9 off 10-255 slow to fast\n3 Red\n4 Green\n5 Blue',
	read: 'What was read',
	readNone: 'Nothing yet. Paste or type the chart first.',
	readMode: (name: string, channels: number) => `${name}: ${counted(channels, 'channel', 'channels')}`,
	readUnnamed: 'No mode heading',
	columns: { channel: 'Channel', values: 'Values', does: 'What it does' },
	copyMode: 'Copy this mode',
	copyOne: (name: string) => `Copy this mode: ${name}`,
	copied: (name: string) => `A copy of ${name} is at the end of the chart. Change it there.`,
	copyName: (name: string) => `${name} (copy)`,
	light: 'Light and power, off the label',
	lightHint: 'Leave a box empty if you don’t know. We’ll assume a figure, and say so.',
	shape: 'Shape',
	shapes: { wash: 'Round or square', bar: 'Long bar' },
	beam: 'Beam angle (degrees)',
	watts: 'Power at full (W)',
	lumens: 'Light at full (lm)',
	feed: 'Runs on',
	feeds: { unknown: 'Don’t know', battery: 'Battery', mains: 'Mains (power, in the US)' },
	wattHours: 'Battery (Wh)',
	link: 'Mains link socket',
	links: { unknown: 'Don’t know', yes: 'Yes', no: 'No' },
	notNumber: (least: number, most: number) =>
		`Write a number from ${locale.number(least)} to ${locale.number(most)}, or leave it empty.`,
	undo: 'Undo',
	kept: 'Kept on this device as you type.',
	putFailed: 'It couldn’t be put on the bench. Load the page again, and try once more.',
	fixOf: (name: string) => `${name} isn’t ready: open it, and fix the marked places in its chart.`,
	modeNamed: (channels: number) => `${channels} channel mode`,
	fix: 'Fix the marked places first, then it can go on the bench.',
	standIn: 'The panel on the bench is a stand-in. The real panel has other keys and menus.',
	otherTab: 'Another tab changed this fixture. What it wrote is shown now; Undo brings yours back.',
	more: 'Files and links',
	save: 'Save to a file',
	openFile: 'Open a file',
	openHint: 'A file saved here, or a fixture file in the open GDTF format (.gdtf).',
	fromFile: 'Read from a GDTF file.',
	opened: (n: number) => `${counted(n, 'fixture', 'fixtures')} added from the file.`,
	fromLink: (n: number) => `${counted(n, 'fixture', 'fixtures')} added from the link.`,
	share: 'Copy a link',
	shareOne: (name: string) => `Copy a link to ${name}`,
	shared: 'The link is copied. Whoever opens it gets this fixture.',
	shareFailed: 'The browser wouldn’t copy it. Select the link below and copy it yourself.',
	shareLabel: 'Link',
	fileName: 'prep-bay-stock.json',
	full: (most: number) => `There’s room for ${most} fixtures. Delete one first.`,
} as const;

/** What the bench does for a band or a channel, beside the manual's own words. */
export const effectWords = {
	drives: { intensity: 'Dims all of the light', emitter: 'Dims this colour', speed: 'Speed of the programme' },
	effects: {
		nothing: 'Does nothing here',
		open: 'Steady light',
		dark: 'Blackout',
		held: 'Static colour',
		programme: 'Programme',
	},
	strobe: (slow: number, fast: number) => `Strobe, ${slow} to ${fast} flashes a second`,
} as const;

/** Where something of what is kept could not be read, or could not be kept. */
export const stockKeeping = {
	asideName: 'prep-bay-stock-damaged.json',
	saveAside: 'Save what was set aside',
	dismiss: 'Hide this',
	notKept: 'This browser keeps nothing for this page. Save your fixtures to a file before you close it.',
	damaged: (count: number) =>
		count === 0
			? 'Your stock on this device was damaged. It was set aside, and the list starts again.'
			: `${counted(count, 'fixture was', 'fixtures were')} damaged and set aside. The rest is here.`,
} as const;
