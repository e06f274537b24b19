import { stockNames } from '../stock/index.ts';

/** Names for what an open fixture file leaves without one, and the labels of the stand-in panel. */
export const gdtfNames = {
	fixture: 'Fixture from a file',
	about: 'Read from an open fixture file. Its panel is a stand-in.',
	mode: (place: number) => `Mode ${place}`,
	light: 'Light',
	full: 'All at full',
	pulse: 'Pulse',
	unused: 'Unused',
	unusedAt: (channel: number) => `Unused ${channel}`,
	noFunction: 'No function',
	fine: (channel: string) => `${channel}, fine`,
	emitters: {
		...stockNames.emitters,
		magenta: 'Magenta',
		yellow: 'Yellow',
		'blue-green': 'Blue-green',
		'light-blue': 'Light blue',
		purple: 'Purple',
		pink: 'Pink',
	},
	panel: stockNames.panel,
} as const;
