/** Words of the course's own page. */
export const courseWords = {
	title: 'The course: from the case to a lit rig, Prep Bay',
	description:
		'Short lessons on setting up LED fixtures, from the case and back into it. Each has a live bench, a task that is marked, and checks drawn fresh each time.',
	heading: 'The course',
	lead: 'Short lessons from the case to a lit rig and back into the case: first what you learn at the shop, then the venue. In each you learn one thing, try it on a live bench, and do it yourself while the bench marks your work.',
	waysHeading: 'Where to begin',
	listHeading: 'All lessons, in the order to learn in',
	lessons: (count: number, minutes: number) => `${count} lessons, ${minutes} minutes in all.`,
	minutes: (minutes: number) => `${minutes} min`,
	done: 'Done',
} as const;

/** A list of lessons for somebody. */
interface LessonPath {
	/** Permanent. */
	readonly id: string;
	readonly who: string;
	readonly words: string;
	/** Ids, in order. */
	readonly lessons: readonly string[];
	/** Where in each to begin, if not at its head. */
	readonly at?: '#card';
	/** Elsewhere on the site. */
	readonly more: readonly { readonly href: string; readonly words: string }[];
}

/** Ways in for the three who come here. */
export const ways: readonly LessonPath[] = [
	{
		id: 'new-hand',
		who: 'You’re new to this',
		words: 'Begin at the top and go down, one or two lessons a day. These are the first five.',
		lessons: ['the-case', 'charge-and-hours', 'a-panel-you-never-saw', 'text-and-switches', 'held-colours'],
		more: [{ href: '/drills/', words: 'Practise with drills' }],
	},
	{
		id: 'ten-minutes',
		who: 'You have ten minutes before a gig',
		words: 'Read the cards of these four, and do the task of one. If a light is dark right now, go to the finder.',
		at: '#card',
		lessons: ['how-to-think', 'modes-and-footprints', 'when-data-goes', 'when-the-desk-comes-back'],
		more: [{ href: '/finder/', words: 'A light is dark now: the finder' }],
	},
	{
		id: 'trainer',
		who: 'You teach a crew',
		words:
			'Plans for one hour, for one day and for a second day: times, what each lesson is for, its task, and what to bring. They print.',
		lessons: [],
		more: [{ href: '/lessons/plan/', words: 'The plans' }],
	},
];
