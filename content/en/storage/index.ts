/** Words for what is kept on the device, of whatever kind, and for the page where all of it is listed. */
import { counted, locale } from '../locale/index.ts';

/** Around the page. */
export const keptPage = {
	title: 'Kept on this device: Prep Bay',
	description: 'All that Prep Bay keeps on this device, and what was set aside: save it to a file, or delete it.',
	heading: 'Kept on this device',
	lead: 'All that this site keeps for you is listed here. It stays on this device and is sent nowhere. Save what you may want back before you delete it.',
	needsScript: 'What is kept is read in the page and needs JavaScript, which is turned off here.',
} as const;

export const keptWords = {
	href: '/kept/',
	link: 'All that is kept here',
	newer:
		'What is kept on this device was made by a newer version of Prep Bay. It’s left as it is, and you start over. Load the page again to get the newest version, and it comes back.',
	noRoom:
		'There’s no room left on this device. What you do now is gone when the page closes. Make room on the page ‘Kept on this device’, or export to a file.',
	kept: 'In use',
	keptWords: 'This is what the pages go on from.',
	none: 'Nothing is kept yet.',
	refused:
		'This browser lets no page keep anything. That’s so in some private windows, and where the person who set it up said so.',
	aside: 'Set aside',
	asideWords:
		'These gave up their place, and nothing goes on from them. They stay until you delete them. A bench can be brought back under Kept benches on the bench page.',
	asideNone: 'Nothing is set aside.',
	of: {
		bench: 'Your bench',
		progress: 'Results of drills and lessons',
		review: 'What the review asks again',
		stock: 'Your own fixtures',
		walk: 'The walk in the finder',
		verdicts: 'Verdicts the finder has counted',
		hidden: 'The hidden faults you looked for last',
		rigs: 'Rigs you planned',
		ticks: 'What was ticked off of your rigs',
		initials: 'Your initials, for ticks',
		matches: 'What you picked for rig files and lists',
		draft: 'The boxes for a new quiz',
		sitting: 'Answers to quizzes',
		lastPaper: 'The quiz you began last',
		unfinished: 'Tasks half done',
		buzz: 'That keys and ticks don’t buzz',
		theme: 'Your choice of look',
	},
	ofAside: {
		bench: 'A bench',
		progress: 'Results of drills and lessons',
		review: 'What the review asks again',
		stock: 'Your own fixtures',
		walk: 'A walk in the finder',
		verdicts: 'Verdicts the finder has counted',
		hidden: 'Hidden faults',
		rigs: 'A rig you planned',
		ticks: 'Ticks of a rig',
		initials: 'Initials',
		matches: 'Picks for rig files',
		draft: 'Boxes for a new quiz',
		sitting: 'Answers to a quiz',
		lastPaper: 'A quiz',
		unfinished: 'A task half done',
		buzz: 'Whether keys and ticks buzz',
		theme: 'A choice of look',
	},
	why: {
		link: 'A link took its place.',
		file: 'A file took its place.',
		tab: 'Another tab took its place.',
		back: 'Another one was brought back.',
		damaged: 'It was damaged.',
		newer: 'A newer version of Prep Bay made it.',
	},
	at: (when: string) => `Set aside ${when}.`,
	records: 'Quizzes and results of your class',
	recordsOf: (papers: number, results: number) =>
		`${counted(papers, 'quiz', 'quizzes')} and ${counted(results, 'result', 'results')}`,
	recordAside: (from: string) => `A record of the class: ${from}`,
	recordsGone: 'The quizzes and results couldn’t be read just now. They’re left as they are. Load the page again.',
	other: 'Something another version of Prep Bay keeps',
	many: (n: number) => `${n} of them`,
	size: (bytes: number) =>
		bytes < 1000 ? counted(bytes, 'byte', 'bytes') : `${locale.number(bytes / 1000, bytes < 9950 ? 1 : 0)} kB`,
	save: 'Save to a file',
	saveOne: (what: string) => `Save to a file: ${what}`,
	remove: 'Delete',
	removeOne: (what: string) => `Delete: ${what}`,
	removeSure: 'Delete for good',
	removed: (what: string) => `Deleted: ${what}`,
	notRemoved: 'The browser wouldn’t delete it. Close the other tabs of Prep Bay, and try again.',
	fileName: (id: string) => `prep-bay-${id}.json`,
} as const;
