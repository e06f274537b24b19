/** Words on every lesson's page. */
export const lessonWords = {
	course: 'The course',
	minutes: (minutes: number) => `${minutes} minutes`,
	outcome: 'You will be able to',
	inside: 'In this lesson',
	care: 'Before your hands go near',
	bench: 'On the bench',
	needsScript:
		'The bench and the checks need scripts, which this browser has turned off. The words above hold all the same.',
	coming: 'The bench is set up when it comes into view.',
	steps: { try: 'Try it', slip: 'A slip, on purpose', task: 'Your turn' },
	stepsLabel: 'What to do on the bench',
	tryLead: 'The bench is yours. Nothing here can break.',
	slipLead: 'This is what the slip looks like. Put it right, or ask a lamp why.',
	again: 'Set the bench up again',
	slip: 'A slip, made on purpose',
	slipBefore: 'Before',
	slipAfter: 'After',
	slipWhy: 'Why',
	task: 'Your turn',
	taskWords: 'The bench marks your work by what the rig then is.',
	taskDone: 'Your task in this lesson is done. It is kept on this device.',
	more: 'Another like it, as a drill',
	checks: 'Check yourself',
	card: 'One card to take along',
	cardPrint: 'Print this card',
	sources: 'Sources',
	before: 'Before this',
	next: 'Next',
	all: 'All lessons',
	done: 'Done',
} as const;

/** Words of the reckoners: sliders with the formula beside them. */
export const calcWords = {
	formula: 'The sum',
	with: 'With these numbers',
} as const;

/** What each drawing shows, for those who cannot see it. */
export const figureWords = {} as const;
