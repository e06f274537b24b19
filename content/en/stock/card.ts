import { counted } from '../locale/index.ts';
import { CREW_PANEL } from '../ui/index.ts';

/** A card of one fixture, printed for the lid of its case. */
export const cardWords = {
	make: 'Card',
	makeOne: (name: string) => `Print a card for ${name}`,
	back: 'Back to the list',
	print: 'Print',
	paper: 'Paper',
	sizes: { a5: 'A5', a6: 'A6', half: 'Half letter (US)' },
	hint: 'Black on white, for the lid of the case. A long chart goes on to the next page. Print at 100%.',
	assumed: (figure: string) => `${figure} (assumed)`,
	figures: 'Figures',
	modes: 'Modes',
	modeHead: { mode: 'Mode', channels: 'Channels' },
	chartHead: { channel: 'Channel', values: 'Values', does: 'What it does' },
	chart: (mode: string) => `Chart: ${mode}`,
	whole: '0–255',
	real: 'On the real panel: write the keys here',
	realHint:
		'Before doors, with no data cable in it, everyone told and nobody in front of it: try each on the real one, write down what you pressed, and set it back.',
	realRows: ['Mode', 'Start address', 'Leader', 'Follower', 'Lock and unlock'],
	standIn: 'Stand-in panel, for the bench only',
	standInHint: 'This isn’t the panel in your hand: the real one has other keys and menus.',
	panel: 'Panel',
	crew: (assumed: number) => `${CREW_PANEL} Assumed below: ${counted(assumed, 'point', 'points')}.`,
	fromChart: 'Made from the chart in its manual.',
	fromFile: 'Read from a GDTF file.',
	check: 'Check it against the manual before a show.',
} as const;
