/** Address and switch tables. */
export const addressWords = {
	next: {
		heading: 'Start addresses back to back',
		says: [
			'The next free address is the start address plus the footprint. Each column is one footprint, the number of channels (slots, in the standard) a fixture takes in its mode; each row is one more fixture.',
			'Example: {n} fixtures of {footprint} channels from address 1. The last of them starts at {start}, and the next free address is {next}.',
		],
		caption: 'Start address of each fixture of a row, by footprint',
		first: 'Fixture',
		column: '{n} {n?channel|channels}',
		none: '–',
	},
	fit: {
		heading: 'How many fit in one universe',
		says: [
			'A universe has {slots} channels. A fixture whose last channel would lie past {slots} loses what is past it: it doesn’t go on in the next universe.',
		],
		caption: 'Fixtures that fit from address 1, by footprint',
		head: ['Footprint', 'How many fit', 'Last one starts at', 'Channels left over', 'Highest start address'],
	},
	weights: {
		heading: 'Address switches: weights',
		says: [
			'Each of the nine switches adds its weight when it’s on. A tenth, where there’s one, has another job.',
			'Read the label for which way is on. Two ways of counting are usual, and there are others. By the plain sum, {sumMissing} can’t be set. Counted from zero, the address is the sum and one more: all nine up is {plusUp}.',
			'By the plain sum, all nine down comes to nothing, and what a fixture does then is up to its maker. It may take it as the first address, work by itself, or not listen at all.',
			'A fixture one channel out often counts the other way.',
		],
		caption: 'What each switch adds',
		head: ['Switch', 'Adds'],
		exampleCaption: 'Worked examples',
		exampleHead: ['Address', 'Up, plain sum', 'Up, counted from zero'],
	},
	sum: {
		heading: 'Address switches: plain sum',
		says: [
			'Find the address. The row says which of switches 1 to 5 are up, the column which of 6 to 9. All others are down.',
			'There’s no address with all nine down: what a fixture does then is up to its maker.',
		],
		caption: 'Start addresses 1 to {highest} by switches, plain sum',
	},
	plus: {
		heading: 'Address switches: counted from zero',
		says: ['The same, for fixtures whose address is the sum of the switches and one more.'],
		caption: 'Start addresses 1 to {highest} by switches, counted from zero',
	},
	corner: '1–5 up',
	makers: '–',
	none: 'none',
	cannot: 'can’t be set',
} as const;

/** Level tables. */
export const levelWords = {
	percents: {
		heading: 'Percent to level',
		says: [
			'The level to type for a percent, and every level that is shown as that percent. Some desks drop what is after the point instead, and then a display can be one percent lower.',
		],
		caption: 'Levels by percent',
		head: ['Percent', 'Type', 'Hex', 'Shown so'],
		to: '{from} to {to}',
	},
	levels: {
		heading: 'Level to percent and hex',
		says: [
			'Each cell is one level with its percent. The row gives the first digit in hex, the column the second: {example} is {hex}.',
		],
		caption: 'All {count} levels',
		corner: 'Hex',
	},
} as const;

