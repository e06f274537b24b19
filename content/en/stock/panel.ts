import { counted, locale } from '../locale/index.ts';

/** Where hands go to a real panel that nobody here knows: it is by definition not the one that was worked out. */
const CARE =
	'Before doors only, and not overhead: no data cable in it, everyone told, nobody in front of it. Look at the wall, not into the lens. It may flash or change. First write down what each value is. If it asks you something, or shows what isn’t listed here, press nothing more. At the end set it back as you wrote.';
const OFF_AND_ON =
	'On the bench and alone, with nothing linked from it, switch it off and on at its own switch. No switch? Then skip this check: no plug or link is pulled for it.';
const HOLDS = 'Look in the manual first: on some panels a long hold resets or locks it.';

/** The part of the editor where a crew write down the panel of their own fixture. */
export const panelEdit = {
	heading: 'The panel in your hand',
	lead: 'Write down how its panel works, and press its keys here. From then on the bench, the prep slips and the card go by it.',
	/** Before anything here sends a hand to the real one. */
	care: `The manual comes first. For the real one: ${CARE.charAt(0).toLowerCase()}${CARE.slice(1)}`,
	begin: 'Write down its panel',
	drop: 'Go back to the stand-in panel',
	dropped: 'The stand-in panel is back. Undo brings yours back.',
	way: 'How it works',
	ways: {
		keys: { name: 'Keys and a menu', more: 'Keys go along a list of items; one key goes in and keeps.' },
		knob: { name: 'A knob', more: 'Turn it to go along, press it to go in and keep.' },
		flat: { name: 'Keys and no menu', more: 'One key goes to the next function, and the light acts at once.' },
		switches: { name: 'Small switches', more: 'Ten DIP switches, and slides beside them.' },
	},
	display: 'Display',
	displays: { code: 'Four characters', text: 'Lines of text' },
	keys: 'Keys, in the order they’re in',
	keysHint: 'Pick what each key does, and write what’s printed on it. Leave a name empty to go by what it does.',
	key: (n: number) => `Key ${n}`,
	keyName: (n: number) => `Printed on key ${n}`,
	jobs: {
		back: 'Goes back',
		down: 'Next item, lower value',
		up: 'Item before, higher value',
		set: 'Goes in and keeps',
		left: 'Turned left: item before, lower value',
		right: 'Turned right: next item, higher value',
		page: 'Next function',
	},
	addKey: 'Add a key',
	remove: 'Take away',
	removeKey: (n: number) => `Take away key ${n}`,
	menu: 'Menu',
	menuHint:
		'A line for each item, as you read it on the panel or in the manual. Set in what’s inside another. Values go after a colon: Signal loss: Hold, Blackout. A range: Address 1-512.',
	codeHint:
		'Write what the display shows, then = and what it is: CURV = Dimmer curve: LINR = linear, SQUA = square law.',
	switchesHint:
		'A line for each slide, with its positions: Signal loss: Hold, Blackout. With switch 10 up: 1-2 = Static colour: Red, Green, Blue, White.',
	example:
		'Address 1-512\nMode: 4 channels, 7 channels\nLight comes from: DMX, Static, Auto, Follower\nSetup\n    Signal loss: Hold, Blackout\n    Panel lock: Off, On',
	exampleCode:
		'STRT = Start address 1-512\nUSES = Mode: 4CH, 7CH\nSRCE = Light comes from: DATA = DMX, STAT = Static\nLOSS = Signal loss: HOLD, DARK = blackout',
	exampleFlat: 'N = Start address 1-512\nU = Mode: 4CH, 7CH\nK = Static colour 1-7\nP = Programme 1-6\nV = Speed 1-100',
	exampleSwitches:
		'Mode: 4 channels, 7 channels\nSignal loss: Hold, Blackout\n1-2 = Static colour: Red, Green, Blue, White',
	pick: 'Pick what it is',
	pickOf: (text: string) => `What is ‘${text}’?`,
	picked: (text: string, is: string) => `‘${text}’ is ${is} now.`,
	summary: (wrong: number, notes: number) =>
		`${counted(wrong, 'place', 'places')} to look at, ${counted(notes, 'note', 'notes')}`,
	marks: 'Look at these in the menu',
	none: 'All of it was read. Press the keys here, and see by the manual if it does what yours does.',
	live: 'Your panel, live',
	liveHint:
		'Press its keys here. Go by the manual, or try the real one only as said above. Where they differ, answer a question or change a line.',
	liveNone: 'Your panel shows here once there’s a menu to press.',
	standIn: 'Until your panel can be used, the stand-in is on the bench. The real one has other keys and menus.',
	ready:
		'On the bench, the prep slips and the card the panel is as you wrote it now. Check it against the manual, or on the real one as said above.',
} as const;

