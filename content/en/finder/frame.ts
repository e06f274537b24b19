import { led } from './amounts.ts';

/** Words of the finder as a whole. */
export const finderWords = {
	loading: 'Getting the finder…',
	startAgain: 'Start again',
	startAgainSure: 'Start again and lose this walk?',
	startAgainYes: 'Start again',
	keepOn: 'Keep on',
	otherComplaint: 'Another complaint',
	counts: 'Verdicts on this device',
	on: (rig: string) => `On ${rig}`,
	spent: (time: string) => `Spent so far: ${time}`,
	isPart: 'This check stands. The rest of this rig is still being worked out, and rarer suspects may join.',
	close: 'Close',
	dismiss: 'Dismiss',
	troubles: {
		damaged: 'The walk kept on this device was damaged. It has been set aside, and this is a fresh start.',
		damagedCounts:
			'The verdicts counted on this device were damaged. They have been set aside, and counting starts again.',
		noFit:
			'The walk kept on this device doesn’t fit this version of the finder. Its steps have been set aside; the rig and the complaint still stand.',
		newer:
			'What the finder kept on this device was made by a newer version of Prep Bay. It’s left as it is. Load the page again to get the newest version.',
		notKept: 'This device keeps nothing for this page, so the walk is gone when the page closes.',
		noRoom:
			'There’s no room left on this device, so the walk is gone when the page closes. Make room on the page ‘Kept on this device’.',
		noWorker:
			'This browser can’t run the finder, or it couldn’t be fetched. Check the network once, or use a newer browser.',
		broke: 'The finder broke down over this. That’s a fault of its own. Go back a step, or start again.',
	},
} as const;

/** While a part of the page comes, and where it does not. */
export const partWait = {
	coming: 'Getting this…',
	failed: 'This couldn’t be fetched. Check the network once.',
	again: 'Try again',
} as const;

/** What the gig allows. */
export const allowWords = {
	title: 'At this gig',
	hint: 'Checks that need what isn’t there are left out.',
	all: 'Everything at hand, no show running',
	without: (things: string) => `No ${things}`,
	have: {
		ladder: 'Ladder',
		'spare-cable': 'Spare data cable',
		'spare-fixture': 'Spare fixture',
		'spare-battery': 'Spare battery',
		terminator: 'Spare terminator',
	},
	lacks: {
		ladder: 'ladder',
		'spare-cable': 'spare cable',
		'spare-fixture': 'spare fixture',
		'spare-battery': 'spare battery',
		terminator: 'spare terminator',
	},
	haveWords: ['No', 'Yes'] as const,
	show: 'A show is running',
	showOn: 'show running',
	alone: 'I’m alone',
	aloneOn: 'alone',
} as const;

/** The log of a walk. */
export const logWords = {
	tree: 'A tree of all checks, to print',
	treeHref: (fixture: string, complaint: string) =>
		`/finder/tree/#rig=finder&fixture=${fixture}&complaint=${complaint}`,
	title: 'Log of the walk',
	none: 'Nothing done yet.',
	began: (when: string) => `Begun ${when}`,
	spent: (time: string) => `Estimated time spent: ${time}`,
	cannot: 'couldn’t be done',
	unsure: 'not sure',
	line: (at: number, check: string, seen: string) => `${at}. ${led(check, ':')} ${seen}`,
	verdict: 'Verdict',
	open: 'Still open',
	print: 'Print',
	copy: 'Copy',
	keep: 'Save as a file',
	copied: 'Copied.',
	copyFailed: 'This browser wouldn’t copy it. Save it as a file instead.',
	file: 'finder-log.txt',
} as const;
