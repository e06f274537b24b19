/**
 * Words of the review: small questions on what was learnt, asked again when it is about to fade, and what stands around one question
 * asked by itself. What is asked comes from the papers' kinds; nothing here knows an answer.
 */
import { counted, locale } from '../locale/index.ts';

/** Around one question asked by itself. */
export const askWords = {
	check: 'Check it',
	dontKnow: 'I don’t know',
} as const;

/** Around the page. */
export const reviewPage = {
	title: 'Review: Prep Bay',
	description:
		'A few small questions on what you have learnt, asked again just before it fades. Works with no network.',
	heading: 'Review',
	lead: 'Five minutes, now and then. What you learnt in lessons and quizzes is asked again, with other numbers each time, just before it fades.',
	needsScript: 'Questions are made in the page and need JavaScript, which is turned off here.',
} as const;

export const reviewWords = {
	/** What a paper of one question is called: nobody reads it. */
	paper: 'Review',
	loading: 'Looking up what’s due…',
	due: (n: number) => `${counted(n, 'question', 'questions')} due`,
	takes: (minutes: number) => `About ${counted(minutes, 'minute', 'minutes')}.`,
	start: 'Begin',
	nothingYet: 'Nothing to go over yet',
	nothingYetWords: 'Do a lesson’s questions or take a quiz: what you meet there comes back here.',
	lessons: 'To the lessons',
	allDone: 'Nothing is due',
	nextDue: (when: string) => `The next comes ${when}.`,
	oneMore: 'Go on with the next ones',
	where: (at: number, of: number) => `${at} of ${of}`,
	next: 'Next',
	guessed: 'I guessed',
	guessedHint: 'Right by a guess comes back sooner.',
	stop: 'Stop here',
	finished: 'Done for now',
	finishedWords: (right: number, of: number) => `${right} of ${of} right.`,
	wrongComes: 'What went wrong comes back first.',
	gone: 'This question can’t be made any more: its fixture isn’t here. It has been left out.',
	standing: { known: 'Known', fading: 'Fading', learning: 'Learning', new: 'New' },
	standingWords: {
		known: 'asked, and not due yet',
		fading: 'due, and slipping',
		learning: 'not held for a day yet',
		new: 'not asked yet',
	},
	chart: 'How what you learnt stands',
	skills: 'What you have learnt',
	skill: (kind: string, fixture: string | null, level: string) =>
		`${kind}${fixture === null ? '' : `, ${fixture}`} (${level})`,
	recall: (percent: number) => `${percent} % likely to be known`,
	comes: (when: string) => `comes ${when}`,
	when: {
		now: 'now',
		minutes: (n: number) => `in ${counted(n, 'minute', 'minutes')}`,
		hours: (n: number) => `in ${counted(n, 'hour', 'hours')}`,
		days: (n: number) => (n === 1 ? 'tomorrow' : `in ${counted(n, 'day', 'days')}`),
		months: (n: number) => `in ${counted(n, 'month', 'months')}`,
	},
	kept: 'What is kept',
	keptWords: 'It’s kept on this device and sent nowhere. Export it to carry it to another.',
	export: 'Export to a file',
	import: 'Import from a file',
	clear: 'Clear',
	fileName: 'prep-bay-review.json',
	clearTitle: 'Clear the review?',
	clearWords:
		'All that was learnt, and when it’s due, is forgotten on this device. Export it first if you may want it back.',
	clearDo: 'Clear it',
	keep: 'Keep it',
	cleared: 'The review is cleared.',
	exported: 'It’s in the file.',
	imported: (n: number) => `Taken in: ${counted(n, 'thing', 'things')} learnt. Where both had one, the later was kept.`,
	importedDamaged: (n: number) => `${counted(n, 'entry', 'entries')} of the file couldn’t be read.`,
	damaged: (n: number) =>
		n === 0
			? 'What was kept on this device was damaged. It has been set aside, and you start again.'
			: `${counted(n, 'entry', 'entries')} kept on this device couldn’t be read and ${locale.plural(n, 'was', 'were')} set aside. The rest is all there.`,
	saveAside: 'Save what was set aside',
	asideName: 'prep-bay-review-set-aside.json',
	notKept: 'This device keeps nothing for this page, so what is learnt is gone when it closes.',
	dismiss: 'Dismiss',
} as const;