/** Questions on how a panel acts. */
export const panelQuestions = {
	heading: 'Does it do what yours does?',
	lead: 'Answer from the manual, or from the real one as said above. An open question stays in the list of what we assumed.',
	open: 'Don’t know',
	questions: {
		acts: {
			ask: 'Does the light change while you scroll through a value?',
			answers: { stored: 'No, once it’s kept', scrolling: 'Yes, at once' },
		},
		stores: {
			ask: 'You change a value and leave it. Is it kept by itself?',
			answers: { key: 'No', itself: 'Yes, after some seconds' },
		},
		held: {
			ask: 'What does holding the key that goes in do?',
			care: HOLDS,
			answers: { nothing: 'No more than a press', back: 'Goes back' },
		},
		rests: {
			ask: 'You leave it alone for a while. What does it show?',
			answers: { stays: 'Where you left it', address: 'Its start address', mode: 'Its mode' },
		},
		ends: {
			ask: 'At the last number, up or down, one more press: what comes?',
			answers: { stops: 'It stays there', round: 'It goes round to the other end' },
		},
		opens: { ask: 'Which key do you hold to open the lock?', care: HOLDS, answers: {} },
		start: {
			ask: 'Only switch 1 is up. Which start address is that?',
			answers: { sum: 'Address 1', 'sum-plus-one': 'Address 2' },
		},
	},
} as const;

/** The walk on the real fixture that settles what is open. */
export const panelSettle = {
	heading: 'Find out on the real one',
	lead: 'The fewest presses that answer the next open question, worked out on your panel. Do them on the real one.',
	begin: 'Work out the next check',
	working: 'Working it out.',
	care: CARE,
	stop: 'If it shows something else, stop and pick ‘Neither’.',
	start: (set: readonly string[]) =>
		set.length > 0 ? `See that it stands so: ${locale.list(set)}. ${OFF_AND_ON}` : OFF_AND_ON,
	tap: (key: string, times: number) => (times === 1 ? `Press ${key}.` : `Press ${key} ${times} times.`),
	hold: (key: string, seconds: number) => `Hold ${key} for ${counted(seconds, 'second', 'seconds')}, then let go.`,
	wait: (seconds: number) => `Leave it alone for ${counted(seconds, 'second', 'seconds')}.`,
	shows: (text: string) => (text === '' ? 'Its display is dark' : `It shows ${text}`),
	light: {
		dark: 'the light is out',
		held: (colour: string) => `the light is on: ${colour}`,
		programme: (name: string) => `the light runs: ${name}`,
	},
	both: (shows: string, light: string) => `${shows}, and ${light}`,
	/** What is seen, and what that answers. */
	seen: (sight: string, answers: readonly string[]) => `${sight} → ${answers.join(' / ')}`,
	see: 'What do you see?',
	neither: 'Neither',
	neitherSays:
		'Set it back as it was first. Then the question stays open. Check the lines of the menu: one may differ from the real one.',
	gone: 'That check is gone. Set the real one back as it was before.',
	settled: (answer: string) => `Answered: ${answer}. Now set it back as it was.`,
	slow: 'That took too long to work out. Look in the manual, or answer another question first.',
	noWorker: 'The part that works this out didn’t come. Check the network, load the page again, and try again.',
	broke: 'That couldn’t be worked out. Load the page again, and try again.',
	none: 'No few presses answer what is still open. Look in the manual.',
} as const;
