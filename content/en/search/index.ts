import { counted, locale } from '../locale/index.ts';

/** The search page's words. */
export const searchPage = {
	title: 'Search: Prep Bay',
	description: 'Search the lessons, glossary, reference, faults and cautions. Works with no network.',
	heading: 'Search',
	lead: 'Lessons, glossary, reference, faults and cautions, all at once. It works with no network.',
	needsScript:
		'Searching runs in the page and needs JavaScript, which is turned off here. The glossary and the reference are plain pages.',
	loading: 'Fetching what can be searched.',
	failed:
		'What can be searched couldn’t be fetched, and this device hasn’t kept it yet. Open the page once with a network, then it’s kept.',
	label: 'What are you looking for?',
	hint: 'Results follow as you type. Enter goes to the first.',
	results: (count: number) => counted(count, 'result', 'results'),
	most: (shown: number, count: number) => `The first ${shown} of ${count} results`,
	near: (count: number) =>
		locale.plural(
			count,
			'No place has all of those words. The nearest one follows. If a light is in trouble, ask the finder.',
			`No place has all of those words. The nearest ${count} follow. If a light is in trouble, ask the finder.`,
		),
	none: (query: string) => `Nothing found for “${query}”. Try one word, or the start of it.`,
	idle: 'Try “terminator”, “flat”, “address” or “UV”.',
	leaf: 'Or browse',
	ways: [
		{ href: '/glossary/', words: 'Glossary', says: 'The words of the job, each with the standard it comes from.' },
		{
			href: '/reference/',
			words: 'Reference',
			says: 'Address and switch tables, levels, the line, charts of the fixtures, every fault.',
		},
		{ href: '/about/#cautions', words: 'Cautions', says: 'What can hurt, and what to do about it.' },
	],
	kinds: {
		lesson: 'Lesson',
		term: 'Glossary',
		reference: 'Reference',
		fault: 'Fault',
		caution: 'Caution',
	},
} as const;
