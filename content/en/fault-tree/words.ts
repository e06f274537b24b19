import type { CautionId } from '../cautions/index.ts';
import { counted } from '../locale/index.ts';

/** The page's words around the tree itself. */
export const treePage = {
	title: 'Fault tree to print: Prep Bay',
	description:
		'A fault tree for a rig and a complaint, worked out from the rig, on both sides of a sheet for the lid of the flight case.',
	heading: 'A tree for the lid',
	lead: 'What to check, in what order, and what each thing seen leads to: worked out for one rig and one complaint, to print and keep where there’s no phone.',
	needsScript: 'The tree is worked out in the page and needs JavaScript, which is turned off here.',
	finder: 'To the finder',
	finderHref: '/finder/',
	practise: 'Practise on a hidden fault',
	practiseHref: '/finder/practise/',
} as const;

/** A caution in one word, as it is called across a room. */
export const cautionShort: Readonly<Record<CautionId, string>> = {
	hanging: 'overhead',
	height: 'ladder',
	lifting: 'heavy',
	mains: 'mains',
	batteries: 'battery',
	ultraviolet: 'ultraviolet',
	flashing: 'flashing',
	hot: 'hot',
	staring: 'bright',
	'live-show': 'people',
};

export const casefileWords = {
	loading: 'Getting it ready…',
	rig: 'Rig',
	fixture: 'Fixture',
	complaint: 'What’s wrong',
	choose: 'Choose…',
	work: 'Work the tree out',
	print: 'Print',
	opening: 'Opening the rig…',
	working: 'Putting every fault into the rig and working out the order. A long line takes some seconds…',
	nothing: 'By its sheet this fixture is meant to do nothing that could be missed. Choose another one.',
	finders: 'The rig in the finder now',
	badLink: 'That link names no rig, fixture and complaint known here. Choose them below.',
	noWorker: 'This browser can’t work the tree out, or the parts for it couldn’t be fetched. Check the network once.',
	broke: 'Working it out broke down. That’s a fault of this page’s own. Choose another complaint.',
	title: (complaint: string) => complaint,
	basis: (rig: string, complaint: string, suspects: number, expected: number) =>
		`Worked out for ${rig}, ${complaint}, from ${counted(suspects, 'suspect', 'suspects')}; a rough estimate of ${expected} seconds on average.`,
	how: 'Start at the top. Do the check, go to what you see, and go on from there. If a fix doesn’t help, do the next; an answer may have been wrong.',
	shares: 'Shares are of all that may be wrong.',
	done: (ends: number) => `The tree is worked out. It has ${counted(ends, 'end', 'ends')}.`,
	mends: 'Fix',
	more: (count: number) => `and ${count} more`,
	cautions: 'Cautions',
	/** Beside what is done, and before its caution at the end. */
	cautionMark: (words: readonly string[]) => `(${words.join(', ')})`,
	cautionHref: '/about/#cautions',
	cautionMore: 'The cautions in full',
} as const;
