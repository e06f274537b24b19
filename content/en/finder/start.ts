import { counted } from '../locale/index.ts';

/** The first screen. */
export const startWords = {
	quick: 'No sheet? Three taps',
	otherWays: 'A rig with names',
	otherHint: 'With a sheet, every fixture has its own name and every value is the one you meant.',
	step: (at: number, of: number) => `${at} of ${of}`,
	back: 'Back',
} as const;

/** Three taps in place of a sheet. */
export const quickWords = {
	count: 'How many fixtures?',
	countOne: (n: number) => counted(n, 'fixture', 'fixtures'),
	linked: 'How are they linked?',
	links: {
		desk: { name: 'To a desk', more: 'One line, from one to the next' },
		leader: { name: 'A leader and followers', more: 'The first leads, no desk' },
		alone: { name: 'Each alone', more: 'No data cables at all' },
		'two-universes': { name: 'To a desk, two universes', more: 'Half on each output' },
	},
	panel: 'What is on the back?',
	panels: {
		'tallow-6': { name: 'A display of four characters', more: 'Battery wash, four keys, a remote' },
		'picket-8': { name: 'A display with lines of text', more: 'Mains bar, four keys' },
		cobble: { name: 'Ten small switches', more: 'Older mains wash, no display' },
		'thimble-4': { name: 'Four characters, no menu', more: 'Small mains wash, three keys' },
	},
	/** What such a rig is called: it has no name of its own. */
	named: (fixtures: string, link: string) => `${fixtures}: ${link.charAt(0).toLowerCase()}${link.slice(1)}`,
	/** Said wherever a value of such a rig is named. */
	assumed:
		'With no sheet, panels, addresses and levels are stand-ins. Where yours differ, go by your own panel, and by what you meant.',
} as const;

/** The rigs of the made-up hall, by their ids. */
export const bundledWords = {
	'one-wash': { name: 'One wash by the door', more: 'Alone, on mains, with a remote' },
	'four-in-line': { name: 'Four washes on a desk', more: 'One line, one universe' },
	'leader-and-three': { name: 'A leader and three followers', more: 'Battery washes, no desk' },
	'two-universes': { name: 'Bars on two universes', more: 'Four, over the stage' },
	'mixed-panels': { name: 'Whatever was in the store', more: 'Displays and switches on one line' },
	'long-line': { name: 'Twenty-four bars round the yard', more: 'One long line' },
} as const;

export const fixtureWords = {
	title: 'Which one?',
	hint: 'The one that does wrong. If several do, the first of them along the line.',
} as const;

export const complaintWords = {
	title: 'What’s wrong?',
	with: (fixture: string) => `With ${fixture}`,
	none: 'None of these?',
	noneSays:
		'These are all the complaints known here that this rig can have with this fixture. For anything else, mark it and have a competent repairer look at it. A swap at height is for the competent person on site. So is a swap of anything on mains (in the US, it’s for the qualified person). In a show, ask the operator first.',
	nothing: 'By its sheet this fixture is meant to do nothing that could be missed. Choose another one.',
} as const;
