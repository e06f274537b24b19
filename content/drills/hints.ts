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
		{ when: { into: 'none' }, says: 'Unplug the mains lead of {fixture as name}.' },
		{ says: 'Plug the mains lead of {fixture as name} into {into as feed}.' },
	],
	'cable.lay': [
		{
			when: { isWhole: true },
			says: 'Lay a data cable, {length as metres} long, from {from as port} to {to as port}.',
		},
		{ says: 'Lay a data cable, {length as metres} long.' },
	],
	'cable.lift': 'Take {cable as cable} away.',
	'cable.plug': 'Plug the loose end of {cable as cable} into {port as port}.',
	'cable.unplug': 'Unplug {cable as cable} from {port}.',
	'terminator.fit': 'Fit a terminator in {port as port}.',
	'terminator.remove': 'Take the terminator out of {port as port}.',
	'desk.level': 'Set slot {slot} of universe {universe} to {level as level}.',
	'desk.master': 'Set the desk’s master to {level as level}.',
	'desk.output': [
		{ when: { on: true }, says: 'Switch {output as output} on.' },
		{ says: 'Switch {output as output} off.' },
	],
	'desk.universe': 'Set {output as output} to universe {universe}.',
	'remote.press': 'Press {button as button} on the remote.',
} as const satisfies Record<string, Says>;

/** A key held for a while. {reads} is what the display says when it is to be let go. */
export const holdHint: Says =
	'Hold {key as key} on {fixture as name} for about {ms as time}[, until its display reads {reads}], and let go.';
