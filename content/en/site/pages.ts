/** The bench page's words around the bench itself. */
export const benchPage = {
	title: 'Bench: Prep Bay',
	description: 'Simulated LED fixtures with panel, line, desk and remote, and the light they throw on a wall.',
	heading: 'The bench',
	lead: 'Simulated fixtures on a bench, and the wall they light.',
	needsScript: 'The bench runs in the page and needs JavaScript, which is turned off here.',
} as const;

/** The words around the list of drills. */
export const drillsPage = {
	title: 'Drills: Prep Bay',
	description:
		'Tasks on simulated fixtures, made fresh each time and marked: addresses, modes, rows, lines, leaders, desk and remote.',
	heading: 'Drills',
	lead: 'Each is made fresh, as often as you like, and marked by the rig itself: what’s right, what is still wrong, and how many presses will do.',
	needsScript: 'Drills run in the page and need JavaScript, which is turned off here.',
} as const;

/** The way to all that teaches, row by row. */
export const learnPage = {
	title: 'Learn: Prep Bay',
	description: 'Lessons, drills and a review of what you learnt, each on a simulated bench.',
	heading: 'Learn',
	rows: [
		{ href: '/lessons/', name: 'Lessons', why: 'From the case to the wall and back, each with a bench in the page.' },
		{ href: '/drills/', name: 'Drills', why: 'One task on the bench, made fresh each time and marked.' },
		{ href: '/review/', name: 'Review', why: 'What you learnt, asked again before it fades. Five minutes.' },
		{ href: '/finder/practise/', name: 'Hidden faults', why: 'Something is wrong with the rig. Find it, then fix it.' },
	],
} as const;

/** The way to all that a trainer needs, row by row. */
export const teachPage = {
	title: 'Teach: Prep Bay',
	description: 'Set quizzes, collect the results, and plan an hour or a day of lessons.',
	heading: 'Teach',
	rows: [
		{
			href: '/papers/',
			name: 'Quizzes and results',
			why: 'Set a quiz, hand it out, collect the results, and see what to teach again.',
		},
		{
			href: '/lessons/plan/',
			name: 'Plans',
			why: 'An hour, a day or two days of lessons: what each takes and what to bring.',
		},
		{ href: '/bench/', name: 'A bench to send', why: 'Set a bench up, break it, and share it as a link.' },
		{
			href: '/finder/tree/',
			name: 'Fault tree',
			why: 'A whole fault tree for one complaint, on one sheet of paper, both sides.',
		},
	],
} as const;

/** The words around one drill. */
export const drillPage = {
	title: 'Drill: Prep Bay',
	description: 'One drill on the bench: a task, the fixtures to do it with, a mark and hints.',
	heading: 'Drill',
} as const;

/** The finder page's words around the finder itself. */
export const finderPage = {
	title: 'Fault finder: Prep Bay',
	description: 'From what’s wrong with a fixture to the cause, one check at a time. Works on a phone with no network.',
	heading: 'Fault finder',
	lead: 'Say what’s wrong. Then one look, try or swap at a time, in the order that gets you to the cause soonest.',
	needsScript: 'The finder works the rig out in the page and needs JavaScript, which is turned off here.',
} as const;

/** The about page's words around its prose. */
export const aboutPage = {
	title: 'About: Prep Bay',
	description: 'What the simulated rig works out, what it leaves out, and the cautions for the real work.',
	heading: 'About Prep Bay',
	cautionsHeading: 'Cautions',
} as const;

/** The page for an address with nothing at it. */
export const lostPage = {
	title: 'Nothing here: Prep Bay',
	description: 'There’s no page at this address.',
	heading: 'No signal',
	lead: 'There’s no page at this address.',
	back: 'Back to the start',
} as const;

/** The page shown where a page is wanted that is not on the device, with no network. */
export const notKeptPage = {
	title: 'Not on this device: Prep Bay',
	description: 'With no network, only what is kept on the device opens.',
	heading: 'Not on this device yet',
	lead: 'There’s no network just now, and this page wasn’t kept before. What you have done isn’t lost.',
	next: 'The pages in the site’s menu open as they are. Once there’s a network again, load this page again and keep the rest of the site.',
} as const;
