import type { Says } from '../rig/index.ts';
import type { CheckSpot } from './spots.ts';

/** Words for one kind of check. */
export interface CheckWords {
	/** A few words, with what it is about. No full stop. */
	readonly title: Says;
	/** One sentence or more, each to be done: where to look, what to do, how to put it back. */
	readonly does: Says;
	/** What would be seen, for a large button, by outcome. No full stop. */
	readonly outcomes: Readonly<Record<string, Says>>;
	/** Where to look or to put a hand. */
	readonly spot: CheckSpot;
}

const DATA = { steady: 'Steady', flickering: 'Flickering', blinking: 'Blinking slowly', out: 'Out' } as const;
const CHARGE =
	'Not if it’s hot, swollen, wet, fresh from the cold (never below 0 °C, 32 °F) or was dropped. Plug in its approved charger, switch the fixture off and look at its battery indicator. Then put it back as it was.';
const NO_DISPLAY = 'The display stays dark';
const watch = 'Look at the wall it lights, never into the lens';
/** A panel that acts as it is stepped would show it to everybody. */
const reading = 'In a show ask first: some panels act as you step.';
const faders = 'take its faders to full, then to 0, with functions at rest';

/** Reading one setting off a panel. */
const panel: CheckWords = {
	title: '{setting}: {place as name}',
	does: [
		{
			when: { panel: 'code' },
			says: `${reading} [If it says it’s locked, hold Set for {unlock as time}. ]On its display go to {menu}. Press Set to see the value, then Back to leave it as it was.`,
		},
		{
			says: `${reading} [If it says it’s locked, hold Set for {unlock as time}. ]On its display go to {menu} and read the line below. Change nothing.`,
		},
	],
	outcomes: {
		'as-meant': 'It reads {shown}[ ({gloss})]',
		other: 'It reads something else',
		'no-display': NO_DISPLAY,
	},
	spot: 'display',
};

