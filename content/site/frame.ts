/** Words around every page. */
export const frame = {
	name: 'Prep Bay',
	skip: 'Skip to the page',
	homeLink: 'Prep Bay, home',
	navLabel: 'Site',
	nav: [
		{ href: '/bench/', words: 'Bench' },
		{ href: '/drills/', words: 'Drills' },
		{ href: '/finder/', words: 'Finder' },
		{ href: '/about/', words: 'About' },
	],
	theme: { heading: 'Look', words: { system: 'As the device', light: 'Light', dark: 'Dark' } },
	update: {
		words: 'A new version is ready. Taking it loads every open page of Prep Bay again.',
		accept: 'Take it now',
		later: 'Later',
	},
	foot: 'Everything here is simulated. Real gear can hurt you: read the cautions, and ask the competent person on site.',
	cautionsLink: 'Cautions',
	cautionsHref: '/about/#cautions',
} as const;
