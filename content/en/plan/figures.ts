import { counted, locale } from '../locale/index.ts';
import { ruleWords } from './page.ts';

/** What each figure is. `of` is a circuit, a kind of fixture, or a line. */
export const figureNames = {
	watts: (of: string) => `Watts on ${of}, all light full`,
	amperes: (of: string) => `Amps on ${of}`,
	'breaker-left': (of: string) => `Breaker rating less amps drawn (no permission): ${of}`,
	'lasting-left': (of: string) => `80 % of the breaker (US and Canada) less amps drawn (no permission): ${of}`,
	'volt-drop': (of: string) => `Voltage drop: volts lost to the last fixture on ${of}`,
	'drop-percent': (of: string) => `The same, as a share of the supply (${of})`,
	'link-left': (of: string) => `Limit of the mains link less amps drawn (no permission): ${of}`,
	surge: (of: string) => `Inrush: peak amps at switch-on, if all of ${of} comes on at once`,
	'surge-left': (of: string) => `Least that may trip the breaker at once, less that peak (no permission): ${of}`,
	'charge-amperes': () => 'Amps, at least, while all batteries charge at once (no permission)',
	'battery-hours': (of: string) => `Hours on battery at tonight’s look: ${of}`,
	'hours-spare': (of: string) => `Hours over after the show, by the sum alone: ${of}`,
	'charge-hours': (of: string) => `Hours to charge from empty, at least: ${of}`,
	weight: () => 'Weight overhead, added up',
	'unit-loads': (of: string, most: number) => `Unit loads on ${of} (${most} at most)`,
	'cable-metres': (of: string) => `Metres of data cable on ${of}`,
} as const;

/** What goes into a sum. */
export const partNames = {
	watts: 'Watts from the profiles',
	volts: 'Volts',
	'power-factor': 'Power factor',
	metres: 'Metres one way',
	'ohms-per-km': 'Ohms per kilometre',
	celsius: 'Copper at °C',
	amperes: 'Amps',
	breaker: 'Amps of the breaker',
	'watt-hours': 'Watt-hours of the battery',
	share: 'Share to count on',
	'look-watts': 'Watts at tonight’s look',
	'charge-watts': 'Watts while charging',
	kilograms: 'Kilograms known',
	fixtures: 'Fixtures',
	unknown: 'Fixtures for which nobody gave it',
	'battery-hours': 'Hours on battery',
	hours: 'Hours of show',
	link: 'Amps of the weakest link',
	surge: 'Peak amps added up',
	times: 'Times the rating, by the curve (IEC 60898)',
	'charging-watts': 'Watts into all batteries',
} as const;

/** How a number came about. */
export const howWords = {
	given: 'given',
	profile: 'from the profile here: may be a guess, go by the label',
	assumed: 'assumed',
	computed: 'worked out',
} as const;

/** Units, as they are written after a number. */
export const unitOf = {
	watts: 'W',
	amperes: 'A',
	'breaker-left': 'A',
	'lasting-left': 'A',
	'volt-drop': 'V',
	'drop-percent': '%',
	'link-left': 'A',
	surge: 'A',
	'surge-left': 'A',
	'charge-amperes': 'A',
	'battery-hours': 'h',
	'hours-spare': 'h',
	'charge-hours': 'h',
	weight: 'kg',
	'unit-loads': '',
	'cable-metres': 'm',
} as const;

export const needWords = {
	breaker: 'Ask the electrician for the amps of the breaker.',
	cable: 'Give the size and length of the feed cable.',
	weight: 'Give the weight of each fixture that hangs.',
	link: `Give the amps of the weakest of cable, link socket and plug: off their labels, or less where one plug takes less. ${ruleWords.plugLess}`,
	surge: 'Give the peak amps at switch-on of each fixture, off its label. If it isn’t there, ask the maker.',
	electrician:
		'US breakers aren’t rated B, C or D, so this can’t be worked out here. Ask the electrician (in the US, the licensed electrician or qualified person) what may come on at once.',
	/** It may be a breaker of the US, and nobody has given a curve. */
	'us-or-curve':
		'Not worked out here: this may be a US breaker, and those aren’t rated B, C or D. Ask the electrician (in the US, the licensed electrician or qualified person) what may come on at once. Outside the US, give the curve of the breaker.',
	curve:
		'Ask the electrician for the curve of the breaker: B, C or D (IEC 60898; US breakers aren’t rated so). Not known? Leave it open.',
} as const;

