import type { Says } from '../rig/index.ts';

/** The next step, as something to do, for each kind of event a drill leaves to a hand; the facts are those of the log's own line. */
export const hints = {
	'clock.wait': 'Wait {ms as time}.',
	'key.tap': 'Press {key as key} on {fixture as name}.',
	'key.down': 'Hold {key as key} on {fixture as name}.',
	'key.up': 'Let go of {key as key} on {fixture as name}.',
	'switch.flip': [
		{ when: { up: true }, says: 'Flip switch {switch} up on {fixture as name}.' },
		{ says: 'Flip switch {switch} down on {fixture as name}.' },
	],
	'slide.move': 'Move the slide “{slide}” to “{label}” on {fixture as name}.',
	'power.switch': [
		{ when: { on: true }, says: 'Switch {fixture as name} on.' },
		{ says: 'Switch {fixture as name} off.' },
	],
	'mains.plug': [
		{
			when: { into: 'none', was: 'wall' },
			says: 'Isolate first: pull the mains lead of {fixture as name} out of the wall.',
		},
		{ when: { into: 'none' }, says: 'With the supply still off, unplug the mains lead of {fixture as name}.' },
		{
			when: { into: 'wall', feeds: true },
			says: 'With all links made, plug the mains lead of {fixture as name} into the wall, last of all.',
		},
		{ when: { into: 'wall' }, says: 'Plug the mains lead of {fixture as name} into the wall.' },
		{ says: 'With the supply off, plug the mains lead of {fixture as name} into {into as feed}.' },
	],
	'cable.lay': [
		{
			when: { isWhole: true },
			says: 'Run a data cable, {length as metres} long, from {from as port} to {to as port}.',
		},
		{ says: 'Run a data cable, {length as metres} long.' },
	],
	'cable.lift': 'Take {cable as cable} away.',
	'cable.plug': 'Plug the loose end of {cable as cable} into {port as port}.',
	'cable.unplug': 'Unplug {cable as cable} from {port}.',
	'terminator.fit': 'Fit a terminator in {port as port}.',
	'terminator.remove': 'Take the terminator out of {port as port}.',
	'desk.level': 'Set channel {slot} of universe {universe} to {level as level}.',
	'desk.master': 'Set the desk’s master to {level as level}.',
	'desk.output': [
		{ when: { on: true }, says: 'Switch {output as output} on.' },
		{ says: 'Switch {output as output} off.' },
	],
	'desk.universe': 'Set {output as output} to universe {universe}.',
	'remote.press': 'Press {button as button} on the remote.',
} as const satisfies Record<string, Says>;

/**
 * A key held. `lock`: until a panel opens, {reads} is what its display says then. `near`: let go at the sight of {cue}, which the
 * value then runs past, and brought to {target} by taps; {again} where that may take a hold more, {sure} where no hold can miss. `release`: the same
 * for a key that is held already; {now} where it should come up at once.
 */
export const holdHints = {
	lock: 'Hold {key as key} on {fixture as name} for about {ms as time}[, until its display reads {reads}], and let go.',
	near: [
		{
			when: { sure: true },
			says: 'Hold {key as key} on {fixture as name} until its display reads {target}, and let go.',
		},
		{
			when: { again: true },
			says: 'Hold {key as key} on {fixture as name} until close to {cue} and let go; it runs on a little. Then come to {target} with a shorter hold and taps.',
		},
		{
			says: 'Hold {key as key} on {fixture as name} until close to {cue} and let go; it runs on a little. Then tap to {target}.',
		},
	],
	release: [
		{ when: { now: true }, says: 'Let go of {key as key} on {fixture as name}.' },
		{ says: 'Let go of {key as key} on {fixture as name} when its display reads close to {cue}.' },
	],
} as const satisfies Record<string, Says>;

/** Where to look, the first step of a hint, by what is to be done there. */
export const hintPlaces = {
	'key.tap': 'Look at the panel of {fixture as name}.',
	'key.down': 'Look at the panel of {fixture as name}.',
	'key.up': 'Look at the panel of {fixture as name}.',
	'switch.flip': 'Look at the switches of {fixture as name}.',
	'slide.move': 'Look at the slides of {fixture as name}.',
	'power.switch': 'Look at the power switch of {fixture as name}.',
	'mains.plug': 'Look at the mains lead of {fixture as name}.',
	'cable.lay': [
		{ when: { isWhole: true }, says: 'Look at {from as port}, and at {to as port}.' },
		{ says: 'Look at the cables.' },
	],
	'cable.lift': 'Look at {cable as cable}.',
	'cable.plug': 'Look at {port as port}.',
	'cable.unplug': 'Look at {cable as cable}.',
	'terminator.fit': 'Look at {port as port}.',
	'terminator.remove': 'Look at {port as port}.',
	'desk.level': 'Look at channel {slot} of universe {universe} on the desk.',
	'desk.master': 'Look at the desk’s master.',
	'desk.output': 'Look at {output as output}.',
	'desk.universe': 'Look at {output as output}.',
	'remote.press': 'Look at the remote.',
	else: 'Look along the row.',
} as const satisfies Record<string, Says>;

/** {reason}: a sentence of the reason trail, by what that link does: stops the light, or cuts off data or the remote while it goes on. */
export const hintSteps = {
	stops: 'What stops its light now: {reason}',
	cuts: 'What’s wrong there now: {reason}',
} as const satisfies Record<string, Says>;
