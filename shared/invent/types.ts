import type { Profile, SettingKey } from '../profile/index.ts';
import type { Random } from '../random/index.ts';

/**
 * How a panel can be: a tree of menus on four characters, the same on a text display, functions in a row that act as they are passed, a knob
 * that is turned and pressed, and DIP switches. Permanent: what is kept from practice is named by it.
 */
export const LAWS = Object.freeze(['tree-code', 'tree-text', 'flat', 'knob', 'dip'] as const);
export type Law = (typeof LAWS)[number];

/** How much there is to it, and how regular it is. */
export const INVENT_LEVELS = Object.freeze(['easy', 'middle', 'hard'] as const);
export type InventLevel = (typeof INVENT_LEVELS)[number];

/** Static colours, by what they look like. */
export type ColourId =
	| 'red'
	| 'green'
	| 'blue'
	| 'amber'
	| 'yellow'
	| 'orange'
	| 'cyan'
	| 'turquoise'
	| 'magenta'
	| 'pink'
	| 'violet'
	| 'white'
	| 'warm-white'
	| 'cool-white'
	| 'ultraviolet';

/** Programmes, by what they do; the last four answer a microphone. */
export type ProgrammeId = 'change' | 'fade' | 'pulse' | 'strobe' | 'step' | 'swell' | 'flash' | 'run';

/** Menus that hold other items. */
export type MenuConcept = 'source' | 'data' | 'own' | 'colour' | 'programmes' | 'remote' | 'upkeep';

/** What a label of a panel can stand for: an item, or a value of one. */
export type PanelConcept =
	| SettingKey
	| `menu.${MenuConcept}`
	| 'follow'
	| 'defaults'
	| 'ask'
	| `info.${'charge' | 'hours' | 'signal' | 'footprint'}`
	| `work.${Profile['defaults']['work']}`
	| `onoff.${'on' | 'off'}`
	| `loss.${Profile['defaults']['loss']}`
	| `curve.${Profile['defaults']['curve']}`
	| `sensor.${Profile['defaults']['sensor']}`
	| 'sleep.never'
	| `held.${ColourId}`
	| `programme.${ProgrammeId}`;

/** What a name in a chart can stand for. */
export type ChartConcept =
	| `slot.${'intensity' | 'shutter' | 'colours' | 'function' | 'speed' | 'unused'}`
	| `band.${'open' | 'closed' | 'strobe' | 'colours' | 'unused'}`;

/** One way to say it on a panel. What is too long for a display is cut. */
export interface PanelWord {
	/** On four characters: capitals, at most 4. */
	readonly code: string;
	/** On a text display: at most 16. */
	readonly text: string;
	/** On a flat panel of four characters, before its value: one letter. */
	readonly letter?: string;
}

/** Words of invented fixtures, from `content/`: for each thing several ways to say it, by ids that stay. */
export interface InventNames {
	/** Which list of words it is, permanent: the same seed gives other fixtures with another list. */
	readonly id: string;
	readonly panel: Readonly<Record<PanelConcept, Readonly<Record<string, PanelWord>>>>;
	readonly chart: Readonly<Record<ChartConcept, Readonly<Record<string, string>>>>;
	readonly emitters: Readonly<Record<string, string>>;
	/** What fixtures are called; a number stands after it. */
	readonly fixtures: readonly string[];
	readonly about: (told: {
		readonly law: Law;
		readonly shape: Profile['shape'];
		readonly emitters: number;
		readonly isBattery: boolean;
	}) => string;
	readonly channels: (count: number) => string;
	readonly seconds: (count: number) => string;
	readonly half: (name: string, which: 0 | 1) => string;
	readonly cell: (name: string, cell: number) => string;
	readonly again: (name: string) => string;
	readonly dip: Readonly<Record<'does' | 'speed' | 'hearing' | 'lead', string>> & {
		readonly speeds: (value: number) => string;
		readonly hears: (value: number) => string;
		readonly leads: (on: boolean) => string;
	};
}

/** What an invented fixture is to have none of. */
export interface Without {
	readonly laws?: readonly Law[];
	/** Words as `concept/id`: `address/first-channel`. */
	readonly words?: readonly string[];
}

/** Invents fixtures, its words at hand. */
export type Inventor = (seed: number, level: InventLevel, without?: Without) => Profile;

/** What the parts of an invention are made with. */
export interface Making {
	readonly level: InventLevel;
	readonly law: Law;
	readonly random: Random;
	readonly names: InventNames;
}
