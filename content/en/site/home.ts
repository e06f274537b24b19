/** The home page's words. */
export const home = {
	title: 'Prep Bay: LED fixtures, ready before doors',
	description:
		'Practise setting up battery and mains LED fixtures on simulated gear: power, mode, address, line, light. Works on a phone with no network.',
	heading: 'Lit before doors',
	job: 'The van is unloaded, doors are in two hours, and there’s a stack of LED fixtures to get onto the wall: charged, hung safely, in the right mode, at the right address, linked, and answering the desk. Prep Bay is a bench to practise that on. The fixtures on it are simulated all the way down, so what you press, plug and set does what it would do, and you can always ask why.',
	ways: [
		{ href: '/lessons/', words: 'Learn it' },
		{ href: '/bench/', words: 'Go to the bench' },
		{ href: '/finder/', words: 'Find a fault' },
	],
	/** @param count fixtures @param dark the number of the dark one, from the left; null once all are lit */
	picture: (count: number, dark: number | null) =>
		dark === null
			? `A wall at night with ${count} fixtures on the floor in front of it. All throw tall pools of colour.`
			: `A wall at night with ${count} fixtures on the floor in front of it. All but number ${dark} from the left throw tall pools of colour. That one is dark.`,
	pictureNote: (count: number) => `${count - 1} of ${count} lit.`,
	pictureTap: 'Tap the dark one and find out why.',
	pictureLit: (count: number) => `${count} of ${count} lit.`,
	hunt: {
		ask: 'Why dark?',
		/** @param says what is wrong, with no full stop */
		askLong: (says: string) => `Why dark? ${says}.`,
		causes: (count: number) => `${count} things could cause it.`,
		left: (count: number) => (count === 1 ? 'One thing is left.' : `${count} things are left.`),
		look: 'You look at it. What do you see?',
		/** For those who hear the page. @param says the answer */
		drawn: (says: string) => `The drawing shows: ${says}`,
		again: 'Not that. Look at the drawing again.',
		found: 'Most likely',
		fix: 'The fix:',
		do: 'Do it',
		done: 'Nothing is dark now.',
		/** @param seconds on a real rig, by the finder's own costs */
		lit: (seconds: number) =>
			`It’s lit. By the fault finder’s own estimate that takes about ${seconds} seconds on a real rig, walk and all. It asks like this on any rig, yours too.`,
		ways: [
			{ href: '/rig/', words: 'Start tonight’s rig' },
			{ href: '/finder/', words: 'Find a fault' },
			{ href: '/finder/practise/', words: 'Hunt a hidden one' },
		],
	},
	dayHeading: 'The job, step by step',
	day: [
		{ step: 'Charge', words: 'Full packs, the right charger, and how long this look will last on them.' },
		{ step: 'Hang', words: 'Rated hardware, a safety bond on everything overhead, clear floor below.' },
		{ step: 'Mode', words: 'The one the desk expects: it decides how many channels the fixture listens to.' },
		{ step: 'Address', words: 'The first channel it listens to. No two footprints may overlap unless you mean it.' },
		{ step: 'Link', words: 'Out of one, into the next, a terminator at the end. Or one leads and the others follow.' },
		{ step: 'Light', words: 'Bring it up, look at the wall, and know why it looks like that.' },
	],
	peopleHeading: 'Who comes here',
	people: [
		{
			who: 'New hands',
			words:
				'Lessons go from the case to the wall and back, panel and line first, each with a bench in the page to do it on. Meet a fixture you have never seen, get it lit, and be told why it looks like that. What you learnt is asked again before it fades.',
			ways: [
				{ href: '/lessons/', words: 'Take a lesson' },
				{ href: '/drills/', words: 'Do a drill' },
			],
		},
		{
			who: 'Techs before a gig',
			words:
				'Something is dark and doors are close: say what’s wrong, and the finder takes you to the cause, one look at a time. Before that, build the rig on the bench and break it the way it may break.',
			ways: [
				{ href: '/rig/', words: 'Plan tonight’s rig' },
				{ href: '/finder/', words: 'Find a fault' },
				{ href: '/reference/', words: 'Look something up' },
			],
		},
		{
			who: 'Trainers',
			words:
				'Set a quiz on the fixtures your crew will touch, hand it out by link, code or on paper, have it marked by the rig, and see what to teach again. Or send a bench or a drill as a link.',
			ways: [
				{ href: '/papers/', words: 'Set a quiz' },
				{ href: '/lessons/plan/', words: 'Plan a training day' },
			],
		},
	],
	offlineHeading: 'In a basement, in a field',
	offline:
		'Visit once and give it a moment: the whole site then works with no network. Nothing you do leaves the device unless you hand it on, and there’s no account.',
} as const;
