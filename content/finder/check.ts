import { led } from './amounts.ts';

/** Round one check. */
export const checkWords = {
	ask: 'What do you see?',
	costs: (time: string) => `Takes ${time}`,
	walk: (time: string) => `of that, ${time} to walk there`,
	needs: (needs: string) => `Needs ${needs}`,
	disturbs: 'The audience would see it',
	cannot: 'Can’t do this now',
	unsure: 'Not sure',
	back: 'Back',
	/** In place of a value that a rig without a sheet only stands in for. */
	asMeant: 'As you meant it',
	asMeantNote: (words: string) => `stand-in: ${words}`,
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
	mend: 'Mend and see',
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

export const suspectWords = {
	title: 'Suspects',
	fit: (count: number) => (count === 1 ? '1 still fits' : `${count} still fit`),
	noneFits: 'None fits',
	show: 'Show all suspects',
	hide: 'Hide them',
	fitting: 'Still fit: nothing seen so far speaks against them',
	against: 'Something seen speaks against them',
	ruledOut: (check: string, seen: string, predicted: string) =>
		`${led(check, ':')} you saw “${seen}”; it would be “${predicted}”.`,
	pair: ' and ',
	at: (name: string, place: string) => `${name}: ${place}`,
	more: (count: number) => `Show ${count} more`,
	share: (share: string) => `share ${share}`,
} as const;

export const whyWords = {
	title: 'Why this?',
	answers: 'What each answer would point to',
	by: {
		exact: 'No order of checks gets you to the cause sooner, on average.',
		played:
			'Of the best checks from here, each played out to the end, this one gets you to the cause soonest on average.',
		ranked: 'It tells most for the seconds it takes.',
	},
	expected: (time: string) => `Expected from here to the cause: ${time}.`,
	unknown: 'or something not known here',
	nobody: 'No suspect would show this',
	more: (count: number) => `and ${count} more`,
	chance: (share: string) => `${share} likely`,
} as const;
