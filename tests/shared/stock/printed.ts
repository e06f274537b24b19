import type { Profile } from '../../../shared/profile/index.ts';
import { type PrintedMode, type PrintedSlot, printMode, type ReadChart } from '../../../shared/stock/index.ts';

/** The modes of a profile as a manual would chart them. */
export const chartsOf = ({ modes }: Profile): PrintedMode[] =>
	modes.map(({ name, slots }) => ({
		name,
		slots: slots.map(({ at, fine, name: slot, drives }) => ({
			at,
			fine,
			name: slot,
			bands: drives.kind === 'bands' ? drives.bands.map(({ from, to, name: words }) => ({ from, to, words })) : [],
		})),
	}));

/** What is to be told from a chart, whichever way it was printed: a single band of all values with no words is no band. */
export const bare = (modes: readonly PrintedMode[] | ReadChart['modes']) =>
	modes.map(({ name, slots }) => ({
		name,
		slots: slots.map(({ at, fine, name: slot, bands }) => ({
			at,
			fine: fine ?? null,
			name: slot,
			bands: bands
				.map(({ from, to, words }) => `${from}-${to} ${words}`)
				.filter((band, _, all) => all.length > 1 || band !== '0-255 '),
		})),
	}));

const WHOLE = [{ from: 0, to: 255, words: '' }];
const hex = (level: number): string => level.toString(16).toUpperCase().padStart(2, '0');
const numbers = ({ at, fine }: PrintedSlot, sign = '/'): string =>
	fine === undefined ? `${at}` : `${at}${sign}${fine}`;
const bandsOf = ({ bands }: PrintedSlot) => (bands.length === 0 ? WHOLE : bands);

/** A table with a head: a row a band, the slot's number and name only in its first. */
const table =
	(range: (from: number, to: number) => string, row: (cells: readonly string[]) => string, heads: readonly string[]) =>
	({ name, slots }: PrintedMode): string =>
		[
			name,
			row(heads),
			...slots.flatMap((slot) =>
				bandsOf(slot).map(({ from, to, words }, i) =>
					row([i === 0 ? numbers(slot) : '', i === 0 ? slot.name : '', ...range(from, to).split('\t'), words]),
				),
			),
		].join('\n');

const tabs = (cells: readonly string[]): string => cells.join('\t');
const strokes = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
const HEADS = ['Channel', 'Function', 'Value', 'Description'];

/** Lines of running text, the bands on a line with their slot or set in below it. */
const text =
	(range: (from: number, to: number) => string, between: string, before = '') =>
	({ name, slots }: PrintedMode): string =>
		[
			name,
			...slots.map((slot) =>
				[
					`${before}${numbers(slot)}  ${slot.name}`,
					...slot.bands.map(({ from, to, words }) => `${range(from, to)} ${words}`),
				].join(between),
			),
		].join('\n');

/** A fine half in a row of its own. */
const fineApart = ({ name, slots }: PrintedMode): string =>
	[
		name,
		...slots
			.flatMap((slot): PrintedSlot[] =>
				slot.fine === undefined
					? [slot]
					: [
							{ ...slot, fine: undefined },
							{ at: slot.fine, name: `${slot.name} fine`, bands: [] },
						],
			)
			.toSorted((a, b) => a.at - b.at)
			.map((slot) => printMode({ name: '', slots: [slot] })),
	].join('\n');

/** Ways to print a mode's chart. */
export const STYLES: Readonly<Record<string, (mode: PrintedMode) => string>> = {
	house: printMode,
	spreadsheet: table((from, to) => `${from}-${to}`, tabs, HEADS),
	'first and last': table((from, to) => `${from}\t${to}`, tabs, ['CH', 'Name', 'From', 'To', 'Meaning']),
	strokes: table((from, to) => `${from} – ${to}`, strokes, HEADS),
	'hexadecimal table': table((from, to) => `${hex(from)}h-${hex(to)}h`, tabs, ['Slot', 'Function', 'Hex', 'Effect']),
	'run on': text((from, to) => `${from}-${to}`, '  '),
	'a line a band': text((from, to) => `${from} to ${to}`, '\n    '),
	'channel words': text((from, to) => `${from}..${to}`, '\n  ', 'CH '),
	'leading noughts': text((from, to) => `${`${from}`.padStart(3, '0')}–${`${to}`.padStart(3, '0')}`, '\n\t'),
	'hexadecimal text': text((from, to) => `0x${hex(from)}-0x${hex(to)}`, ' | '.replaceAll('|', ';')),
	'fine apart': fineApart,
};
