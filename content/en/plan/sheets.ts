import { counted, locale } from '../locale/index.ts';

const two = (n: number): string => String(n).padStart(2, '0');
const mm = (n: number): string => locale.number(n, 1);

/** Labels of fixtures and cables, and the sheet they come on. */
export const labelWords = {
	lead: 'Type what your label sheet measures. Print the first page on plain paper and hold it up against a sheet of labels: in the print window, set the scale to 100 %.',
	what: 'Labels for',
	whats: { fixtures: 'fixtures', cables: 'both ends of each data cable' },
	paper: 'Paper',
	papers: { a4: 'A4 sheet', letter: 'Letter sheet', strip: 'Label printer, on tape' },
	numbers: {
		columns: 'Labels across',
		rows: 'Labels down',
		top: 'Margin at top and bottom, mm',
		side: 'Margin at the sides, mm',
		gapAcross: 'Gap across, mm',
		gapDown: 'Gap down, mm',
		used: 'Labels used up on the first sheet',
		tape: 'Width of the tape, mm',
		length: 'Length of a label, mm',
	},
	size: (width: number, height: number) => `Each label is ${mm(width)} by ${mm(height)} mm.`,
	small: (width: number, height: number) =>
		`That leaves too little to read by torch. A label needs ${mm(width)} by ${mm(height)} mm at least: take fewer across or down, or less margin.`,
	cut: (n: number) =>
		`${counted(n, 'label has', 'labels have')} more text than room. Shorten the names, or take larger labels, before you print.`,
	cable: (n: number) => `C${locale.number(n)}`,
	metres: (n: number) => `${locale.number(n)} m`,
	here: { from: (name: string) => `This end: ${name}, out`, to: (name: string) => `This end: ${name}, in` },
	there: { from: (name: string) => `Other end: ${name}, out`, to: (name: string) => `Other end: ${name}, in` },
} as const;

/** The line plan. */
export const lineWords = {
	lead: 'Along the room from the left, in the order the data cable runs. Numbers are those of the list. Black dots are overhead, the square is the desk or splitter, and the bar is the terminator. It doesn’t show doors or walkways: keep cable out of exit routes, and ask before it crosses a walkway.',
	move: 'Drag a number to where its light goes, or move it by the arrow keys: half a metre at a time. Type a finer place in the plan. A light that hangs is moved in the plan only: the person responsible for rigging moves the real one.',
	cables: 'Data cables',
	drawn: (names: readonly string[]) => `The line through ${locale.list(names)}.`,
	ends: (names: readonly string[]) =>
		names.length === 0 ? 'No terminators.' : `Terminator in data out of: ${locale.list(names)}.`,
	heads: { n: 'Cable', universe: 'Universe', from: 'From', to: 'To', length: 'Length' },
} as const;

const dayBefore = (days: number): string =>
	days === 0 ? '' : days === 1 ? ' the day before' : ` ${locale.number(days)} days before`;

/** Load sheet and charge plan. */
export const loadWords = {
	load: 'Load sheet',
	charge: 'Charge plan',
	volts: (volts: number) =>
		`All amps here are for a supply of ${locale.number(volts)} V. On another supply they’re wrong: ask what yours is.`,
	noLoad: 'Nothing on the mains, and nothing overhead.',
	countsAsBattery:
		'A light with a battery and no circuit named counts as on battery. Is one plugged in? Name its circuit: then its amps and the mains steps come.',
	noCharge: 'Nothing runs on a battery.',
	heads: { what: 'What', value: 'Comes to', sum: 'From' },
	part: (name: string, value: string, how: string) => `${name}: ${value} (${how})`,
	chargedBy: 'Charged by, on the day of the show',
	at: (hour: number, minute: number, daysBefore: number) => `${two(hour)}:${two(minute)}${dayBefore(daysBefore)}`,
	plugIn: (of: string, by: string, at: string) =>
		`${of}: to have a chance of being full by ${by}, plug in before ${at}. The sum leaves out the slow last part.`,
	noTime: (of: string) => `${of}: say when it must be charged, and this says when to plug in.`,
	stay: 'Charge only while somebody stays with it. Nobody there at that time? Start earlier the day before, or bring charged ones.',
	where:
		'Use the charger or inlet that the maker approves. Put it on a hard surface that won’t burn, with air around it, indoors and dry, out of exit routes. Never below 0 °C (32 °F), nor below what the label says, where that’s warmer. Never one that’s hot, dropped, wet or swollen.',
	slow: 'Allow more: the last part goes slower, and old batteries take longer.',
} as const;
