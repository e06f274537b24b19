import type { Says } from './says.ts';

/** The log’s line for each kind of event. */
export const events = {
	'clock.wait': '{ms as time} went by',
	'key.tap': '{key as key} pressed on {fixture as name}',
	'key.down': [
		{ when: { press: 'tap' }, says: '{key as key} pressed on {fixture as name}' },
		{ when: { press: 'still' }, says: '{key as key} held down on {fixture as name}' },
		{ says: '{key as key} held for {seconds} {seconds?second|seconds} on {fixture as name}' },
	],
	'key.up': '{key as key} let go on {fixture as name}',
	'switch.flip': [
		{ when: { up: true }, says: 'Switch {switch} flipped up on {fixture as name}' },
		{ says: 'Switch {switch} flipped down on {fixture as name}' },
	],
	'slide.move': 'Slide {slide} moved to {label} on {fixture as name}',
	'power.switch': [
		{ when: { on: true }, says: '{fixture as name} switched on' },
		{ says: '{fixture as name} switched off' },
	],
	'mains.plug': [
		{ when: { into: 'none' }, says: 'Mains lead of {fixture as name} unplugged' },
		{ says: 'Mains lead of {fixture as name} plugged into {into as feed}' },
	],
	'hall.power': [{ when: { on: true }, says: 'The hall’s mains came on' }, { says: 'The hall’s mains went off' }],
	'cable.lay': [
		{
			when: { kind: 'microphone' },
			says: 'New {cable as cable}, {length as metres} of microphone cable[, from {from as port}][, to {to as port}]',
		},
		{ says: 'New {cable as cable}, {length as metres}[, from {from as port}][, to {to as port}]' },
	],
	'cable.lift': '{cable as cable} taken away',
	'cable.plug': '{cable as cable} plugged into {port as port}',
	'cable.unplug': '{cable as cable} unplugged[ from {port}]',
	'cable.become': '{cable as cable} changed: {changes as list}',
	'terminator.fit': 'Terminator fitted in {port as port}',
	'terminator.remove': 'Terminator taken out of {port as port}',
	'desk.level': 'Channel {slot} of universe {universe} set to {level as level}',
	'desk.recall': [
		{ when: { up: 0 }, says: 'A look called up on the desk: every channel at 0' },
		{ says: 'A look called up on the desk: {up} {up?channel|channels} up, all others at 0' },
	],
	'desk.master': 'The desk’s master set to {level as level}',
	'desk.output': [
		{ when: { on: true }, says: '{output as output} switched on' },
		{ says: '{output as output} switched off' },
	],
	'desk.universe': '{output as output} set to universe {universe}',
	'desk.patch': '{fixture as name} patched at channel {address} of universe {universe}, mode {mode as mode}',
	'desk.start-code': '{output as output} set to send start code {code}[ ({meaning})]',
	'desk.hold': [
		{ when: { by: null }, says: 'The desk sends what its faders say again' },
		{ when: { by: 'blind' }, says: 'The desk left in blind' },
		{ says: 'The desk has frozen' },
	],
	'box.switch': [{ when: { on: true }, says: '{box as device} came on' }, { says: '{box as device} went off' }],
	'box.output': [
		{ when: { dead: true }, says: 'Output {socket} of {box as device} went dead' },
		{ says: 'Output {socket} of {box as device} works again' },
	],
	'remote.press': '{button as button} pressed on the remote',
	'remote.become': [
		{ when: { battery: true }, says: 'The remote set to code {code}' },
		{ says: 'The remote set to code {code}, with a flat battery' },
	],
	'sight.block': [
		{ when: { hidden: true }, says: '{fixture as name} hidden from the remote' },
		{ says: '{fixture as name} in sight of the remote' },
	],
	'sound.play': [{ when: { level: 0 }, says: 'The sound stopped' }, { says: 'Sound played at {level as share}' }],
	'settings.become': 'Somebody had set {fixture as name}: {changes as list}',
	'charge.become': '{fixture as name} has its battery at {charge as share}',
	'condition.become': '{fixture as name}: {changes as list}',
} as const satisfies Record<string, Says>;

/** One setting that somebody set. */
export const settingChange = '“{title}” to {value}';

/** What changed in a cable, by what changed; the fact is {value}. */
export const cableChanges = {
	kind: [{ when: { value: 'microphone' }, says: 'now microphone cable' }, { says: 'now data cable' }],
	length: '{value as metres} long',
	common: [{ when: { value: 'open' }, says: 'common broken' }, { says: 'common good' }],
	minus: [{ when: { value: 'open' }, says: 'data minus broken' }, { says: 'data minus good' }],
	plus: [{ when: { value: 'open' }, says: 'data plus broken' }, { says: 'data plus good' }],
	swapped: [{ when: { value: true }, says: 'data wires change places' }, { says: 'data wires straight through' }],
} as const satisfies Record<string, Says>;
