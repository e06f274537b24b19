import type { keyNames } from '../rig/index.ts';
import { CREW_PANEL } from '../ui/index.ts';

type Key = keyof typeof keyNames;
type Called = (key: Key) => string;

/** What the keyboard does for the keys of a panel, in the order it is said. */
const KEYBOARD: readonly (readonly [Key, (called: Called) => string])[] = [
	['up', (called) => `arrows for ${called('up')} and ${called('down')}`],
	['right', (called) => `arrows for ${called('left')} and ${called('right')}`],
	['set', (called) => `Enter for ${called('set')}`],
	['page', (called) => `Enter for ${called('page')}`],
	['back', (called) => `Escape or Backspace for ${called('back')}`],
];

/** Words of a fixture's back, and of the row. */
export const backWords = {
	panel: (name: string) => `Panel of ${name}`,
	display: (name: string) => `Display of ${name}`,
	/** Where a panel comes from that isn't known whole. */
	from: {
		'stand-in':
			'This panel is a stand-in. The real one has other keys and menus: learn those from the fixture in your hand.',
		crew: CREW_PANEL,
	},
	/** Those of the panel, and what each is called there. */
	keysHint: (keys: readonly Key[], called: Called) =>
		`With the display in focus: ${KEYBOARD.filter(([key]) => keys.includes(key))
			.map(([, says]) => says(called))
			.join(', ')}. Hold to repeat.`,
	switchName: (n: number) => `Switch ${n}`,
	up: 'up',
	down: 'down',
	switches: 'Ten switches',
	lamps: 'Indicators',
	power: { name: 'Power', out: 'out', lit: 'lit' },
	data: { name: 'Data', out: 'out', steady: 'steady', flickering: 'flickering', blinking: 'blinking' },
	battery: { name: 'Battery', bars: (bars: number) => `${bars} of 4`, charging: 'charging' },
	sensor: { name: 'Remote sensor', out: 'out', lit: 'listening' },
	lightIs: (light: string) => `Light: ${light}`,
	powerSwitch: 'Power switch',
	mainsLead: 'Mains lead in',
	nowhere: 'nothing',
	wall: 'the wall',
	linkOf: (name: string) => `the link of ${name}`,
	linkFeeds: (names: string) => `Mains link feeds ${names}.`,
	linkFree: 'Mains link: nothing in it.',
	sockets: { in: 'Data in', out: 'Data out' },
	in: 'in',
	out: 'out',
	why: 'Why?',
	whyOf: (name: string) => `Why does ${name} look like that?`,
	takeInHand: 'Select',
	noDisplay: 'No display',
} as const;

/** What stands on the cards of the row: the desk’s outputs, and lights whose cells differ. */
export const rowWords = {
	carries: (letter: string, universe: number) => `${letter}: universe ${universe}`,
	silent: (letter: string) => `${letter}: off`,
	toPanel: 'To its panel',
	differ: (light: string) => `${light}, its cells each their own`,
} as const;

/** What a screen reader hears of the wall’s picture. */
export const wallLabel =
	'The hall’s wall, its fixtures and the light they throw. The row says each fixture’s light in words.';
