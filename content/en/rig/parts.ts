/** What stands between things in a row, in a stretch from one to another, and for the rest of a long list. */
export const listWords = { comma: ', ', to: ' to ', more: '{count} more' } as const;

/** Sockets, by their ids: a fixture’s two, a splitter’s input, and what a desk’s or a splitter’s output is called. */
export const sockets = { in: 'data in', out: 'data out', output: 'output {id}', at: '{device}, {socket}' } as const;

/** What a rig with no desk of its own calls one. */
export const deskName = 'the desk';

/** A cable by its id, and by where it runs. */
export const cableWords = {
	name: 'cable {id}',
	ends: [
		{ when: { from: null, to: null }, says: '{name}, plugged into nothing' },
		{ when: { from: null }, says: '{name}, plugged into {to} at one end only' },
		{ when: { to: null }, says: '{name}, plugged into {from} at one end only' },
		{ says: '{name} (from {from} to {to})' },
	],
} as const;

/** Where a mains plug may be. */
export const feeds = { wall: 'the wall', none: 'nothing', fixture: 'the mains link of {name}' } as const;

/** Numbers with their units. */
export const amounts = {
	percent: '{n} %',
	hardly: 'less than 1 %',
	metres: '{n} m',
	rate: [{ when: { n: 1 }, says: 'once a second' }, { says: '{n} times a second' }],
	milliseconds: '{n} {n?millisecond|milliseconds}',
	seconds: '{n} {n?second|seconds}',
	minutes: '{n} {n?minute|minutes}',
	hours: '{n} {n?hour|hours}',
	pastEnd: '{n}, past the end of the universe',
} as const;

/** The conductors of a cable. */
export const wires = { common: 'common', minus: 'data minus', plus: 'data plus' } as const;

/** Dim curves: what each is called, and what it does. */
export const curves = { straight: 'straight', square: 'square', soft: 'soft' } as const;
export const curveBends = {
	straight: 'the output follows the level',
	square: 'low levels give less light than a straight one would',
	soft: 'it moves slowly near out and near full',
} as const;

/** What a built-in programme does, by its kind, and (sound) by how it answers. */
export const programmeKinds = {
	change: 'one colour after another',
	fade: 'one colour melting into the next',
	pulse: 'slow swells of light',
	strobe: 'flashes',
	sound: 'answers what the microphone hears',
	step: 'the next colour on each beat',
	swell: 'brighter as it gets louder',
	flash: 'a flash on each beat',
	run: 'light that runs along on each beat',
} as const;

/** The four keys, by id. */
export const keyNames = {
	back: 'Back',
	down: 'Down',
	up: 'Up',
	set: 'Set',
	left: 'Left',
	right: 'Right',
	page: 'Page',
} as const;

/** Buttons of the remote; for a held colour or a programme {name} is which. */
export const remoteButtons = {
	light: 'Light',
	dark: 'Dark',
	brighter: 'Brighter',
	dimmer: 'Dimmer',
	faster: 'Faster',
	slower: 'Slower',
	held: 'Static colour {name}',
	programme: 'Programme {name}',
} as const;

/** Start codes by the ids of the line’s arithmetic. */
export const startCodes = {
	levels: 'levels',
	text: 'text',
	test: 'a test packet',
	'utf8-text': 'text in UTF-8',
	maker: 'data of one maker’s own',
	rdm: 'remote device management',
	'system-information': 'system information',
} as const;

/** What is wrong inside a fixture, or right again, by the condition’s key; the fact is {value}. */
export const conditions = {
	deadEmitters: [
		{ when: { some: false }, says: 'all emitters light again' },
		{ says: 'dead {value?emitter|emitters}: {value as emitters}' },
	],
	foldBack: [
		{ when: { value: 1 }, says: 'it’s cool' },
		{ when: { value: 0 }, says: 'it’s too hot and shuts its light off' },
		{ says: 'it’s hot and holds back to {value as share}' },
	],
	covered: [{ when: { value: true }, says: 'something covers its lens' }, { says: 'its lens is free' }],
	receiverDead: [{ when: { value: true }, says: 'its line receiver is dead' }, { says: 'its line receiver works' }],
	badSocket: [
		{ when: { value: 'in' }, says: 'its data in socket has a bad contact' },
		{ when: { value: 'out' }, says: 'its data out socket has a bad contact' },
		{ says: 'both its data sockets are good' },
	],
	extraLoads: [
		{ when: { value: 0 }, says: 'its line input loads the line as it should' },
		{ says: 'its line input loads the line with {value} unit loads more than it should' },
	],
	sensorDead: [{ when: { value: true }, says: 'its remote sensor is dead' }, { says: 'its remote sensor works' }],
	microphoneDead: [{ when: { value: true }, says: 'its microphone is dead' }, { says: 'its microphone works' }],
	displayDead: [{ when: { value: true }, says: 'its display is dead' }, { says: 'its display works' }],
	batteryHealth: [
		{ when: { value: 1 }, says: 'its battery is as good as new' },
		{ says: 'its battery holds {value as share} of what it did when new' },
	],
	chargerDead: [{ when: { value: true }, says: 'its charger is dead' }, { says: 'its charger works' }],
	fuseBlown: [{ when: { value: true }, says: 'its fuse has blown' }, { says: 'its fuse is good' }],
	supplyDead: [{ when: { value: true }, says: 'its power supply is dead' }, { says: 'its power supply works' }],
	socketDead: [{ when: { value: true }, says: 'its socket in the wall is dead' }, { says: 'its socket is live' }],
	leadDead: [{ when: { value: true }, says: 'its mains lead is dead' }, { says: 'its mains lead is good' }],
	breakerOff: [{ when: { value: true }, says: 'the breaker for its sockets is off' }, { says: 'its breaker is on' }],
	sensorCovered: [
		{ when: { value: true }, says: 'something covers its remote sensor' },
		{ says: 'its remote sensor is free' },
	],
} as const;
