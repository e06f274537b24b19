import { counted, locale } from '../locale/index.ts';

/** What each figure is. `of` is a circuit, a kind of fixture, or a line. */
export const figureNames = {
	watts: (of: string) => `Watts on ${of}, all light full`,
	amperes: (of: string) => `Amps on ${of}`,
	'breaker-left': (of: string) => `Amps left under the breaker of ${of}`,
	'volt-drop': (of: string) => `Volts lost to the last fixture on ${of}`,
	'drop-percent': (of: string) => `The same, as a share of the supply (${of})`,
	'battery-hours': (of: string) => `Hours on battery at tonight’s look: ${of}`,
	'hours-spare': (of: string) => `Hours to spare after the show: ${of}`,
	'charge-hours': (of: string) => `Hours to charge from empty: ${of}`,
	weight: () => 'Kilograms overhead, added up',
	'unit-loads': (of: string) => `Unit loads on ${of} (32 at most)`,
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
	unknown: 'Fixtures with no weight given',
	'battery-hours': 'Hours on battery',
	hours: 'Hours of show',
} as const;

/** How a number came about. */
export const howWords = {
	given: 'given',
	profile: 'from the profile',
	assumed: 'assumed',
	computed: 'worked out',
} as const;

/** Units, as they are written after a number. */
export const unitOf = {
	watts: 'W',
	amperes: 'A',
	'breaker-left': 'A',
	'volt-drop': 'V',
	'drop-percent': '%',
	'battery-hours': 'h',
	'hours-spare': 'h',
	'charge-hours': 'h',
	weight: 'kg',
	'unit-loads': '',
	'cable-metres': 'm',
} as const;

export const needWords = {
	breaker: 'Give the amps of the breaker.',
	cable: 'Give the size and length of the feed cable.',
	weight: 'Give the weight of each fixture that hangs.',
} as const;

export const figureWords = {
	circuit: (name: string) => (name === '' ? 'circuits not named' : `circuit ${name}`),
	line: (universe: string, run: string) => `universe ${universe}, line ${run}`,
	leaderLine: 'the line behind the leader',
	value: (value: number, unit: string) => `${locale.number(value, value < 10 ? 2 : 1)}${unit === '' ? '' : ` ${unit}`}`,
	part: (value: number) => locale.number(value, 2),
	unknown: 'not known',
	leans: 'leans on a number nobody gave',
	over: 'More than the breaker is rated for.',
	notes: {
		watts: 'The most this can draw: all light full, and charging where a battery is fitted.',
		amperes: 'Watts ÷ (volts × power factor).',
		'breaker-left':
			'The rating less the amps drawn. What a circuit may carry for hours is less, and the competent or licensed person on site says how much.',
		'volt-drop': '2 × amps × kilometres × ohms per kilometre, for warm copper, with all of the load at the far end.',
		'drop-percent': 'Volts lost ÷ volts of the supply.',
		'battery-hours': 'Watt-hours × the share to count on ÷ watts at the look. Cold and age take more.',
		'hours-spare': 'Hours on battery less the hours of show. Below zero, it goes dark before the end.',
		'charge-hours': 'Watt-hours ÷ watts into the battery. The last part goes slower.',
		weight:
			'Added up, and no more than that. It leaves out clamps, bonds and cable. Only the person responsible for rigging says what a point can take.',
		'unit-loads': 'What the receivers load the line with (EIA-485).',
		'cable-metres': 'Cables along the wall with 2 m of slack each, as lengths that are made.',
	},
	runs: (fixtures: number, metres: number) =>
		`${counted(fixtures, 'fixture', 'fixtures')}, ${locale.number(metres, 0)} m of cable, a terminator at the end`,
	splitter: (runs: number) => `A splitter with ${counted(runs, 'output', 'outputs')} in use`,
	cables: (count: number, length: number) => `${count} × ${locale.number(length, 0)} m`,
	bring: 'Data cables to bring',
	spare: 'Bring one spare of each length, and a spare terminator (common practice).',
} as const;
