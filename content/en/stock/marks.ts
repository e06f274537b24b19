import { locale } from '../locale/index.ts';

const values = (from: number, to: number): string => (from === to ? `Value ${from}` : `Values ${from} to ${to}`);
const channels = (from: number, to: number): string => (from === to ? `Channel ${from}` : `Channels ${from} to ${to}`);

/** What is said of a place in a chart, by the code of its mark. */
export const markWords = {
	'not-read': ({ text }: { text: string }) =>
		`‘${text}’ was left out. If it belongs to the chart, put it after its values.`,
	'band-before-slot': ({ text }: { text: string }) =>
		`‘${text}’ has no channel before it. Start a line with the channel’s number.`,
	'slot-or-value': ({ number }: { number: number }) =>
		`Is ${number} a channel, or a value? It was read as a value. For a channel, write CH ${number}.`,
	'numbers-in-words': ({ text }: { text: string }) =>
		`‘${text}’ was read as words. If it’s a range of values, put it on a line of its own.`,
	'words-order': ({ text }: { text: string }) =>
		`Do the words come before their values here? ‘${text}’. Put each range on a line of its own, then its words.`,
	'mixed-numbers': ({ text }: { text: string }) =>
		`‘${text}’ looks like hexadecimal, and other lines don’t. It was left out. Write 0x before hexadecimal numbers.`,
	percent: ({ text, from, to }: { text: string; from: number; to: number }) =>
		`‘${text}’ is in percent. It was taken as values ${from} to ${to}, and may be one off.`,
	hexadecimal: ({ text, from, to }: { text: string; from: number; to: number }) =>
		`‘${text}’ was read as hexadecimal: values ${from} to ${to}.`,
	gap: ({ slot, from, to }: { slot: number; from: number; to: number }) =>
		`${values(from, to)} of channel ${slot} ${from === to ? 'is' : 'are'} in no band.`,
	overlap: ({ slot, from, to }: { slot: number; from: number; to: number }) =>
		`${values(from, to)} of channel ${slot} ${from === to ? 'is' : 'are'} in two bands. Change one of them.`,
	reversed: ({ from, to }: { from: number; to: number }) =>
		`${from} to ${to} runs backwards. Put the lower value first.`,
	'past-255': ({ value }: { value: number }) => `${value} is too high. Values stop at 255.`,
	'out-of-order': ({ from, to }: { from: number; to: number }) =>
		`${from} to ${to} starts lower than the band before it. Check that it belongs to this channel.`,
	'slot-missing': ({ from, to }: { from: number; to: number }) =>
		`${channels(from, to)} ${from === to ? 'is' : 'are'} left out before this line.`,
	'cells-none': ({ from, to }: { from: number; to: number }) =>
		`Channels ${from} to ${to} come again for each cell, and none of them is here. Write them down once, for the first cell.`,
	'cells-off': ({ cells, most }: { cells: number; most: number }) =>
		`${cells} cells: we take 2 to ${most}. Check the number.`,
	'slot-twice': ({ slot }: { slot: number }) => `Channel ${slot} is here twice. Give one of them its right number.`,
	'slot-past-512': ({ slot }: { slot: number }) => `There’s no channel ${slot}. Channels run from 1 to 512.`,
	'fine-alone': ({ slot }: { slot: number }) =>
		`Channel ${slot} is called fine, and there’s no channel with the same name to go with it.`,
	'fine-bands': ({ slot }: { slot: number }) =>
		`Channel ${slot} is called fine, and has bands of its own. It was left apart.`,
	'count-differs': ({ said, found }: { said: number; found: number }) =>
		`The heading says ${said} channels, and the chart ends at ${found}.`,
	'name-missing': ({ slot }: { slot: number }) => `Channel ${slot} has no name. Write what it does after its number.`,
	'name-from-band': ({ slot, name }: { slot: number; name: string }) =>
		`Channel ${slot} is named after its first band: ‘${name}’. Give it a name if that’s wrong.`,
	'several-slots': ({ text }: { text: string }) =>
		`‘${text}’ looks like several channels on one line. Give each a line of its own.`,
	'cell-not-number': ({ text }: { text: string }) =>
		`No clear number in ‘${text}’. Write just the number or the range here.`,
	'too-long': ({ lines }: { lines: number }) =>
		`The chart was read up to line ${lines}. Leave out what isn’t part of it.`,
	unchecked: () =>
		'This line wasn’t checked against the page. Look there if it’s all in the right row. Then take [?] out.',
	'no-slots': () => 'No channel found. Start each channel on a line with its number, then its name: 1 Dimmer.',
} as const;

/** Around the marks. */
export const marksFrame = {
	heading: 'Look at these',
	none: 'All of it was read. Check it against the manual all the same.',
	at: (line: number) => `Line ${locale.number(line)}`,
	go: (line: number, said: string) => `Line ${line}: ${said} Go there.`,
	counted: (wrong: number, notes: number) =>
		`${locale.plural(wrong, `${wrong} place`, `${wrong} places`)} to look at, ${locale.plural(notes, `${notes} note`, `${notes} notes`)}`,
} as const;
