/** Words of what is written out to files: the class table, and what goes to a learning platform or a record store. */
export const csvWords = {
	name: 'Name',
	attemptNo: 'Try',
	score: 'Right',
	of: 'Questions',
	percent: 'Percent',
	passed: 'Passed',
	yes: 'yes',
	no: 'no',
	minutes: 'Minutes',
	ended: 'Handed in',
	flags: 'To look at',
	/** Over the column of one question, with its number before it. */
	question: 'Question',
	attempt: 'Attempt',
} as const;

export const exportWords = {
	/** What a switch is called as one of many choices, with its number after it. */
	switch: 'Switch',
	switchesPrompt: 'Choose the switches that are up.',
	severalPrompt: 'Choose every one that is right.',
	orderPrompt: 'Put them in order, the first on top.',
	matchPrompt: 'Give each one on the left its one on the right.',
	numberPrompt: 'Type a whole number.',
	hexPrompt: 'Type hexadecimal digits only, with no x before them.',
	readmeTitle: 'What is in this package',
	readmeLeftOut: 'Left out, since they’re done on the bench and no platform has one:',
	readmeNone: 'Every question of the quiz is in it.',
	question: 'Question',
	practical: 'A task on the bench.',
	platform: 'Prep Bay',
	paper: 'Quiz',
} as const;
