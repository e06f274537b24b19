import type { Says } from './says.ts';

/** Parts of the sentence that says what light is seen; they are strung together with commas. */
export const light = {
	dark: 'dark',
	/** {colour} are the words for it; {percent} is how bright it looks against full. */
	lit: '{colour} at {brightness as brightness}',
	cells: '{cells?cell|cells} {cells as numbers} {colour} at {brightness as brightness}',
	cellsDark: '{cells?cell|cells} {cells as numbers} dark',
	flashing: 'flashing {rate as rate}',
	moving: 'changing by itself',
	flicker: 'jumping about',
	/** Said where one of these has ended. */
	noFlashing: 'no longer flashing',
	noMoving: 'no longer changing',
	noFlicker: 'no longer jumping',
} as const satisfies Record<string, Says>;

/** Sentences that go with a light that can harm. */
export const warnings = {
	flashing: 'Warn people before they see it flash.',
	ultraviolet: 'Its ultraviolet is barely seen and still strong: do not look in.',
} as const;

/** The small lamps on a fixture’s back, strung together with commas. */
export const lamps = {
	power: { out: 'power lamp out', lit: 'power lamp lit' },
	data: {
		out: 'data lamp out',
		steady: 'data lamp steady',
		flickering: 'data lamp flickering',
		blinking: 'data lamp blinking slowly',
	},
	battery: [
		{ when: { charging: true }, says: 'battery at {bars} of 4 bars, charging' },
		{ says: 'battery at {bars} of 4 bars' },
	],
	sensor: { out: 'sensor lamp out', lit: 'sensor lamp lit' },
} as const;

/** A fixture in one line. */
export const fixtureLine = '{name}: {light}. {warnings}{lamps}.';

/** What a display says, aloud. {lines} are as they stand; {title} is what the item is called. */
export const displays = {
	dark: 'Display dark.',
	locked: 'Display reads {lines}, locked.',
	browsing: 'Display reads {lines}[, {title}], browsing.',
	editing: 'Display reads {lines}, editing[ {title}].',
	confirming: 'Display asks[ {title}]: {ask} Set for yes, Back for no.',
	switches: [
		{ when: { all: 'down' }, says: 'All ten switches down[; {slides as list}].' },
		{ when: { all: 'up' }, says: 'All ten switches up[; {slides as list}].' },
		{ says: '{up?Switch|Switches} {up as numbers} up, the others down[; {slides as list}].' },
	],
	slide: 'slide “{title}” at {label}',
	/** Two lines read as one. */
	twoLines: '{first}: {second}',
} as const satisfies Record<string, Says>;

/** What a person notices has changed in a light. {name} is the fixture’s. */
export const changes = {
	wentDark: '{name} went dark.',
	cameUp: '{name} came up: {now}.',
	became: '{name} is now {now}.',
	brighter: '{name} got brighter, to {brightness as brightness}.',
	dimmer: '{name} got dimmer, to {brightness as brightness}.',
} as const satisfies Record<string, Says>;
