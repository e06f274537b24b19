import type { Says } from '../rig/index.ts';

/** Options that several kinds of question have, by the id of their wording. */
export const labels = {
	name: '{name}',
	value: '{value}',
	'desk-slot': 'Channel {slot}',
	slot: [
		{ when: { part: 'coarse' }, says: '{name}, coarse' },
		{ when: { part: 'fine' }, says: '{name}, fine' },
		{ says: '{name}' },
	],
	stretch: [{ when: { single: true }, says: '{from} alone' }, { says: '{from} to {to}' }],
	pair: 'Coarse {coarse}, fine {fine}',
	'ends-value': '{name}, up to {end}',
	'ends-percent': '{name}, up to {end} %',
	'ends-hex': '{name}, up to x{end}',
} as const satisfies Record<string, Says>;

/** A typed number with what it counts, by the unit of the question. */
export const units = {
	value: '{n}',
	percent: '{n} %',
	slot: 'channel {n}',
	address: 'address {n}',
	slots: '{n} {n?channel|channels}',
	fixtures: '{n} {n?fixture|fixtures}',
	word: '{n}',
	hours: '{n} {n?hour|hours}',
	amps: '{n} A',
	lux: '{n} lux',
	centimetres: '{n} cm',
} as const satisfies Record<string, Says>;

/** Answers in words where they are no option. */
export const answers = {
	upTo: '{from} to {to}',
	or: ' or ',
	arrow: '{left}: {right}',
	numbered: '{n}. {text}',
	switchesUp: [
		{ when: { none: true }, says: 'no switch up' },
		{ says: '{up?switch|switches} {up as every} up, the others down' },
	],
	done: 'Done on the bench.',
	nothing: 'No answer',
	unknownOption: 'an option that isn’t there',
	bandLine: [
		{ when: { name: '' }, says: '{from} to {to}: no function' },
		{ when: { single: true }, says: '{from}: {name}' },
		{ says: '{from} to {to}: {name}' },
	],
	slotLine: [
		{ when: { part: 'coarse' }, says: '{n}: {name}, coarse' },
		{ when: { part: 'fine' }, says: '{n}: {name}, fine' },
		{ says: '{n}: {name}' },
	],
	placeLine: '{name}: from {start}, {footprint} {footprint?channel|channels}',
	drawLine: '{name}: {watts} W',
	cableLine: [
		{ when: { from: 'desk', to: 'splitter' }, says: 'Desk to splitter in' },
		{ when: { from: 'desk' }, says: 'Desk to {to}' },
		{ when: { from: 'splitter' }, says: 'A splitter output to {to}' },
		{ when: { to: 'splitter' }, says: '{from} to splitter in' },
		{ says: '{from} to {to}' },
	],
	modeLine: '“{mode}” is {label} on the panel',
	patchLine: [
		{
			when: { shows: 'switches' },
			says: '{name}: sheet {address}, “{mode}”. Panel: switches {shown} up, slide at {label}',
		},
		{ says: '{name}: sheet {address}, “{mode}”. Panel: {shown}, {label}' },
	],
	nameLine: [{ when: { pair: true }, says: '{name}, coarse and fine' }, { says: '{name}' }],
	startLine: [{ when: { hex: true }, says: 'from x{from as hex}: {name}' }, { says: 'from {from}: {name}' }],
	endLine: [{ when: { hex: true }, says: 'up to x{to as hex}: {name}' }, { says: 'up to {to}: {name}' }],
	shares: [
		{ when: { single: true }, says: '{first} and {second} share channel {from}.' },
		{ says: '{first} and {second} share channels {from} to {to}.' },
	],
	quoted: '“{name}”',
	semicolon: ';',
	stop: '.',
	plus: ' + ',
} as const satisfies Record<string, Says>;
