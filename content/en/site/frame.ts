/** Words around every page. */
export const frame = {
	name: 'Prep Bay',
	/** For those who keep the site among their applications. */
	description: 'Practise, set up and fault-find LED fixtures on simulated gear, with no network.',
	skip: 'Skip to the page',
	homeLink: 'Prep Bay, home',
	navLabel: 'Site',
	/** By when they are wanted. A page stands under the entry whose own address, or one of `under`, is most of its address. */
	nav: [
		{ id: 'rig', href: '/rig/', words: 'Rig', under: ['/stock/'] },
		{ id: 'finder', href: '/finder/', words: 'Fault finder', under: [] },
		{ id: 'bench', href: '/bench/', words: 'Bench', under: [] },
		{ id: 'learn', href: '/learn/', words: 'Learn', under: ['/lessons/', '/drills/', '/review/', '/papers/sit/'] },
		{ id: 'teach', href: '/teach/', words: 'Teach', under: ['/papers/', '/lessons/plan/'] },
	],
	search: { id: 'search', href: '/search/', words: 'Search', under: ['/glossary/', '/reference/'] },
	/** On the cross that leads out of a task. */
	leave: 'Leave this task',
	theme: { heading: 'Look', words: { system: 'As the device', light: 'Light', dark: 'Dark', backstage: 'Backstage' } },
	buzz: 'Keys and ticks buzz',
	update: {
		words:
			'A new version is ready. Taking it loads every open page of Prep Bay again, once nothing is under way in any of them.',
		waitsHere: 'The new version comes when you have finished here. What you’re doing is kept.',
		waitsThere:
			'Something is under way in another tab of Prep Bay. The new version comes when that is done, or when you close that tab.',
		askedHere:
			'A new version was asked for in another tab. It comes when you have finished here. What you’re doing is kept.',
		askedThere: 'A new version was asked for in another tab. This page loads again when it comes.',
		accept: 'Take it now',
		later: 'Later',
	},
	footShort: 'Everything here is simulated.',
	foot: 'Everything here is simulated. Real gear can hurt you: read the cautions, and ask the competent person on site (in the US, for electrical work, the qualified person).',
	cautionsLink: 'Cautions',
	cautionsHref: '/about/#cautions',
	aboutLink: 'About this site',
	aboutHref: '/about/',
	keptLink: 'Kept on this device',
	keptHref: '/kept/',
} as const;
