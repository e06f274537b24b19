import { led } from './amounts.ts';

/** Round one check. */
export const checkWords = {
	ask: 'What do you see?',
	why: 'Why this?',
	costs: (time: string) => `Takes ${time}`,
	walk: (time: string) => `of that, ${time} to walk there`,
	climb: (time: string) => `of that, ${time} to get there and up the ladder`,
	needs: (needs: string) => `Needs ${needs}`,
	disturbs: 'The audience would see it',
	mayDisturb: 'On many panels a value acts as you scroll past it, and the audience would see that',
	cannot: 'Can’t do this now',
	unsure: 'Not sure',
	back: 'Back',
	next: (title: string, does: string) => `Next check. ${led(title, '.')} ${does}`,
	stages: {
		fetching: 'Getting the finder ready…',
		opening: 'Opening the rig as it is meant to be…',
		table: 'Putting each fault that could be into the rig, and reading off what each check would show…',
		choosing: 'Choosing the check that gets you there soonest…',
	},
} as const;

export const sortWords = {
	look: 'Look',
	try: 'Try',
	swap: 'Swap',
	mend: 'Fix and see',
} as const;

export const needWords = {
	ladder: 'a ladder',
	'spare-cable': 'a spare data cable',
	'spare-fixture': 'a spare fixture',
	'spare-battery': 'a spare battery',
	'second-person': 'a second person',
	desk: 'the desk',
	terminator: 'a spare terminator',
} as const;
