/** The crew's own fixtures on other pages, wherever fixtures are chosen. */
export const ownWords = {
	href: '/stock/',
	unnamed: 'Unnamed fixture',
	/** Beside each of them. */
	from: 'From your stock.',
	standIn: 'Its panel is a stand-in: the real one differs.',
	toStock: 'Add a fixture of your own',
	notReady: (name: string) => `${name} isn’t ready: open it in your stock, and fix the marked places in its chart.`,
	failed: 'It couldn’t be fetched. Load the page again, and try once more.',
} as const;
