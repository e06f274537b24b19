/** The printed page. */
export const printWords = {
	what: 'What to print',
	sheets: { paper: 'The questions', answers: 'An answer sheet', key: 'The key, with workings' },
	print: 'Print',
	backTo: 'Back to quizzes',
	name: 'Name',
	date: 'Date',
	answerSheet: 'Answer sheet',
	keyTitle: 'Key',
	set: (n: number) => `Set ${n}`,
	onBench: 'Done on the bench: open the quiz on a device for this one.',
	orderBox: 'Number them, 1 first.',
	matchBox: 'Write the letter.',
	tick: { one: 'Tick one.', several: 'Tick all that are right.' },
	switchesBox: 'Mark each switch up or down.',
	working: 'Working',
} as const;
