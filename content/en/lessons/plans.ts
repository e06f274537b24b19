/** Words of the trainer's page. */
export const planWords = {
	title: 'Plans for a trainer: one hour, one day and a second day, Prep Bay',
	description:
		'What to teach a crew in one hour, in one day, or in two: times, what they can do afterwards, and the task of each lesson.',
	heading: 'Plans for a trainer',
	lead: 'Each row is one lesson. You show it on the bench, they do its task, and the bench marks it. Times are in hours and minutes from the start.',
	course: 'Back to the course',
	bring: 'To bring',
	columns: { at: 'At', lesson: 'Lesson', can: 'They’ll be able to', task: 'Their task' },
	drawn: (drill: string) => `A drill, a fresh one for each: ${drill}.`,
	case: (says: string) => `For one of them, others get the like: ${says}`,
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
			'What a hand needs to light a rig and get it home, in the course’s own order, with real kit beside the bench where you have it. Keep half an hour after it for a quiz. What isn’t here is in the second day.',
		bring: [
			'One phone or tablet to each pair',
			'A few of your own lights, data cables to coil, and a terminator',
			'Rated clamps and bonds to look at, and nobody goes up',
			'A patch sheet and a plot of yours',
			'A quiz for the end, set from the same kinds of question',
		],
		pace: 1.5,
		rows: [
			'the-case',
			'charge-and-hours',
			'a-panel-you-never-saw',
			'held-colours',
			'slots-and-frames',
			{ pause: 15 },
			'modes-and-footprints',
			'bands',
			'daisy-chain',
			'when-data-goes',
			'addresses-before-the-van',
			'patch-sheet-and-plot',
			'label-and-test',
			{ pause: 45 },
			'floor-bracket-clamp-bond',
			'weights-at-a-point',
			'throw-pool-overlap',
			'focus-aim-spill-glare',
			'power-along-the-row',
			'exits-and-emergency-light',
			'leader-and-follower',
			{ pause: 15 },
			'on-the-radio',
			'how-to-think',
			'look-before-you-swap',
			'cool-coil-charge-log',
			'over-under',
			'lithium-in-transit-and-store',
		],
	},
	{
		id: 'second-day',
		title: 'A second day',
		words: 'The rest of the course, for a crew that has had the first day, or has worked a few gigs.',
		bring: [
			'One phone or tablet to each pair',
			'Fixtures with panels that differ, and one with switches',
			'A splitter, and the camera that your shows meet most',
			'The electrician or the house manager, for half an hour, if they will come',
		],
		pace: 1.5,
		rows: [
			'text-and-switches',
			'programmes-speed-sound',
			'lock-and-defaults',
			'words-on-panels',
			'any-panel',
			'remote-and-sensor',
			'dimmer-curves',
			{ pause: 15 },
			'past-the-end',
			'splitters-and-branches',
			'two-universes',
			{ pause: 45 },
			'wall-close-and-angled',
			'matching-white',
			'uplight-column-facade',
			'circuits-and-distribution',
			'weather',
			{ pause: 15 },
			'as-one-or-apart',
			'when-the-desk-comes-back',
			'a-flash-nobody-asked-for',
			'ten-cases',
		],
	},
];
