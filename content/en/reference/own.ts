import { CREW_PANEL } from '../ui/index.ts';

/** The tables of the crew's own fixtures. */
export const ownReference = {
	href: '/reference/own/',
	title: 'Charts of your own fixtures: Prep Bay',
	description: 'Figures, ways through the panel and channel charts of the fixtures in your stock.',
	heading: 'Your own fixtures',
	lead: 'The same tables as for the fixtures of the house, worked out from your stock.',
	needsScript: 'These tables are worked out in the page and need JavaScript, which is turned off here.',
	none: 'There’s no fixture of your own here yet.',
	/** Where a panel comes from that isn't known whole. */
	panelFrom: {
		'stand-in': 'The panel is a stand-in: the real one has other keys and menus, and the ways below aren’t its ways.',
		crew: CREW_PANEL,
	},
	assumed:
		'What isn’t on the label or in the chart is assumed. The real one decides. Don’t plan a circuit or a weight by an assumed figure.',
	house: 'Fixtures of the house',
	link: 'Your own fixtures',
	fetching: {
		coming: 'Working out the tables…',
		failed: 'The tables couldn’t be fetched. Check the network once.',
		again: 'Try again',
	},
} as const;
