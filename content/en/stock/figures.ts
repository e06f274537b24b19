import { counted, locale } from '../locale/index.ts';
import { keyNames } from '../rig/index.ts';
import { panelQuestions } from './panel.ts';
import { LEFT_ALONE, REAL_ACTS } from './real-acts.ts';

const list = (names: readonly string[]): string => locale.list(names);
const where = (slot: string, band: string): string => (band === '' ? slot : `${slot}, ‘${band}’`);

/** A figure of a fixture in words, and what rests on it. By the code of the figure. */
export const figureWords = {
	beam: {
		is: ({ degrees }: { degrees: number }) => `Beam angle ${degrees}°`,
		matters: 'How wide the pool of light is, and how bright.',
	},
	field: {
		is: ({ degrees }: { degrees: number }) => `Field angle ${degrees}°`,
		matters: 'How far the soft edge of the pool reaches.',
	},
	watts: {
		is: ({ watts }: { watts: number }) => `${watts} W at full`,
		matters: 'How many can share a circuit, and how long a battery lasts. Read the label before you plan power.',
	},
	lumens: { is: ({ lumens }: { lumens: number }) => `${lumens} lm at full`, matters: 'How bright the light is.' },
	colours: {
		is: ({ emitters }: { emitters: readonly string[] }) => `The shade of ${list(emitters)}`,
		matters: 'The exact colour on the wall. Yours may be warmer, cooler or deeper.',
	},
	feed: {
		is: ({ feed }: { feed: 'battery' | 'mains' }) => (feed === 'battery' ? 'It runs on a battery' : 'It runs on mains'),
		matters: 'Whether its watts are in a circuit’s sum, and which cautions you see. Look at the label.',
	},
	'watt-hours': {
		is: ({ wattHours }: { wattHours: number }) => `Battery of ${wattHours} Wh`,
		matters: 'How many hours it lasts.',
	},
	charger: {
		is: ({ watts }: { watts: number }) => `It charges at ${watts} W`,
		matters: 'How long a charge takes. Use its own charger, and go by the manual.',
	},
	link: {
		is: ({ has }: { has: boolean }) => (has ? 'It has a mains link socket' : 'It has no mains link socket'),
		matters:
			'Whether it passes mains on at the bench. The label says how many may be linked. Keep within the least of cable, socket and supply.',
	},
	idle: {
		is: ({ watts }: { watts: number }) => `${watts} W with the light out`,
		matters: 'How long a battery lasts when dark.',
	},
	panel: {
		is: () => 'The panel is a stand-in',
		matters: 'Keys, menus and words differ on the real one. Learn those from the fixture in your hand.',
	},
	'panel-own': {
		is: ({ keys, items }: { keys: number; items: number }) =>
			keys === 0
				? 'The panel as you wrote it down: switches'
				: `The panel as you wrote it down: ${counted(keys, 'key', 'keys')}, ${counted(items, 'item', 'items')} on top`,
		matters: 'Which keys you learn.',
	},
	'panel-answer': {
		is: ({ question, answer }: { question: string; answer: string }) => {
			const { ask, answers } = panelQuestions.questions[question as keyof typeof panelQuestions.questions];
			const said =
				(answers as Readonly<Record<string, string>>)[answer] ??
				(keyNames as Readonly<Record<string, string>>)[answer] ??
				answer;
			return `${ask} ${said}`;
		},
		matters: 'How its keys act. Answer it under the panel, which says how to find out.',
	},
	'panel-idle': {
		is: ({ items }: { items: readonly string[] }) => `Does nothing here: ${list(items)}`,
		matters: `${LEFT_ALONE} ${REAL_ACTS}`,
	},
	'panel-times': {
		is: () => 'How long you hold a key, and how long the display waits',
		matters: 'When a key repeats, a lock opens and a value is kept. The manual may say.',
	},
	defaults: {
		is: () => 'What it’s set to when new',
		matters: 'What a reset gives: mode, address, what it does at signal loss.',
	},
	follows: {
		is: () => 'A follower listens at its own start address',
		matters:
			'How leader and follower work. Some listen from channel 1 instead. At start address 1 both come to the same. Its manual says what else it needs to follow.',
	},
	'unit-loads': {
		is: ({ unitLoads }: { unitLoads: number }) => `${unitLoads} unit load on the line`,
		matters: 'How many can hang on one line.',
	},
	remote: { is: () => 'It has no remote', matters: 'If yours has one, the bench can’t practise it.' },
	strobe: {
		is: ({ slot, band, slow, fast }: { slot: string; band: string; slow: number; fast: number }) =>
			`${where(slot, band)}: ${slow} to ${fast} flashes a second`,
		matters: 'How fast it flashes. Try the real one only before doors, with everyone told and nobody in front.',
	},
	'strobe-clamped': {
		is: ({ slot, band, found, rate }: { slot: string; band: string; found: number; rate: number }) =>
			`${where(slot, band)}: the chart says ${found} flashes a second, taken as ${rate}`,
		matters:
			'The bench flashes from 0.1 to 30 times a second. The real one may flash faster: try it only before doors, with everyone told and nobody in front.',
	},
	programme: {
		is: ({ slot, band }: { slot: string; band: string }) => `${where(slot, band)}: a programme`,
		matters: 'Its colours and its speed are ours, not the maker’s.',
	},
	mix: {
		is: ({ slot, band }: { slot: string; band: string }) => `${where(slot, band)}: a static colour`,
		matters: 'The mix is ours, not the maker’s.',
	},
	off: {
		is: ({ slot, band }: { slot: string; band: string }) => `${where(slot, band)}: steady light`,
		matters: 'It could be a blackout. Look in the manual; try it only before doors, with everyone told.',
	},
	'not-acted': {
		is: ({ slot, band }: { slot: string; band: string }) => `${where(slot, band)}: does nothing here`,
		matters: REAL_ACTS,
	},
	gap: {
		is: ({ slot, from, to }: { slot: string; from: number; to: number }) => `${slot}: ${from} to ${to} does nothing`,
		matters: 'The chart doesn’t say, so keep out of these values. The real one may flash or go dark there.',
	},
	'slot-missing': {
		is: ({ slot }: { slot: number }) => `Channel ${slot} does nothing`,
		matters: 'The chart leaves it out. The real one may act on it: leave it at 0 until the manual says.',
	},
	cells: {
		is: ({ cells }: { cells: number }) => `${cells} cells, side by side`,
		matters: 'Which end cell 1 is at. See it on the real one.',
	},
	'cell-bands': {
		is: ({ slot }: { slot: string }) => `${slot}: acts on all cells here`,
		matters: 'The real one may flash or change one cell alone.',
	},
} as const;

/** Around the figures. */
export const figuresFrame = {
	heading: 'What we assumed',
	lead: 'No chart says everything. Each line below is our guess, with what it changes. Find out from its manual, or fill in its label above.',
	given: 'Given',
	assumed: 'Assumed',
	count: (assumed: number, given: number) => `${assumed} assumed, ${given} given`,
	show: 'Show what we assumed',
} as const;