/** Every kind of check but those that try a mend. */
export const checks: Readonly<Record<string, CheckWords>> = {
	// ---- the light, from the floor
	lit: {
		title: 'Is {place as name} lit?',
		does: `${watch}.`,
		outcomes: { lit: 'There’s light', dark: 'No light that I can see' },
		spot: 'wall',
	},
	ultraviolet: {
		title: 'Ultraviolet from {place as name}',
		does: 'Keep out of the beam. See if white cloth or paper glows where it points.',
		outcomes: { on: 'White things glow', off: 'Nothing glows' },
		spot: 'wall',
	},
	colour: {
		title: 'Colour of {place as name}',
		does: `${watch}. Judge the colour alone, not how bright it is.`,
		outcomes: {
			dark: 'No light',
			'as-meant': [{ when: { colour: null }, says: 'As it should be' }, { says: '{colour}, as it should be' }],
			other: 'Another colour',
		},
		spot: 'wall',
	},
	brightness: {
		title: 'How bright is {place as name}?',
		does: `${watch}. Compare it with a like fixture, or with what the look asks for.`,
		outcomes: {
			dark: 'No light',
			dimmer: 'Clearly dimmer than it should be',
			'as-meant': 'As bright as it should be',
			brighter: 'Brighter than it should be',
		},
		spot: 'wall',
	},
	flashing: {
		title: 'Does {place as name} flash?',
		does: 'Look at the wall it lights for a few seconds, and away again if it flashes.',
		outcomes: { flashing: 'It flashes', steady: 'No flashes' },
		spot: 'wall',
	},
	moving: {
		title: 'Does {place as name} change by itself?',
		does: 'Have nobody touch desk, panel or remote. Watch the wall it lights for a while.',
		outcomes: { moving: 'It goes through colours or levels', still: 'It stays as it is' },
		spot: 'wall',
	},
	jumping: {
		title: 'Does {place as name} jump about?',
		does: 'Watch the wall it lights for light that twitches at random, in no beat.',
		outcomes: { jumping: 'It jumps at random', calm: 'It’s calm' },
		spot: 'wall',
	},

	// ---- the back of a fixture
	'power-lamp': {
		title: 'Power indicator: {place as name}',
		does: 'Look at the power indicator on its back.',
		outcomes: { lit: 'Lit', out: 'Out' },
		spot: 'power-lamp',
	},
	'data-lamp': {
		title: 'Data indicator: {place as name}',
		does: 'Look at the data indicator on its back for some seconds.',
		outcomes: DATA,
		spot: 'data-lamp',
	},
	'battery-lamp': {
		title: 'Battery indicator: {place as name}',
		does: 'Count the bars of its battery indicator.',
		outcomes: { empty: 'No bar', low: 'One bar', good: 'Two bars or more', charging: 'It says that it charges' },
		spot: 'battery-lamp',
	},
	'sensor-lamp': {
		title: 'Sensor indicator: {place as name}',
		does: 'Look at the indicator beside its remote sensor.',
		outcomes: { lit: 'Lit', out: 'Out' },
		spot: 'sensor-lamp',
	},
	display: {
		title: 'Display: {place as name}',
		does: 'Look at its display. If it’s dark, press Back once to wake it. In a show ask first: on some, that press acts.',
		outcomes: { readable: 'It can be read', locked: 'It says that it’s locked', dark: 'It stays dark' },
		spot: 'display',
	},
	'power-switch': {
		title: 'Power switch: {place as name}',
		does: 'See which way its own power switch is set, and leave it like that.',
		outcomes: { on: 'On', off: 'Off' },
		spot: 'power-switch',
	},
	'mains-plug': {
		title: 'Mains lead: {place as name}',
		does: 'Follow its mains lead by eye to the other plug. Push and pull nothing, and touch nothing that is damaged or wet.',
		outcomes: { in: 'Plugged into {plug as feed}', out: 'Plugged into nothing' },
		spot: 'mains',
	},
	'socket-in': {
		title: 'Data in socket: {place as name}',
		does: 'See if a plug is in its data in socket, pushed home.[ {cableIn as cable} belongs there.]',
		outcomes: { plugged: 'A plug is in it', empty: 'It’s empty' },
		spot: 'socket-in',
	},
	'socket-out': {
		title: 'Data out socket: {place as name}',
		does: 'See if a plug is in its data out socket, pushed home.[ {cableOut as cable} belongs there.]',
		outcomes: { plugged: 'A plug is in it', empty: 'It’s empty' },
		spot: 'socket-out',
	},
	terminator: {
		title: 'Terminator: {place as name}',
		does: 'See if a terminator is in its data out socket.',
		outcomes: { in: 'A terminator is in it', missing: 'There’s none' },
		spot: 'socket-out',
	},
	lens: {
		title: 'Lens: {place as name}',
		does: 'Look from the side, never into it, whether something covers the lens.',
		outcomes: { covered: 'Something covers it', clear: 'It’s clear' },
		spot: 'lens',
	},
	heat: {
		title: 'Is {place as name} too hot?',
		does: 'Hold the back of a hand near its housing without touching it. Compare it with a like fixture.',
		outcomes: { hot: 'Far hotter than usual', warm: 'Warm, as usual' },
		spot: 'lens',
	},
	switches: {
		title: 'Ten switches: {place as name}',
		does: 'Read the ten switches from 1 to 10. Up is on.',
		outcomes: {
			'as-meant': [{ when: { allDown: true }, says: 'All ten down' }, { says: '{up as numbers} up, the others down' }],
			other: 'At least one is otherwise',
		},
		spot: 'switches',
	},
	slides: {
		title: 'Slides: {place as name}',
		does: 'Read where each of its small slides stands.',
		outcomes: { 'as-meant': '{slides as list}', other: 'At least one stands elsewhere' },
		spot: 'slides',
	},
	'sensor-window': {
		title: 'Sensor window of {place as name}',
		does: 'Look at the window of its remote sensor. See if tape, dirt or strong light is on it.',
		outcomes: { clear: 'It’s clear', covered: 'Something’s on it' },
		spot: 'sensor-lamp',
	},
	'socket-live': {
		title: 'Is there power in the socket of {place as name}?',
		does: 'Is the socket or the plug wet, scorched, cracked or warm? Leave it, and tell the electrician. If not, hands dry, and all hands off the rest of the row: take the fixture’s plug out of the wall. Put in a known-good work light whose lead and plug are undamaged. Then put the fixture’s plug back last, with nobody’s hands on the leads.',
		outcomes: { live: 'The work light comes on', dead: 'It stays dark' },
		spot: 'wall',
	},
	'sight-line': {
		title: 'View to {place as name}',
		does: 'Stand where you use the remote, and look for its sensor.',
		outcomes: { clear: 'I can see the sensor', blocked: 'Something is in the way' },
		spot: 'sensor-lamp',
	},

	// ---- its panel
	'panel-address': panel,
	'panel-mode': panel,
	'panel-work': panel,
	'panel-lead': panel,
	'panel-held': panel,
	'panel-level': panel,
	'panel-strobe': panel,
	'panel-programme': panel,
	'panel-limit': panel,
	'panel-curve': panel,
	'panel-loss': panel,
	'panel-sensor': panel,
	'panel-code': panel,
	'panel-hearing': panel,

	// ---- tries on a fixture
	'desk-strips': {
		title: 'Faders of {place as name}',
		does: `At the desk, ${faders}. Say aloud that light is coming, and watch the wall it lights, never the lens. Then put its faders back.`,
		outcomes: { answers: 'It answers', still: 'Nothing changes' },
		spot: 'desk-screen',
	},
	'desk-colours': {
		title: 'Colour by colour: {place as name}',
		does: 'Say aloud that light is coming, and watch the wall it lights, never the lens. At the desk, with intensity up and functions at rest, raise its colour faders one at a time. Then put them back.',
		outcomes: {
			all: 'Each brings its own colour',
			missing: 'One or more bring nothing',
			other: 'A wrong colour, or it moves by itself',
			none: 'None brings any light',
		},
		spot: 'desk-screen',
	},
	'desk-restart': {
		title: 'Desk silent: {place as name}',
		does: 'Switch the desk’s outputs off for three seconds and watch the wall it lights. Then switch them on again.',
		outcomes: {
			'as-meant': [
				{ when: { loss: 'dark' }, says: 'It’s dark meanwhile' },
				{ when: { loss: 'programme' }, says: 'It runs its own programme' },
				{ says: 'It keeps its look' },
			],
			other: 'It does something else',
		},
		spot: 'desk-output',
	},
	'held-at-panel': {
		title: 'Its own light: {place as name}',
		does: 'At its panel, set its own static colour {own as held}, full brightness, no flashes. Say aloud that light is coming. Look at the wall, never the lens, then set all back as it was.',
		outcomes: { lights: 'It lights', dark: 'It stays dark', 'no-display': NO_DISPLAY },
		spot: 'keys',
	},
	'power-cycle': {
		title: 'Off and on again: {place as name}',
		does: 'Switch it off at its own power switch. Wait three seconds, switch it on, and look.',
		outcomes: { same: 'As before', other: 'It looks different now', dark: 'It stays dark' },
		spot: 'power-switch',
	},
	'remote-close': {
		title: 'Remote held close: {place as name}',
		does: 'Go as close to its sensor as you safely can, with nothing between. Press a colour it doesn’t show, then set it back.',
		outcomes: { answers: 'It answers', still: 'Nothing changes' },
		spot: 'remote',
	},
	clap: {
		title: 'A clap: {place as name}',
		does: 'Clap loudly beside it, and look at the wall it lights.',
		outcomes: { answers: 'It answers', still: 'Nothing changes' },
		spot: 'wall',
	},
	charger: {
		title: 'On its charger: {place as name}',
		does: [
			{ when: { plug: 'none' }, says: CHARGE },
			{ when: { plug: 'wall' }, says: `Pull its plug at the wall before you touch the inlet. ${CHARGE}` },
			{
				says: `Its lead is in a link, so isolate first: the plug of its row comes out at the wall, and goes in last. ${CHARGE}`,
			},
		],
		outcomes: { charges: 'It says that it charges', not: 'It doesn’t' },
		spot: 'battery-lamp',
	},
	'row-right': {
		title: 'Are the others in the row right?',
		does: 'Stand where you see the row of {place as name}. Look along the walls the others light, never into a lens: lit or not, colour, how bright, and if any moves or jumps. Go by the line: data comes to one light first, and on to the next.',
		outcomes: {
			all: 'All the others are right',
			none: 'Not one of them is right',
			beyond: 'Right before it, wrong after it',
			some: 'Any other mix',
		},
		spot: 'row',
	},
	'neighbour-strips': {
		title: 'Does {place as name} answer faders of {other as name}?',
		does: 'Say aloud that light is coming, and watch the wall that {place as name} lights. At the desk, take the faders of {other as name} to full, then to 0, with functions at rest. Put them back.',
		outcomes: { answers: 'It answers them', still: 'It ignores them' },
		spot: 'desk-screen',
	},
	'leader-change': {
		title: 'Does {place as name} follow {other as name}?',
		does: 'At the panel of {other as name}, set another static colour of one emitter, at full brightness. Say aloud that light is coming. Watch the wall, never the lens, then set it back.',
		outcomes: {
			follows: 'It takes the same colour',
			differs: 'It changes, but not to that',
			still: 'It stays lit as it was',
			dark: 'It stays dark',
		},
		spot: 'keys',
	},

	// ---- the line
	'cable-ends': {
		title: 'Both plugs: {place as cable}',
		does: 'Look at both plugs of {place as cableEnds}.',
		outcomes: {
			'both-in': 'Both are in',
			'near-out': 'The one[ for {from as port}] is out',
			'far-out': 'The one[ for {to as port}] is out',
		},
		spot: 'cable',
	},
	'cable-kind': {
		title: 'Kind of cable: {place as cable}',
		does: 'Find {place as cableEnds}. Read what is printed along it, or hold it beside a cable you know.',
		outcomes: { data: 'Data cable', microphone: 'Microphone cable' },
		spot: 'cable',
	},
	'cable-length': {
		title: 'Length: {place as cable}',
		does: 'Find {place as cableEnds}. Pace it out, coils and drum too.',
		outcomes: { 'as-meant': 'About {length as metres}', longer: 'More than twice {length as metres}' },
		spot: 'cable',
	},
	'cable-place': {
		title: 'Where {place as cable} goes',
		does: 'Follow {place as cable} by hand, from one plug to the other.',
		outcomes: {
			'as-meant': 'From {from as port} to {to as port}',
			loose: 'One of its plugs is in nothing',
			elsewhere: 'It goes somewhere else',
		},
		spot: 'cable',
	},
	'line-ended': {
		title: 'End the line at {place as name}',
		does: [
			{
				when: { cableOut: null },
				says: 'See that there’s a terminator in its data out socket and nothing else. Look at its data indicator.',
			},
			{
				says: 'Unplug {cableOut as cable} from its data out socket and fit a terminator there. Look at its data indicator, then put the cable back.',
			},
		],
		outcomes: DATA,
		spot: 'socket-out',
	},
	'line-straight': {
		title: 'A good cable straight to {place as name}',
		does: 'Run a known-good data cable from {source as port} to its data in socket, and put a terminator in its data out. Look, then put all back.',
		outcomes: {
			dark: 'No light',
			steady: 'Lit, data indicator steady',
			flickering: 'Lit, data indicator flickering',
			blinking: 'Lit, data indicator blinking slowly',
			out: 'Lit, data indicator out',
		},
		spot: 'socket-in',
	},

	// ---- the desk
	'desk-output': {
		title: 'Is {place as output} on?',
		does: 'See on the desk’s screen if {place as output} sends.',
		outcomes: { on: 'It sends', off: 'It doesn’t, or the desk is dark' },
		spot: 'desk-output',
	},
	'desk-universe': {
		title: 'Universe of {place as output}',
		does: 'See on the desk’s screen which universe {place as output} sends.',
		outcomes: { 'as-meant': 'Universe {universe}', other: 'Another universe' },
		spot: 'desk-output',
	},
	'desk-master': {
		title: 'The desk’s master',
		does: 'See where the desk’s master is.',
		outcomes: { up: 'Up, or nearly', low: 'Well down', out: 'At 0 (0 %)' },
		spot: 'desk-screen',
	},
	'desk-live': {
		title: 'Does the desk send what you move?',
		does: 'See on the desk’s screen if it says blind or preview. If not, ask the operator to move a fader that’s patched to nothing, and see if its number moves.',
		outcomes: { live: 'It follows, and no blind', blind: 'It’s in blind or preview', frozen: 'It’s stuck' },
		spot: 'desk-screen',
	},
	'desk-sends': {
		title: 'What {place as output} sends',
		does: 'See in the setup of the desk’s outputs what {place as output} sends.',
		outcomes: { 'as-meant': 'Levels, start code 0', other: 'Something else, such as text' },
		spot: 'desk-output',
	},
	'desk-patch': {
		title: 'Patch of {place as name}',
		does: 'See on the desk’s screen where it’s patched, and in which mode.',
		outcomes: {
			'as-meant': 'Universe {patchUniverse}, start address {patchAddress}, mode “{patchMode as mode}”',
			other: 'At least one of these differs',
		},
		spot: 'desk-screen',
	},
	'desk-intensity': {
		title: 'Intensity fader of {place as name}',
		does: 'Read its intensity on the desk’s screen.',
		outcomes: { 'as-meant': '{intensity as list}', other: 'Another level' },
		spot: 'desk-screen',
	},
	'desk-functions': {
		title: 'Function faders of {place as name}',
		does: 'Read its function, shutter and speed faders on the desk’s screen, as many as it has.',
		outcomes: { 'as-meant': '{functions as list}', other: 'At least one stands elsewhere' },
		spot: 'desk-screen',
	},
	'desk-colour-strips': {
		title: 'Colour faders of {place as name}',
		does: 'Read its colour faders on the desk’s screen.',
		outcomes: {
			'as-meant': [
				{ when: { colours: null }, says: 'All at 0 (0 %)' },
				{ says: '{colours as list}[, {otherColours} at 0]' },
			],
			other: 'At least one stands elsewhere',
		},
		spot: 'desk-screen',
	},

	// ---- hall and remote
	'hall-power': {
		title: 'The hall’s mains',
		does: 'See if anything else that’s plugged into the hall’s sockets has power.',
		outcomes: { on: 'It has power', off: 'All of it is dark' },
		spot: 'hall',
	},
	breakers: {
		title: 'A breaker or RCD off?',
		does: 'Ask whoever looks after the building if a breaker or an RCD (in the US, a GFCI) is off. They look, not you: don’t open the board, and don’t reset anything.',
		outcomes: { on: 'All are on', off: 'One is off' },
		spot: 'hall',
	},
	'box-lamp': {
		title: 'Power indicator of {place as device}',
		does: 'Look at its power indicator.',
		outcomes: { lit: 'Lit', out: 'Out' },
		spot: 'power-lamp',
	},
	'remote-lamp': {
		title: 'Indicator on the remote',
		does: 'Cover the window of the remote with a hand, press a button and look at its indicator.',
		outcomes: { blinks: 'It blinks', dead: 'It stays dark' },
		spot: 'remote',
	},
	'remote-code': {
		title: 'Code of the remote',
		does: 'See which code the remote is set to.',
		outcomes: { 'as-meant': 'Code {code}', other: 'Another code' },
		spot: 'remote',
	},
};

/** A mend, tried: its own words, and these. */
export const mendTried = {
	does: '{does} Then check if that cleared it.',
	outcomes: { cleared: 'That cleared it', still: 'It’s as wrong as before' },
} as const;
