import type { Says } from './says.ts';

/** Parts of the sentence that says what light is seen; they are strung together with commas. */
export const light = {
	dark: 'dark',
	/** {colour} are the words for it; {how} says how bright it looks, in words: percent is for what was asked. */
	lit: '{colour}{how}',
	cells: '{cells?cell|cells} {cells as numbers} {colour}{how}',
	/** The level that was asked for, where one was. */
	asked: 'level {level as level}',
	cellsDark: '{cells?cell|cells} {cells as numbers} dark',
	flashing: 'flashing {rate as rate}',
	moving: 'changing by itself',
	flicker: 'jumping about',
	/** Said where one of these has ended. */
	noFlashing: 'no longer flashing',
	noMoving: 'no longer changing',
	noFlicker: 'no longer jumping',
} as const satisfies Record<string, Says>;

/**
 * How bright a light looks, by how far up its strongest emitter is, percent, from each on. Steps are ours: of two lights that are 20
 * points apart no two share a word. What is lower is dim or faint, which its colour says already.
 */
export const howBright: readonly { readonly from: number; readonly says: string }[] = [
	{ from: 100, says: ', at full' },
	{ from: 80, says: ', very bright' },
	{ from: 60, says: ', bright' },
	{ from: 40, says: ', half bright' },
	{ from: 20, says: ', low' },
];

/** Sentences that go with a light that can harm. */
export const warnings = {
	flashing: 'Warn people before they see it flash.',
	ultraviolet: 'Its ultraviolet is barely seen and still strong: do not look in.',
} as const;

/** The small lamps on a fixture’s back, strung together with commas. */
export const lamps = {
	power: { out: 'power indicator out', lit: 'power indicator lit' },
	data: {
		out: 'data indicator out',
		steady: 'data indicator steady',
		flickering: 'data indicator flickering',
		blinking: 'data indicator blinking slowly',
	},
	battery: [
		{ when: { charging: true }, says: 'battery at {bars} of 4 bars, charging' },
		{ says: 'battery at {bars} of 4 bars' },
	],
	sensor: { out: 'sensor indicator out', lit: 'sensor indicator lit' },
} as const;

/** A fixture in one line. */
export const fixtureLine = '{name}: {light}. {warnings}{lamps}.';

/** What a display says, aloud. {lines} are as they stand; {title} is what the item is called. */
export const displays = {
	dark: 'Display dark.',
	locked: 'Display reads {lines}, locked.',
	browsing: 'Display reads {lines}[, {title}], browsing.',
	editing: 'Display reads {lines}, editing[ {title}].',
	/** What it shows acts already. */
	scrolling: 'Display reads {lines}[, {title}], blinking: it acts, and it isn’t stored yet.',
	resting: 'Display at rest reads {lines}.',
	confirming: 'Display asks[ {title}]: {ask} {yes} for yes, {no} for no.',
	switches: [
		{ when: { all: 'down' }, says: 'All ten switches down[; {slides as list}].' },
		{ when: { all: 'up' }, says: 'All ten switches up[; {slides as list}].' },
		{ says: '{up?Switch|Switches} {up as numbers} up, the others down[; {slides as list}].' },
	],
	slide: 'slide “{title}” at {label}',
	/** Under the display, for the eye. */
	titleValue: '{title}: {value}',
	titleLocked: 'Panel locked',
	titleResting: 'At rest',
	/** What it shows acts, and isn't stored. */
	titleUnstored: '{text}, not stored yet',
	/** Two lines read as one. */
	twoLines: '{first}: {second}',
} as const satisfies Record<string, Says>;

/** What a person notices has changed in a light. {name} is the fixture’s. */
export const changes = {
	wentDark: '{name} went dark.',
	cameUp: '{name} came up: {now}.',
	became: '{name} is now {now}.',
	brighter: '{name} got brighter: {now}.',
	dimmer: '{name} got dimmer: {now}.',
} as const satisfies Record<string, Says>;