/** Line and network tables. */
export const lineWords = {
	pins: {
		heading: 'Pins',
		says: [
			'Looking at the numbers moulded beside the pins. Source: ANSI E1.11.',
			'Some old three-pin kit has data plus on 2 and data minus on 3 (common practice, from memory). Read its label.',
		],
		caption: 'What is on each pin',
		head: ['Pin', 'Wire', 'On three-pin plugs'],
		wires: {
			common: 'Common, and the cable’s screen',
			'data-minus': 'Data minus',
			'data-plus': 'Data plus',
			'second-minus': 'Second pair, minus: rarely wired',
			'second-plus': 'Second pair, plus: rarely wired',
		},
		yes: 'Yes',
		no: 'Not there',
	},
	limits: {
		heading: 'What a line can take',
		says: [
			'Out of one, into the next, a terminator in the last. For more than this, put in a splitter: each of its outputs is a fresh line.',
			'These are ends of the scale, not aims. Terminate every line, and count each fixture as one load unless its label says less.',
		],
		caption: 'Limits of one line',
		head: ['What', 'Limit', 'Source'],
		rows: {
			loads: ['Unit loads', 'EIA-485'],
			eighths: ['Receivers of an eighth of a load each', 'EIA-485'],
			terminator: ['Terminator, across pins 2 and 3 at the far end', 'ANSI E1.11'],
			terminators: ['Terminators, one at each end at most', 'EIA-485'],
			metres: ['Data cable from the desk to the last receiver', 'Makers’ wiring notes'],
			open: ['Open end that still gives no trouble on the bench here', 'Rule of thumb, worked out; not to plan by'],
			microphone: ['Microphone cable that still gives no trouble on the bench here', 'No source; not to plan by'],
			talkers: ['Controllers on one line', 'EIA-485'],
		},
		ohms: '{n} Ω',
		metres: '{n} m',
	},
	timing: {
		heading: 'Timing',
		says: [
			'Source: ANSI E1.11. What a receiver must still take, and that it may not take data for lost sooner, are from memory.',
			'How much longer a fixture waits is its maker’s choice. The fixtures here wait no longer.',
		],
		caption: 'Times on the line',
		head: ['What', 'Sent', 'Still taken'],
		rows: {
			bit: 'One bit',
			slot: 'One channel (slot, in the standard): start bit, eight bits, two stop bits',
			break: 'Break, at least',
			mark: 'Mark after break, at least',
			shortest: 'From break to break, at least',
			longest: 'From break to break, at most',
			loss: 'Loss of data: no sooner than',
		},
		microseconds: '{n} µs',
		seconds: '{n} s',
		rateCaption: 'How often a packet goes out, at the fastest',
		rateHead: ['Channels', 'One packet takes', 'Packets a second'],
	},
	codes: {
		heading: 'Start codes',
		says: ['The first value of a packet says what the rest is. A fixture takes its levels from code 0 alone.'],
		caption: 'Start codes with a name',
		head: ['Code', 'Hex', 'What follows'],
	},
	network: {
		heading: 'Universes on a network',
		says: [
			'Source: ANSI E1.31. Port {port}. A universe without a packet for {loss} seconds is lost. A full packet is {bytes} bytes.',
			'The address is 239.255, then the universe divided by 256, then what’s left over.',
		],
		caption: 'Multicast address by universe',
		head: ['Universe', 'Address'],
	},
} as const;

/** Tables of faults, by family. */
export const faultWords = {
	headings: {
		power: 'Power and battery',
		panel: 'Settings at a panel',
		remote: 'The remote',
		line: 'The line',
		desk: 'At the desk',
		fixture: 'The fixture itself',
		light: 'What is in the way of the light',
	},
	says: ['Each example is from one of the bundled rigs. Names in it are those of that rig.'],
	/** What a box that sends a line on is called in the examples. */
	box: 'splitter',
	caption: '{heading}: faults',
	head: ['Fault', 'For example', 'What puts it right', 'Cautions'],
	none: '–',
	weights: {
		heading: 'How common we take each fault to be',
		says: [
			'The finder starts from these numbers, before anything is looked at. Ten counts as ten times as likely as one, in one place: each cable and each light counts on its own.',
			'No count of real faults is behind them that we know of. They say what crews commonly tell, or what we guess. If your stock breaks in other ways, don’t trust the first check too far. Verdicts on your own device shift them.',
		],
		caption: 'How common we take each fault to be',
		head: ['Fault', 'Weight', 'Why', 'From'],
		standing: { trade: 'Common practice, no source', ours: 'Our guess, no source' },
	},
} as const;

/** The table of cautions. */
export const cautionWords = {
	where: {
		heading: 'Where each is said',
		caption: 'Cautions, and the bundled fixtures that carry them',
		head: ['Caution', 'What can happen', 'Fixtures that carry it'],
		none: 'None: it goes with the place and the work',
	},
	whole: 'Each in full, with what to do',
} as const;
