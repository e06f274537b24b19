import type { Says } from '../rig/index.ts';

/**
 * What each condition of a goal asks, as a sentence. {title} and {value} belong to a setting; {ranges} is where a number may lie.
 */
export const conditions = {
	setting: '{fixture as name}, {title}: {value}.',
	'setting-within': '{fixture as name}, {title}: {ranges}.',
	defaults: 'Every setting of {fixture as name} at its default.',
	kept: 'Every other setting of {fixture as name} as it was.',
	on: '{fixture as name} is on.',
	fed: 'The mains lead of {fixture as name} is in {from as feed}.',
	slot: 'At the desk, channel {slot} of universe {universe}: {ranges}.',
	'levels-kept': 'Every other level of universe {universe} as it was.',
	master: 'The desk’s master at {level as level}.',
	output: '{output as output} sends universe {universe}.',
	joined: 'One good data cable from {a as port} to {b as port}.',
	terminators: [
		{ when: { some: false }, says: 'No terminator anywhere.' },
		{ says: '{ports?A terminator|Terminators} in {ports as ports} and nowhere else.' },
	],
	'data-from': '{fixture as name} hears {source as source}.',
	steady: '{fixture as name} doesn’t flash.',
	lit: '{fixture as name} gives light.',
} as const satisfies Record<string, Says>;

export type ConditionIs = keyof typeof conditions;

/**
 * What is still wrong, by what it is that is wrong, as a sentence. {found} and {wanted} are in words already; {place} is a
 * fixture's, a socket's or an output's name.
 */
export const findings = {
	setting: '{place}, {title}: {found}; wanted: {wanted}.',
	slot: 'Channel {slot} of universe {universe}: {found}; wanted: {wanted}.',
	power: '{place} is {found}.',
	mains: 'The mains lead of {place} is in {found}, and it should be in {wanted}.',
	isolated:
		'{place} was linked while the wall plug of {found} was in. Pull that plug first, then unplug this link and make it again. That plug goes in last.',
	light: [{ when: { wanted: 'steady' }, says: '{place} still flashes.' }, { says: '{place} gives no light.' }],
	data: '{place} hears {found}, and it should hear {wanted}.',
	cable: [
		{
			when: { unfit: true },
			says: 'The cable from {place} to {wanted} won’t do: wrong kind, too long, or faulty.',
		},
		{ says: '{place} is joined to {found}, and it should be joined to {wanted}.' },
	],
	terminator: [
		{ when: { wanted: 'fitted' }, says: 'There’s no terminator in {place}, and there should be one.' },
		{ says: 'There’s a terminator in {place}, and there should be none.' },
	],
	universe: '{place} carries universe {found}, and it should carry universe {wanted}.',
	output: '{place} sends nothing, and it should be sending.',
	master: 'The desk’s master is at {found}, and it should be at {wanted}.',
} as const satisfies Record<string, Says>;

/** What was done live, by what was done: it is told first, and stays in the mark. */
export const harms = {
	made: 'You linked {fixture as name} to {feeder as name} while the wall plug of {wall as name} was in, so that link was live.',
	broken:
		'You pulled {fixture as name} off {feeder as name} while the wall plug of {wall as name} was in, so that link was live.',
} as const satisfies Record<string, Says>;

/** What a thing is found to be, where that is no value. */
export const states = {
	off: 'off',
	on: 'on',
	nothing: 'nothing',
	loose: 'a cable whose other end hangs loose',
	collision: 'two sources at once',
	damaged: 'damaged data',
	desk: 'the desk, universe {universe}',
	leader: '{name}, which leads',
	any: 'anything from {from} to {to}',
	or: ', or ',
} as const;
