/** Words of the course's own page. */
export const courseWords = {
	title: 'The course: from the case to a lit rig, Prep Bay',
	description:
		'Short lessons on setting up LED fixtures, from the case and back into it. Each has a live bench, a task that is marked, and checks drawn fresh each time.',
	heading: 'The course',
	lead: 'Short lessons that follow the day, from the case to a lit rig and back into the case. In each you learn one thing, try it on a live bench, and do it yourself while the bench marks your work.',
	list: 'All lessons, in the order of the day',
	minutes: (minutes: number) => `${minutes} min`,
	done: 'Done',
	ways: 'Where to begin',
	plan: 'Print this plan',
	total: (minutes: number) => `${minutes} minutes of lessons`,
} as const;

/** Ways in for the three who come here. */
export const ways = [] as readonly { id: string; who: string; words: string; lessons: readonly string[] }[];

export const plans = [] as readonly { id: string; title: string; words: string; lessons: readonly string[] }[];
