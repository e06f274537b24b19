import { counted, locale } from '../locale/index.ts';

/** For who comes back: tonight's rig, what to learn next, what came in. */
export const nextWords = {
	rigHeading: 'Tonight’s rig',
	/** @param lit lights ticked as lit, of `all` */
	lit: (lit: number, all: number) => `${locale.number(lit)} of ${locale.number(all)} lit`,
	/** @param step what is to be done @param name of the fixture @param detail mode or address; may be empty */
	next: (step: string, name: string, detail: string) => `Next: ${step}, ${name}${detail === '' ? '' : ` (${detail})`}`,
	allDone: 'Everything is ticked.',
	goOn: 'Go on ticking off',
	begin: 'Start ticking off',
	dark: 'Something is dark',
	darkWhich: 'Which one?',
	darkShut: 'Close',
	plan: 'Open the plan',
	start: 'Start tonight’s rig',
	startHint: 'How many, of what, from which start address: three taps.',
	heading: 'Next for you',
	due: (count: number) => `${counted(count, 'question is', 'questions are')} due. Five minutes at most.`,
	later: (when: string) => `Nothing is due until ${when}.`,
	review: 'Review',
	/** @param at its number in the course, from 1 */
	lesson: (at: number, all: number) => `Lesson ${locale.number(at)} of ${locale.number(all)}.`,
	drill: {
		begun: 'A drill you began and don’t hold yet.',
		rusty: 'A drill you held a month ago.',
		new: 'A drill you haven’t tried.',
		oldest: 'The drill you did longest ago.',
	},
	results: (count: number) => `${counted(count, 'result has', 'results have')} come in.`,
	resultsName: 'Quizzes and results',
	coming: 'One moment.',
	again: 'Try again',
	failed: 'What’s kept here can’t be read just now. Load the page again.',
	refused: 'This device keeps nothing here, so the finder can’t take the rig along. Open the plan instead.',
} as const;