export const figureWords = {
	circuit: (name: string) =>
		name === '' ? 'fixtures with no circuit named (they may be on any of the others)' : `circuit ${name}`,
	line: (universe: string, run: string) => `universe ${universe}, line ${run}`,
	leaderLine: 'the line behind the leader',
	value: (value: number, unit: string) => `${locale.number(value, value < 10 ? 2 : 1)}${unit === '' ? '' : ` ${unit}`}`,
	pounds: (pounds: number, kilograms: string) => `${locale.number(pounds, pounds < 10 ? 2 : 1)} lb (${kilograms})`,
	part: (value: number) => locale.number(value, Number.isInteger(value) ? 0 : 2),
	unknown: 'not known',
	leans: 'leans on a number nobody gave',
	over: 'More than the breaker is rated for. Don’t switch on: show this sum to the electrician. If it’s on already, tell the electrician now.',
	overLasting:
		'More than 80 % of the breaker. In the US and Canada, count every rig as a load that lasts: set-up and checks count too. A row on one wall outlet may be held to less. Don’t switch on: show this sum to the electrician. If it’s on already, tell the electrician now.',
	overLink:
		'More than the label of the weakest link allows. Don’t switch on. If it’s on already, hands off the links and tell the electrician now. Ask which outlet may feed part of it. Then, with the row’s plug out at the wall and nobody able to put it back, split the row.',
	overSurge:
		'It may trip at switch-on. Don’t switch on: ask the electrician how. Groups come on at their own switches, with every link made and all hands off. Never make a link to bring one on. What has tripped stays off until the electrician has found why.',
	near: 'Over 80 % of the rating: for hours that may be too much. Ask the electrician.',
	notes: {
		watts: () =>
			'From the profiles here, all light full, and charging where a battery is fitted. They’re for 230 V: at another voltage they’re only assumed. A real fixture can draw more: add up the labels. Only fixtures with this circuit’s name are in it.',
		amperes: () =>
			'Watts ÷ (volts × power factor). It leaves out the surge at switch-on. The first link of a row carries all of it: stay within the least of cable, link socket and supply. For one phase: give the volts between the two wires that feed the fixture. Three-phase is the electrician’s sum.',
		'breaker-left': () =>
			'The rating less the amps drawn by this sum. This isn’t permission to plug in. What a circuit may carry for hours is less (in the US, 80 %), a link socket or a cable may carry less still, and at switch-on the lights draw far more for an instant. What else is on the circuit isn’t in it. The competent or licensed person on site and the local code say what it may carry.',
		'lasting-left': () =>
			'Breaker amps × 0.8 less the amps drawn by this sum. In the US a continuous load (one that lasts) may take no more than that (National Electrical Code). In the US and Canada, count every rig as one: set-up and checks count too. A row on one wall outlet may be held to less. This isn’t permission to plug in: the local code, and the licensed electrician or qualified person, come first. What else is on the circuit isn’t in it.',
		'volt-drop': () =>
			'2 × amps × kilometres × ohms per kilometre (IEC 60228, class 5, at 20 °C; 0.393 % more for each degree), for warm copper, with all of the load at the far end. For one phase: give the volts between the two wires that feed the fixture. Three-phase is the electrician’s sum. It doesn’t say what the cable may carry: a cable can be too thin for its breaker and lose few volts.',
		'drop-percent': () => 'Volts lost ÷ volts of the supply.',
		'link-left': () =>
			'The least of cable, link socket and plug, less the amps drawn by this sum, for one row on this circuit. This isn’t permission to link them. The first link of a row carries all that hangs on it. Cable on a drum carries less: unroll it. The labels and the electrician come first.',
		surge: () =>
			'The peaks off the labels, added up, as if all came on in the same instant. Labels give them for one voltage, often 230 V: at another they’re only assumed. How long they last is for the maker to say.',
		'surge-left': () =>
			'Breaker amps × the least times of its curve (IEC 60898: B 3, C 5, D 10) less the peak. This isn’t permission to switch on, above zero either. The maker’s own count for each breaker goes first, then the electrician (in the US, the licensed electrician or qualified person). What’s on already isn’t in it, nor what else is on the circuit. Curves B, C and D are those of Europe, the UK and others. US breakers aren’t rated so: leave the curve open there, and ask. Nobody swaps a breaker to stop it tripping.',
		'charge-amperes': () =>
			'Watts into all batteries ÷ (volts × power factor), with every light dark. It is this at least: chargers draw more than goes in, and watts that nobody gave are a guess. Add up the input amps on the chargers’ labels. This isn’t permission to plug in: ask the electrician which outlets, and how many on each.',
		'battery-hours': () => 'Watt-hours × the share to count on ÷ watts at the look. Cold and age take more.',
		'hours-spare': () => 'Hours on battery less the hours of show. Below zero, it goes dark before the end.',
		'charge-hours': () =>
			'Watt-hours ÷ watts into the battery. The last part goes slower, so it takes longer than this.',
		weight: () =>
			'Added up, and no more than that. It leaves out clamps, bonds and cable. Only the person responsible for rigging says what a point can take.',
		'unit-loads': () => 'What the receivers load the line with (EIA-485).',
		'cable-metres': (slack: number) =>
			`Cables along the wall with ${locale.number(slack)} m of slack each, as lengths that are made.`,
	},
	runs: (fixtures: number, metres: number, terminates: boolean) =>
		`${counted(fixtures, 'fixture', 'fixtures')}, ${locale.number(metres, 0)} m of cable${terminates ? ', a terminator at the end' : ''}`,
	splitter: (runs: number) => `A splitter with ${counted(runs, 'output', 'outputs')} in use`,
	cables: (count: number, length: number) => `${count} × ${locale.number(length, 0)} m`,
	bring: 'Data cables to bring',
	depth: 'Front-to-back distance isn’t in these lengths. Measure it, and never pull a cable tight to reach.',
	spare: 'Bring one spare of each length, and a spare terminator (common practice).',
} as const;
