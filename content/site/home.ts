/** The home page's words. */
export const home = {
	title: 'Prep Bay: LED fixtures, ready before doors',
	description:
		'Practise setting up battery and mains LED fixtures on simulated gear: power, mode, address, line, light. Works on a phone with no network.',
	heading: 'Lit before doors',
	job: 'The van is unloaded, doors are in two hours, and there is a stack of LED fixtures to get onto the wall: charged, hung safely, in the right mode, at the right address, linked, and answering the desk. Prep Bay is a bench to practise that on. The fixtures on it are simulated all the way down, so what you press, plug and set does what it would do, and you can always ask why.',
	start: 'Go to the bench',
	startHref: '/bench/',
	drill: 'Do a drill',
	drillHref: '/drills/',
	find: 'Find a fault',
	findHref: '/finder/',
	picture:
		'A wall at night with five fixtures on the floor in front of it. Four throw tall pools of colour: amber, rose, blue and green. The third is dark.',
	pictureNote: 'Four of five. Which way would you look first?',
	dayHeading: 'The job, step by step',
	day: [
		{ step: 'Charge', words: 'Full packs, the right charger, and how long this look will last on them.' },
		{ step: 'Hang', words: 'Rated hardware, a safety bond on everything overhead, clear floor below.' },
		{ step: 'Mode', words: 'The personality the desk expects: it decides how many slots the fixture listens to.' },
		{ step: 'Address', words: 'The first slot it listens to. No two footprints may overlap unless you mean it.' },
		{ step: 'Link', words: 'Out of one, into the next, a terminator at the end. Or one leads and the others follow.' },
		{ step: 'Light', words: 'Bring it up, look at the wall, and know why it looks like that.' },
	],
	peopleHeading: 'Who comes here',
	people: [
		{
			who: 'New hands',
			words:
				'Meet a fixture you have never seen, find your way round its panel, and get it lit. Drills give you a task, mark it, and say what is still wrong; the bench says why.',
		},
		{
			who: 'Techs before a gig',
			words:
				'Something is dark and doors are soon: say what is wrong, and the finder takes you to the cause, one look at a time. Before that, build the rig on the bench and break it the way it may break.',
		},
		{ who: 'Trainers', words: 'Set a bench up the way you want it, send it as a link, and watch people work it out.' },
	],
	offlineHeading: 'In a basement, in a field',
	offline:
		'After one visit the whole site works with no network. Nothing you do leaves the device, and there is no account.',
} as const;
