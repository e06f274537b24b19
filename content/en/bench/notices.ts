import { counted } from '../locale/index.ts';

/** What is said where a bench could not be opened as it was asked for. Apart from the rest: it comes with every link. */
export const openingWords = {
	damagedStore:
		'The bench kept on this device was damaged. It has been set aside, and this is a fresh one. You’ll find it under Kept benches.',
	newerStore:
		'The bench kept on this device was made by a newer version of Prep Bay. It’s kept as it is, and this is a fresh one. Load the page again to get the newest version.',
	stoppedOwn: 'You stopped your bench from opening. It’s kept as it is, and this is a fresh one.',
	badLink: (sentence: string) => `${sentence} The bench is empty for now.`,
	noFit: 'This link holds no rig that fits together, so the bench is empty. Ask for a new link.',
} as const;

/** A bench saved to a file, and opened from one. */
export const fileWords = {
	heading: 'As a file',
	words: 'The file holds the same as the link, and can be kept anywhere. Open it on this bench or another.',
	save: 'Save to a file',
	open: 'Open a bench from a file',
	long: 'This file is larger than any bench that Prep Bay saves. It was left unread. Choose another.',
	noFit: 'This file holds no rig that fits together. It was left unopened. Choose a file that was saved here.',
} as const;

/** While a long history is played back. */
export const playingWords = {
	playing: 'This bench has a long history. It’s being played back.',
	played: (percent: number) => `${percent} % done`,
	stop: 'Stop',
} as const;

/** What the free bench says of where it came from, and of what became of the one before. */
export const noticeWords = {
	ownAside: {
		link: 'A link took the place of your own bench, which is kept.',
		file: 'A bench from a file took the place of your own, which is kept.',
	},
	ownThere: 'Your own bench is kept.',
	bringBack: 'Bring mine back',
	otherTab: 'Another tab kept a bench of its own here. Both are kept: find the other one under Kept benches.',
	notKept: 'This device keeps nothing for this page, so the bench is gone when the page closes. Share it to keep it.',
	noRoom:
		'There’s no room left on this device to keep this bench as well. Delete some under Kept benches, or share it to keep it.',
} as const;

/** Benches that gave up their place: the list of them, and what can be done with each. */
export const asideWords = {
	title: 'Kept benches',
	goneAside: 'That bench is no longer kept: another tab took it up or deleted it.',
	newerAside:
		'That bench was made by a newer version of Prep Bay. Load the page again to get the newest, or save the bench to a file.',
	damagedAside: 'That bench is damaged and can’t be opened. You can save it to a file.',
	words:
		'Each of these stood on the bench before another took its place. They stay on this device until you delete them.',
	none: 'No others are kept.',
	close: 'Done',
	about: (name: string, fixtures: number, done: number) =>
		`${name}: ${counted(fixtures, 'fixture', 'fixtures')}, ${counted(done, 'thing', 'things')} done`,
	unreadable: 'A bench that can’t be read',
	newer: 'A bench made by a newer version',
	why: {
		link: 'A link took its place.',
		file: 'A bench from a file took its place.',
		tab: 'Another tab took its place.',
		newer: 'A newer version of Prep Bay made it.',
		damaged: 'It was damaged, or couldn’t be played.',
		back: 'Another one was brought back.',
	},
	theirs: 'It came by a link, and nothing was done to it.',
	at: (when: string) => `Set aside ${when}.`,
	back: 'Bring back',
	backOne: (what: string) => `Bring back ${what}`,
	save: 'Save to a file',
	saveOne: (what: string) => `Save to a file: ${what}`,
	fileName: 'prep-bay-bench.json',
	remove: 'Delete',
	removeOne: (what: string) => `Delete ${what}`,
	removeSure: 'Delete for good',
} as const;
