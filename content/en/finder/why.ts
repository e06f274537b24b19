/** Why this check: how it splits the suspects. */
export const whyWords = {
	answers: 'What each answer would point to',
	by: {
		exact: 'No order of checks gets you to the cause sooner, on average.',
		played:
			'Of the best checks from here, each played out to the end, this one gets you to the cause soonest on average.',
		ranked: 'It tells most for the seconds it takes.',
	},
	expected: (time: string) => `A rough estimate from here to the cause: ${time} on average. It can take longer.`,
	unknown: 'or something not known here',
	nobody: 'No suspect would show this',
	more: (count: number) => `and ${count} more`,
	chance: (share: string) => `${share} likely`,
} as const;
