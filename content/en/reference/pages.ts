/** The reference pages, in order, by their ids, which are their addresses too. */
export const pageWords = {
	addresses: {
		heading: 'Addresses and switches',
		lead: 'Where the next fixture starts, how many fit, and which switches are up.',
	},
	levels: {
		heading: 'Levels, percent and hex',
		lead: 'One number, said in three ways. Percents are rounded half up, so that every whole percent comes back as itself.',
	},
	line: {
		heading: 'The line',
		lead: 'Pins, limits, timing and start codes, and the universes of a network. Figures of the standards were read in texts that restate them.',
	},
	fixtures: {
		heading: 'The bundled fixtures',
		lead: 'Figures, ways through the panel, and what every channel does. All of them are invented, so you won’t meet them in a hall. What you learn here is how to read a chart.',
	},
	faults: {
		heading: 'Faults',
		lead: 'Every fault this site knows, what it does on a rig, and what puts it right. To find which one you have, use the finder.',
	},
	elsewhere: {
		heading: 'What it may say elsewhere',
		lead: 'No two makers name things alike. These are words and short forms you may meet on real panels, labels and sheets, and what we call the same thing here.',
	},
	cautions: {
		heading: 'Cautions',
		lead: 'What can hurt, and where in this site it’s said again.',
	},
} as const;

/** Around the pages. */
export const referenceFrame = {
	title: 'Reference: Prep Bay',
	description:
		'Address and switch tables, pins, timing, start codes, levels, charts of the bundled fixtures, words met elsewhere, cautions.',
	heading: 'Reference',
	lead: 'Tables to look things up in, each worked out by the same arithmetic the bench runs on. Each section prints on a sheet of its own.',
	pageTitle: '{heading}: Prep Bay',
	here: 'On this page',
	cautions: 'Cautions that go with it',
	back: 'All of the reference',
	part: '{caption}, part {n} of {parts}',
} as const;
