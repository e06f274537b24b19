/** Laying the bench out: ready-made benches, and fixtures one by one. */
export const layOutWords = {
	title: 'Set up the bench',
	done: 'Done',
	presets: 'Ready-made',
	replaces: 'Takes the place of what’s there. Undo brings it back.',
	preset: {
		one: { name: 'One battery wash', words: 'Switched off, in another mode than the desk thinks, and not cabled.' },
		four: { name: 'Four in line with a desk', words: 'Battery washes back to back on one universe, all lit.' },
		leader: {
			name: 'A leader and three followers',
			words: 'One runs its own programme; the rest do as it does. No desk.',
		},
		mixed: { name: 'Mixed panels', words: 'A battery wash, a bar overhead, and an old wash set by switches.' },
		universes: { name: 'Two universes', words: 'Four bars cell by cell, two to a universe.' },
	},
	add: 'Add a fixture',
	addOne: (name: string) => `Add ${name}`,
	added: 'It comes switched off and unplugged, at its defaults.',
	full: (most: number) => `A bench holds ${most} fixtures, and this one is full.`,
	desk: 'Add a desk',
	on: 'On the bench',
	nameOf: (name: string) => `Name of ${name}`,
	remove: 'Take away',
	removeOne: (name: string) => `Take away ${name}`,
	/** What the crew calls a fixture that is set down, by its shape; a number is put behind. */
	kinds: { wash: 'Wash', bar: 'Bar' },
	clear: 'Clear the bench',
} as const;

export const shareWords = {
	title: 'Share this bench',
	close: 'Close',
	words:
		'The link holds the whole bench and all that was done on it. Nothing is sent anywhere: whoever opens it has it.',
	label: 'Link',
	copy: 'Copy the link',
	copied: 'Copied.',
	copyFailed: 'The browser wouldn’t copy it. Select the link and copy it by hand.',
	long: (count: number) =>
		`It is ${count} characters long, and some apps cut long links short. A bench with less history has a shorter one.`,
} as const;
