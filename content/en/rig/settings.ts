import type { Says } from './says.ts';

/** What each setting is called, whatever a panel calls it. */
export const settingTitles = {
	work: 'What decides the light',
	lead: 'Leading the others',
	address: 'Start address',
	mode: 'Mode',
	held: 'Static colour',
	programme: 'Programme',
	speed: 'Speed of the programme',
	level: 'Brightness',
	strobe: 'Flashes a second',
	loss: 'Signal loss',
	curve: 'Dimmer curve',
	limit: 'Highest output',
	sensor: 'Remote sensor',
	code: 'Remote code',
	hearing: 'Microphone sensitivity',
	lock: 'Panel lock',
	sleep: 'Display goes dark after',
} as const;

/** Each setting’s value in words; the fact is {value}. */
export const settingValues = {
	work: [
		{ when: { value: 'line' }, says: 'data on the line' },
		{ when: { value: 'held' }, says: 'its own static colour' },
		{ when: { value: 'programme' }, says: 'its own programme' },
		{ says: 'a leader' },
	],
	lead: [{ when: { value: 'on' }, says: 'leads' }, { says: 'doesn’t lead' }],
	address: '{value}',
	mode: '{value as mode}',
	held: '{value as held}',
	programme: '{value as programme}',
	speed: '{value} of 100',
	level: '{value as percent}',
	strobe: [{ when: { value: 0 }, says: 'steady' }, { says: '{value as rate}' }],
	loss: [
		{ when: { value: 'hold' }, says: 'keep the last look' },
		{ when: { value: 'dark' }, says: 'go dark' },
		{ says: 'run its own programme' },
	],
	curve: '{value as curve}',
	limit: '{value as percent}',
	sensor: [{ when: { value: 'open' }, says: 'open' }, { says: 'shut' }],
	code: 'code {value}',
	hearing: [{ when: { value: 0 }, says: '0 %, hears nothing' }, { says: '{value as percent}' }],
	lock: [{ when: { value: 'on' }, says: 'locks itself when left alone' }, { says: 'off' }],
	sleep: [{ when: { value: 0 }, says: 'never' }, { says: '{value} {value?second|seconds}' }],
} as const satisfies Record<keyof typeof settingTitles, Says>;
