import type { Says } from '../rig/index.ts';

/** Words for one fault. Each may differ by the fault's detail, or by any other fact. */
export interface FaultWords {
	/** A few words, no full stop: the cause as a tech would say it. Where it sits is said beside it. */
	readonly name: Says;
	/** One or two sentences: what has happened, and what it does. */
	readonly cause: Says;
	/** What to write on the tape on that fixture or cable: at most 40 characters, no full stop. */
	readonly tape: Says;
}

const comesFrom = 'Its light should come from {meantWork as work}.';
const label = 'Address {meantAddress}, {footprint} {footprint?channel|channels}';
const labels: Says = [
	{ when: { meantWork: 'line' }, says: label },
	{ when: { meantWork: 'follow' }, says: 'Follower, {footprint} {footprint?channel|channels}' },
	{ when: { meantWork: 'held' }, says: 'Static: {meantHeld as held}' },
	{ says: 'Own: {meantProgramme as programme}' },
];
const fader = 'At the desk its fader “{fader}” is at {level as level}, in the band “{band}”.';
const faderTape = (which: string): Says => [
	{ when: { restFrom: null }, says: `${which} fader: keep it at rest` },
	{ says: `${which} fader: {restFrom} to {restTo}` },
];

/** Every fault of the catalogue, by id. */
export const faults: Readonly<Record<string, FaultWords>> = {
	// ---- power and battery
	'switched-off': {
		name: 'Switched off at its own switch',
		cause: 'Its own power switch is off, so it makes no light. The line still passes through it to the next fixture.',
		tape: 'Leave switched on',
	},
	'battery-flat': {
		name: 'Battery flat',
		cause: 'Its battery is empty. Without mains it can’t light.',
		tape: 'Battery flat: charge it first',
	},
	'battery-low': {
		name: 'Battery nearly empty',
		cause: 'Its battery is down to {charge as share}. It may light now, and it goes out before the night is over.',
		tape: 'Battery low: charge it first',
	},
	'battery-worn': {
		name: 'Battery worn out',
		cause:
			'Its battery charges full, and holds only {health as share} of what it did when new. It goes out long before it should.',
		tape: 'BAD: battery worn, runs short',
	},
	'charger-dead': {
		name: 'Won’t charge',
		cause: 'Its own charger is dead. Mains reaches it, and its battery doesn’t fill.',
		tape: 'BAD: won’t charge',
	},
	'fuse-blown': {
		name: 'Fuse blown',
		cause:
			'Its own fuse has blown, so mains doesn’t get in. A fuse goes for a reason: leave it shut, don’t fit another, and hand it to a competent repairer.',
		tape: 'BAD: don’t use, don’t open, no new fuse',
	},
	'supply-dead': {
		name: 'Power supply dead',
		cause: 'Mains reaches it, and its power supply makes nothing of it. Leave it shut: it’s for a competent repairer.',
		tape: 'BAD: power supply dead, don’t open',
	},
	'socket-dead': {
		name: 'Socket in the wall is dead',
		cause: 'Its plug is in, and there’s no power in that socket. Why isn’t known here.',
		tape: 'Socket dead: don’t use, ask electrician',
	},
	'lead-dead': {
		name: 'Mains lead is dead',
		cause: 'Both its ends are in, and no power comes through its mains lead. What hangs on its link goes out with it.',
		tape: 'BAD: mains lead, don’t use',
	},
	'breaker-off': {
		name: 'Breaker or RCD for part of the hall is off',
		cause: [
			{
				when: { detail: 'left' },
				says: 'A breaker or an RCD (in the US, a GFCI) may be off for the sockets on house left. Which sockets share one isn’t known here, so take every socket and lead as live.',
			},
			{
				says: 'A breaker or an RCD (in the US, a GFCI) may be off for the sockets on house right. Which sockets share one isn’t known here, so take every socket and lead as live.',
			},
		],
		tape: 'Supply tripped: ask the electrician',
	},
	'mains-unplugged': {
		name: 'Mains lead pulled out',
		cause: 'Its mains lead should be in {plug as feed} and is plugged into nothing.',
		tape: 'Mains lead: ask before you pull it',
	},
	'hall-power-off': {
		name: 'Hall’s mains off',
		cause: 'The mains in the hall’s sockets is off. Everything that runs on mains alone is dark, the desk with it.',
		tape: 'On hall mains: ask before switching off',
	},

	// ---- settings at a panel
	'wrong-mode': {
		name: 'Wrong mode',
		cause:
			'It’s in mode “{isMode as mode}” and should be in “{meantMode as mode}”. Its channels lie in another order, so levels land on the wrong things.',
		tape: labels,
	},
	'wrong-address': {
		name: [
			{ when: { detail: 'one-up' }, says: 'Start address one channel out' },
			{ when: { detail: 'default' }, says: 'Start address at its default' },
			{ says: 'Start address of another fixture' },
		],
		cause: [
			{
				when: { detail: 'neighbour' },
				says: 'It’s set to start address {isAddress}, where another fixture starts, and should be at {meantAddress}. It reads the channels of that one.',
			},
			{
				says: 'It’s set to start address {isAddress} and should be at {meantAddress}. It reads channels that aren’t its own.',
			},
		],
		tape: labels,
	},
	'left-on-held': {
		name: 'Left on its own static colour',
		cause: `It’s set to its own static colour, {isHeld as held}, and takes no light from the line. ${comesFrom}`,
		tape: labels,
	},
	'left-on-programme': {
		name: 'Left on its own programme',
		cause: `It’s set to its own programme “{isProgramme as programme}” and takes no light from the line. ${comesFrom}`,
		tape: labels,
	},
	'left-on-sound': {
		name: 'Left in sound mode',
		cause: `It’s set to its own programme “{isProgramme as programme}”, and in a silent room that stays still or dark. ${comesFrom}`,
		tape: labels,
	},
	'follower-under-desk': {
		name: 'Set to follow, under a desk',
		cause: [
			{
				when: { follows: 'slot-one' },
				says: 'It’s set to follow a leader, and a desk drives this line. It reads from channel 1 on, whatever its start address.',
			},
			{ says: `It’s set to follow a leader, and a desk drives this line. ${comesFrom}` },
		],
		tape: labels,
	},
	'follower-on-line': {
		name: 'Set to the line instead of following',
		cause:
			'It reads the line from start address {isAddress} on. It should follow its leader, who sends from channel 1.',
		tape: labels,
	},
	'leader-not-leading': {
		name: 'Leader doesn’t lead',
		cause: 'It isn’t set to lead, so it sends nothing down the line and its followers get no data.',
		tape: 'Leader: leave lead on',
	},
	'second-leader': {
		name: 'A second leader on the line',
		cause: 'It’s set to lead, and another fixture leads this line already. Two sources at once spoil every frame.',
		tape: labels,
	},
	'leader-under-desk': {
		name: 'Left leading, under a desk',
		cause:
			'It’s set to lead, while a desk sends down the same line. Two sources at once spoil every frame, and it runs its own programme “{isProgramme as programme}”.',
		tape: labels,
	},
	'limit-low': {
		name: 'Highest output set low',
		cause:
			'Its highest output is set to {isLimit as percent} and should be {meantLimit as percent}. All that it shows comes down with it.',
		tape: 'Highest output: {meantLimit as percent}',
	},
	'level-down': {
		name: 'Own brightness at {isLevel as percent}',
		cause: [
			{
				when: { isLevel: 0 },
				says: 'Its own brightness is set to {isLevel as percent} and should be {meantLevel as percent}. No light gets out.',
			},
			{ says: 'Its own brightness is set to {isLevel as percent} and should be {meantLevel as percent}.' },
		],
		tape: 'Brightness: {meantLevel as percent}',
	},
	'strobe-left-on': {
		name: 'Its own strobe left on',
		cause: 'It’s set to flash its static colour {isStrobe as strobe}, and it should be {meantStrobe as strobe}.',
		tape: 'Static: {meantHeld as held}, {meantStrobe as strobe}',
	},
	'strobe-programme': {
		name: 'Left on its strobe programme',
		cause: `It’s set to its own programme “{isProgramme as programme}”, at speed {isSpeed} of 100. ${comesFrom}`,
		tape: labels,
	},
	'wrong-held': {
		name: 'Another static colour',
		cause: 'It’s set to the static colour {isHeld as held} and should be at {meantHeld as held}.',
		tape: labels,
	},
	'curve-wrong': {
		name: 'Another dimmer curve',
		cause:
			'Its dimmer curve is {isCurve as curve} and should be {meantCurve as curve}. On the one it has, {isCurve as bends}.',
		tape: 'Dimmer curve: {meantCurve as curve}',
	},
	'loss-set-wrong': {
		name: 'Signal loss set wrong',
		cause:
			'On signal loss it’s set to {isLoss as loss}, and it should {meantLoss as loss}. With good data nobody sees it.',
		tape: 'Signal loss: {meantLoss as loss}',
	},
	'hearing-nothing': {
		name: 'Microphone turned right down',
		cause: 'Its microphone is set to {isHearing as percent}, so a programme that waits for sound hears nothing.',
		tape: 'Microphone: {meantHearing as percent}',
	},
	'back-at-defaults': {
		name: 'Settings back at their defaults',
		cause:
			'All its settings are back at their defaults: start address {isAddress}, mode “{isMode as mode}”, light from {isWork as work}.',
		tape: labels,
	},
	'one-switch-wrong': {
		name: [
			{ when: { isUp: true }, says: 'Switch {detail} up, and should be down' },
			{ says: 'Switch {detail} down, and should be up' },
		],
		cause: [
			{
				when: { isUp: true },
				says: 'Switch {detail} is up. That makes the start address {isAddress}, and it should be {meantAddress}.',
			},
			{
				when: { noneUp: true },
				says: 'All nine address switches are down: here that is start address {isAddress}, and another maker’s reads it otherwise. It should be {meantAddress}, with switch {detail} up.',
			},
			{ says: 'Switch {detail} is down. That makes the start address {isAddress}, and it should be {meantAddress}.' },
		],
		tape: labels,
	},
	'function-switch-wrong': {
		name: 'Switch {detail} is the wrong way',
		cause:
			'Its switch {detail} is the wrong way, so it does something else. Its light should come from {meantWork as work}.',
		tape: labels,
	},
	'tenth-switch-down': {
		name: 'Switch 10 is down',
		cause:
			'Its switch 10 is down, so it takes its light from the line. Its light should come from {meantWork as work}.',
		tape: 'Switch 10 up',
	},
	'tenth-switch-up': {
		name: 'Switch 10 left up',
		cause:
			'Switch 10 is up, so the other nine no longer make a start address. Its light comes from {isWork as work}, and should come from {meantWork as work}.',
		tape: 'Switch 10 down. Address {meantAddress}',
	},
	'slide-wrong': {
		name: 'Slide “{slide}” in the wrong place',
		cause:
			'Slide “{slide}” is at {isPosition} and should be at {meantPosition}. That’s mode “{isMode as mode}”, so levels land on the wrong things.',
		tape: labels,
	},

	// ---- between the remote and the lamp
	'sensor-shut': {
		name: 'Remote sensor set shut',
		cause: 'Its remote sensor is set shut, so no press of the remote reaches it.',
		tape: 'Remote sensor: open',
	},
	'sensor-left-open': {
		name: 'Remote sensor left open',
		cause: 'Its remote sensor is set open and should be shut, so a press meant for others reaches it too.',
		tape: 'Remote sensor: shut',
	},
	'sensor-covered': {
		name: 'Remote sensor covered or blinded',
		cause: 'Tape, dirt or strong light on the window of its sensor keeps the remote out, however close it is held.',
		tape: 'Keep the sensor window clear',
	},
	'out-of-sight': {
		name: 'Out of the remote’s sight',
		cause: 'Something stands between its sensor and the remote, so no press reaches it.',
		tape: 'Keep the sensor in sight',
	},
	'remote-battery-flat': {
		name: 'Remote’s battery flat',
		cause: 'The battery of the remote is flat, so it sends nothing to any fixture.',
		tape: 'Remote: carry a spare battery',
	},
	'remote-other-code': {
		name: 'Remote on another code',
		cause: 'The remote sends code {isSent} and should send code {code}. Fixtures set to code {code} ignore it.',
		tape: 'Remote: code {code}',
	},
	'fixture-other-code': {
		name: 'On another remote code',
		cause: 'It listens to remote code {isCode} and should listen to code {meantCode}, so it ignores this remote.',
		tape: 'Remote code {meantCode}',
	},
	'sensor-dead': {
		name: 'Remote sensor dead',
		cause: 'Its remote sensor is dead. All else in it works, from its panel and from the line.',
		tape: 'BAD: remote sensor dead',
	},

	// ---- cables, sockets, terminators
	'cable-out': {
		name: 'Plug out of {loose as port}',
		cause: 'One of its plugs is out: the one that belongs in {loose as port}. Nothing gets past it.',
		tape: 'Both plugs: push until they latch',
	},
	'cable-dead': {
		name: 'Both data wires broken',
		cause: 'Both data wires are broken somewhere along it, so nothing gets past.',
		tape: 'BAD CABLE: both data wires broken',
	},
	'minus-open': {
		name: 'Data minus broken',
		cause:
			'Its data minus wire is broken, so the signal is half there. Fixtures beyond may jump about, or get nothing.',
		tape: 'BAD CABLE: data minus broken',
	},
	'plus-open': {
		name: 'Data plus broken',
		cause: 'Its data plus wire is broken, so the signal is half there. Fixtures beyond may jump about, or get nothing.',
		tape: 'BAD CABLE: data plus broken',
	},
	'common-open': {
		name: 'Common broken',
		cause:
			'Its common wire is broken. Fixtures beyond may jump about, where mains earth (ground in the US) doesn’t join the two ends in its place.',
		tape: 'BAD CABLE: common broken',
	},
	'wires-swapped': {
		name: 'Data wires swapped',
		cause: 'Its two data wires change places along it, so the signal arrives the wrong way round.',
		tape: 'BAD CABLE: data wires swapped',
	},
	'microphone-cable': {
		name: 'Microphone cable in the line',
		cause: 'It’s a microphone cable, which isn’t made for this signal. Frames may arrive damaged.',
		tape: 'MICROPHONE CABLE: not for data',
	},
	'cable-too-long': {
		name: 'Cable far too long',
		cause:
			'It is {isLength as metres} long and should be about {length as metres}. So much cable wears the signal down.',
		tape: '{isLength as metres}: too long for here',
	},
	'terminator-missing': {
		name: 'No terminator',
		cause: 'There’s no terminator in {place as port}, so the signal echoes back from the open end.',
		tape: 'End of line: terminator here',
	},
	'universes-exchanged': {
		name: 'Two universes exchanged',
		cause: 'At the desk two cables are in each other’s outputs. It should be {plugs as list}.',
		tape: 'Check the output before you plug in',
	},
	'bad-socket-in': {
		name: 'Bad data in socket',
		cause: 'The contact in its data in socket is bad: nothing passes between that socket and its plug.',
		tape: 'BAD: data in socket',
	},
	'bad-socket-out': {
		name: 'Bad data out socket',
		cause: 'The contact in its data out socket is bad: nothing passes between that socket and its plug.',
		tape: 'BAD: data out socket',
	},
	'too-many-loads': {
		name: 'Line input loads the line too much',
		cause:
			'Its line input has gone bad and weighs on the line like {loads} more fixtures. With the others that is too many loads, and everybody on the line may jump about.',
		tape: 'BAD: line input drags the line down',
	},
	'splitter-off': {
		name: 'Splitter has no power',
		cause: 'The splitter has no power, so nothing goes on from it.',
		tape: 'Keep it plugged in and on',
	},
	'splitter-output-dead': {
		name: 'Output {detail} of the splitter is dead',
		cause: 'The splitter has power, and its output {detail} sends nothing on. Its others may work.',
		tape: 'BAD: output {detail} dead',
	},
	'second-source': {
		name: 'Two sources on one line',
		cause: 'A second output of the desk is joined to this line. The two talk at once, so no fixture can read it.',
		tape: 'One source on this line',
	},
	'split-without-splitter': {
		name: 'Line split with no splitter',
		cause:
			'It starts from {isFrom as port}, beside another plug, by a Y lead. A line must not branch without a splitter: the branches echo.',
		tape: 'No Y leads on a data line',
	},

	// ---- the desk
	'output-off': {
		name: 'Desk output off',
		cause: '{place as output} is switched off, so nothing is sent down its line.',
		tape: 'Output: leave on',
	},
	'master-down': {
		name: [{ when: { detail: 'out' }, says: 'Master at 0' }, { says: 'Master low' }],
		cause: 'The desk’s master is at {isMaster as level} and holds down all that the desk asks for.',
		tape: 'Master: {master as level}',
	},
	'wrong-universe': {
		name: 'Output on another universe',
		cause:
			'{place as output} sends universe {isUniverse} and should send {universe}. Its line gets the levels of others, or none.',
		tape: 'Universe {universe}',
	},
	'patched-elsewhere': {
		name: 'Patched at another start address',
		cause:
			'The desk has it at start address {isPatchAddress} and should have it at {patchAddress}. Its faders raise channels that aren’t its own.',
		tape: 'Address {patchAddress}, universe {patchUniverse}',
	},
	'patched-other-mode': {
		name: 'Patched in another mode',
		cause:
			'The desk takes it to be in mode “{isPatchMode as mode}”. It’s in “{patchMode as mode}”, so faders do the wrong things.',
		tape: label,
	},
	'desk-blind': {
		name: 'Desk left in blind',
		cause: 'The desk is in blind, so what you move on it isn’t sent. It goes on sending what stood before.',
		tape: 'Desk: leave blind after you look',
	},
	'desk-frozen': {
		name: 'Desk frozen',
		cause: 'The desk sends the same thing on and on, whatever you move on it.',
		tape: 'BAD: desk froze, have it looked at',
	},
	'start-code-wrong': {
		name: 'Output sends another start code',
		cause: 'The output is set to send something other than levels. Fixtures must pass over such data.',
		tape: 'Output: send levels, start code 0',
	},
	'patched-other-universe': {
		name: 'Patched in another universe',
		cause:
			'The desk has it in universe {isPatchUniverse} and should have it in {patchUniverse}. Its faders go down another line.',
		tape: 'Address {patchAddress}, universe {patchUniverse}',
	},
	'levels-down': {
		name: 'Its faders are down',
		cause: 'At the desk {faders as list} {faders?is|are} at 0, so no light is asked for.',
		tape: 'Nothing wrong: faders were down',
	},
	'wrong-colour-slots': {
		name: 'Wrong colour faders raised',
		cause: 'At the desk the levels of its colour faders each stand one fader away from where they belong.',
		tape: 'Nothing wrong: wrong faders were up',
	},
	'function-left-up': {
		name: 'Function fader left up',
		cause: `${fader} That starts a programme of the fixture’s own.`,
		tape: faderTape('Function'),
	},
	'strobe-left-up': {
		name: 'Strobe fader left up',
		cause: `${fader} That makes it flash.`,
		tape: faderTape('Strobe'),
	},
	'shutter-closed': {
		name: 'Shutter closed at the desk',
		cause: `${fader} That shuts the light off.`,
		tape: faderTape('Shutter'),
	},

	// ---- the fixture itself, and its light on the way out
	'emitter-dead': {
		name: '{detail as emitter} emitter dead',
		cause: 'Its {detail as emitter} emitter doesn’t light. Colours that need it come out wrong, or not at all.',
		tape: 'BAD: {detail as emitter} emitter dead',
	},
	'receiver-dead': {
		name: 'Line receiver dead',
		cause: 'Its line receiver is dead: it passes the line on and hears nothing itself.',
		tape: 'BAD: line receiver dead',
	},
	'folded-back': {
		name: 'Too hot, holding back',
		cause: 'It’s too hot, and holds its light back to {foldBack as share} to save itself.',
		tape: 'Ran hot: give it air',
	},
	'display-dead': {
		name: 'Display dead',
		cause: 'Its display is dead. It lights and obeys as before, and nothing can be read off it.',
		tape: 'BAD: display dead',
	},
	'microphone-dead': {
		name: 'Microphone dead',
		cause: 'Its microphone is dead, so a programme that waits for sound hears nothing.',
		tape: 'BAD: microphone dead',
	},
	'lens-covered': {
		name: 'Something over the lens',
		cause: 'Something covers its lens, so no light gets out, and what covers it gets hot.',
		tape: 'Keep the lens clear',
	},
	'ultraviolet-alone': {
		name: 'Ultraviolet alone',
		cause: 'At the desk only its ultraviolet fader is up. It’s lit, though an eye barely sees it.',
		tape: 'ULTRAVIOLET: do not look in',
	},
};

/** The suspect that stands for all that the finder does not know. */
export const unknown = {
	name: 'Something this finder doesn’t know',
	cause: 'A fault that isn’t among those it knows.',
	tape: 'Fault not found: have it tested',
} as const;
