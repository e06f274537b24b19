/** Words of the trainer's page. */
export const planWords = {
	title: 'Plans for a trainer: one hour and one day, Prep Bay',
	description:
		'What to teach a crew in one hour, or in one day: times, what they can do afterwards, and the task of each lesson.',
	heading: 'Plans for a trainer',
	lead: 'Each row is one lesson. You show it on the bench, they do its task, and the bench marks it. Times are in hours and minutes from the start.',
	course: 'Back to the course',
	bring: 'To bring',
	columns: { at: 'At', lesson: 'Lesson', can: 'They will be able to', task: 'Their task' },
	drawn: (drill: string) => `A drill, a fresh one for each: ${drill}.`,
	pause: 'Pause',
	end: 'End',
	total: (minutes: number) => `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min`,
	at: (minutes: number) => `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`,
} as const;

/** A plan to teach by. */
export interface TeachingPlan {
	/** Permanent. */
	readonly id: string;
	readonly title: string;
	readonly words: string;
	readonly bring: readonly string[];
	/** Minutes of class to a minute of lesson: a group takes longer than one. Common practice, no source. */
	readonly pace: number;
	/** Ids in order; `pause` is a break of so many minutes. */
	readonly rows: readonly (string | { readonly pause: number })[];
}

export const plans: readonly TeachingPlan[] = [
	{
		id: 'hour',
		title: 'One hour',
		words: 'For a crew that goes out tonight: the things that save a first hour on site. Leave the rest to the drills.',
		bring: [
			'One phone or tablet to each pair',
			'This plan, printed',
			'One real light of yours, to find the same things on',
		],
		pace: 1.2,
		rows: [
			'charge-and-hours',
			'a-panel-you-never-saw',
			'modes-and-footprints',
			'label-and-test',
			'floor-bracket-clamp-bond',
		],
	},
	{
		id: 'day',
		title: 'One day',
		words:
			'Most of the course in its own order, with real kit beside the bench where you have it. Keep half an hour after it for a paper. The lessons that are not here can be done alone.',
		bring: [
			'One phone or tablet to each pair',
			'A few of your own lights, cables and a terminator',
			'Rated clamps and bonds to look at, and nobody goes up',
			'A paper for the end, set from the same kinds of question',
		],
		pace: 1.5,
		rows: [
			'the-case',
			'charge-and-hours',
			'a-panel-you-never-saw',
			'text-and-switches',
			'held-colours',
			'slots-and-frames',
			{ pause: 15 },
			'modes-and-footprints',
			'bands',
			'daisy-chain',
			'two-universes',
			'when-data-goes',
			'addresses-before-the-van',
			'label-and-test',
			{ pause: 45 },
			'floor-bracket-clamp-bond',
			'throw-pool-overlap',
			'power-along-the-row',
			'leader-and-follower',
			'when-the-desk-comes-back',
			{ pause: 15 },
			'how-to-think',
			'look-before-you-swap',
			'a-flash-nobody-asked-for',
			'cool-coil-charge-log',
		],
	},
];
