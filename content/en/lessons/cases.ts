/** A rig with something hidden in it, by its number: the same number always hides the same. */
interface Hidden {
	readonly rig: 'one-wash' | 'four-in-line' | 'leader-and-three' | 'two-universes' | 'mixed-panels';
	readonly seed: number;
}

/** A case: where it happens. What is wrong, what is complained of and how it is found are the rig's to say. */
export interface Case {
	/** Permanent. */
	readonly id: string;
	readonly title: string;
	readonly words: string;
	/** Solved with the finder, step by step; then one like it, by yourself. */
	readonly shown: Hidden;
	readonly own: Hidden;
}

export const cases: readonly Case[] = [
	{
		id: 'late-guest',
		title: 'The late guest',
		words: 'The hall is ready, the crew is at dinner, and a guest who came early asks about one light.',
		shown: { rig: 'leader-and-three', seed: 37 },
		own: { rig: 'mixed-panels', seed: 4 },
	},
	{
		id: 'third-hour',
		title: 'The third hour',
		words: 'All was well at doors. Now it’s late, and something isn’t.',
		shown: { rig: 'leader-and-three', seed: 12 },
		own: { rig: 'leader-and-three', seed: 32 },
	},
	{
		id: 'after-the-dance',
		title: 'After the dance',
		words: 'Many feet went by the wall. The desk sends as it did before.',
		shown: { rig: 'four-in-line', seed: 17 },
		own: { rig: 'mixed-panels', seed: 6 },
	},
	{
		id: 'cleaners',
		title: 'The cleaners were here',
		words: 'You come back from lunch. Someone has been round with a machine that needs a socket.',
		shown: { rig: 'two-universes', seed: 15 },
		own: { rig: 'mixed-panels', seed: 87 },
	},
	{
		id: 'odd-one-out',
		title: 'The odd one out',
		words: 'A row was hired in from two shops, and set up by two people.',
		shown: { rig: 'leader-and-three', seed: 17 },
		own: { rig: 'mixed-panels', seed: 26 },
	},
	{
		id: 'new-show-file',
		title: 'A new show on the desk',
		words: 'The operator has loaded the show from last week, and swears that nothing else was changed.',
		shown: { rig: 'four-in-line', seed: 8 },
		own: { rig: 'four-in-line', seed: 30 },
	},
	{
		id: 'own-mind',
		title: 'A mind of its own',
		words: 'The look is still, and was saved in a hurry. One light won’t have it.',
		shown: { rig: 'four-in-line', seed: 21 },
		own: { rig: 'two-universes', seed: 9 },
	},
	{
		id: 'desk-is-back',
		title: 'The desk is back',
		words: 'There was no desk in the afternoon, so the crew made do. Now there’s one, and the row isn’t calm.',
		shown: { rig: 'four-in-line', seed: 33 },
		own: { rig: 'mixed-panels', seed: 11 },
	},
	{
		id: 'not-that-blue',
		title: 'Not that colour',
		words: 'The client looks at one wall and says that it was another colour last year.',
		shown: { rig: 'four-in-line', seed: 3 },
		own: { rig: 'two-universes', seed: 1 },
	},
	{
		id: 'flowers',
		title: 'The flowers have come',
		words: 'Decor went up in the last half hour, in front of all and everything.',
		shown: { rig: 'leader-and-three', seed: 16 },
		own: { rig: 'two-universes', seed: 185 },
	},
];

/** Words round the cases. */
export const caseWords = {
	on: (rig: string) => `${rig}.`,
	says: 'What is said',
	shown: 'How the finder finds it',
	seconds: (seconds: number) => `About ${Math.round(seconds)} seconds, walking and all.`,
	was: 'It was',
	first: 'Try it yourself first',
	own: 'Another like it, without the finder',
} as const;
