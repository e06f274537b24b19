/** Why a result wants looking at, by the code of the flag. Filled by the grammar of `content/en/rig`. */
export const flagWords = {
	'paper-altered':
		'The quiz isn’t the one that its recipe and seed set, so it was changed after. It’s marked as it was set.',
	'unknown-item': 'An answer came to a question that isn’t in this quiz.',
	'answer-form': [
		{ when: { trouble: 'no-answer' }, says: 'What came for this question is no answer.' },
		{ says: "This question is answered by '{form}', and '{found}' came." },
	],
	'answer-option': [
		{ when: { trouble: 'no-such-pair' }, says: 'A pair came with one that isn’t in this question.' },
		{
			when: { expected: 'all-options' },
			says: 'The options here are {known as list}, all of them once; something else came.',
		},
		{ says: 'The options here are {known as list}, each once; something else came.' },
	],
	'answer-range': [
		{ when: { expected: 'whole' }, says: 'A whole number from {lo} to {hi} answers this; {found} came.' },
		{ says: 'Switches 1 to {hi}, each once, answer this; others came.' },
	],
	'log-bad': 'This was done on the bench, and no bench is at hand to play it again.',
	'score-differs': 'It says {claimed} right, and its answers come to {score}. The mark goes by the answers.',
	'changed-after':
		'It was changed, or hurt on its way, after it was handed in: its check doesn’t fit. Ask for it again.',
	'other-paper':
		'It was taken on a quiz that its recipe and seed don’t set: the quiz was changed, or another version of Prep Bay set it. It’s marked as the quiz is set here.',
} as const;

/** What was handed in, where several things were: a piece of a text, a record of a store, by the name of the whole. */
export const handedNames = {
	text: 'The text',
	piece: '{from}, piece {n}',
	list: '{from}, {list}',
	record: '{from}, {what} {n}',
} as const;
