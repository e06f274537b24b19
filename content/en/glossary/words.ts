/** The words around the glossary. */
export const glossaryPage = {
	title: 'Glossary: Prep Bay',
	description: 'The words of the job in plain sentences, and the standard each comes from.',
	heading: 'Glossary',
	lead: 'The words of the job, in plain sentences. Each says which standard it comes from. Not every standard could be read: where only others that restate it were, or none, that stands beside it. Where it says common practice, the trade uses the word and no standard was found that owns it.',
	elsewhere: {
		words: 'What it may say elsewhere: short forms and older words on real panels',
		href: '/reference/elsewhere/',
	},
	letters: 'By letter',
	forms: 'Also',
	see: 'See',
} as const;
