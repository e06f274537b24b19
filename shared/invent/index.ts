/**
 * Fixtures that nobody has seen, each a whole profile out of a seed: its panel's law, keys, menu and words, its modes and their charts, its
 * emitters, programmes, power, and how it follows. Words come from `content/`; nothing of any real fixture is in it. What it is to
 * have none of can be said, so that some laws and words can be kept from practice.
 *
 * Modelled: the laws that a simulated panel plays (`LAWS`), menus one or two deep in an order of their own, several words for the same
 * thing, bands of irregular edges, at the hard level with bands and slots of no function, odd slot orders and fine halves apart.
 * Left out: charts in which one slot decides whether another works, and panels that a simulated one does not play.
 */
export { inventFixture } from './invent.ts';
export {
	INVENT_LEVELS,
	type InventLevel,
	type InventNames,
	type Inventor,
	LAWS,
	type Law,
	type PanelWord,
	type Without,
} from './types.ts';
