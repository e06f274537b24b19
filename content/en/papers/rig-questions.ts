import { cautions } from '../cautions/index.ts';
import { checks } from '../checks/index.ts';
import { complaints } from '../complaints/index.ts';
import { drills } from '../drills/index.ts';
import { repairs } from '../repairs/index.ts';
import type { Says, WordingCase } from '../rig/index.ts';
import type { QuestionSays } from './says.ts';

/** Wordings of a template, each for these facts alone, with something before and behind. */
function during(when: NonNullable<WordingCase['when']>, says: Says, before = '', behind = ''): WordingCase[] {
	const all: readonly WordingCase[] = typeof says === 'string' ? [{ says }] : says;
	return all.map((each) => ({ when: { ...when, ...each.when }, says: `${before}${each.says}${behind}` }));
}

const scenes = {
	bench: 'On the prep bench',
	rig: 'On the rig, before doors',
	show: 'On the rig, with people in the room',
} as const;

/** Where a task is done and how, as what comes before it. */
const places = Object.entries(scenes).flatMap(([scene, place]) => [
	{ when: { scene, overhead: true, charges: false }, says: `${place}, with fixtures overhead. The task: ` },
	{
		when: { scene, overhead: true, charges: true },
		says: `${place}, with fixtures overhead and batteries on charge. The task: `,
	},
	{ when: { scene, overhead: false, charges: true }, says: `${place}, with batteries on charge. The task: ` },
	{ when: { scene, overhead: false, charges: false }, says: `${place}. The task: ` },
]);

const tasks = Object.entries(drills).map(([drill, { task, why }]) => ({ drill, task: task as Says, why }));

/** The title of a check or a mend as an option. What a panel is asked for is told by its key. */
const titles = {
	...Object.fromEntries(
		Object.entries(checks).map(([kind, { title }]) => [
			`check-${kind}`,
			typeof title === 'string' ? title.replace('{setting}', '{key as settingTitle}') : title,
		]),
	),
	...Object.fromEntries(Object.entries(repairs).map(([id, { title }]) => [`check-mend-${id}`, title])),
};

/** The kinds that are read from a rig, by id. */
export const rigQuestions: Readonly<Record<string, QuestionSays>> = {
	'frame-look': {
		name: 'What a frame does',
		ask: '{fixture} is in mode “{mode}” with start address {start}. The desk sends {frame as frame}, and no more. What does the fixture do?',
		chart: 'The channels of that mode, counted in the fixture, then what their values do:',
		working: ['Channel {start} of the desk is channel 1 of the fixture. So it reads {reading as reading}.'],
		why: 'A fixture takes its channels in turn from its start address, and a function channel can decide over the colours.',
		labels: {
			'look-dark': 'Nothing: it stays dark',
			'look-lit': '{colour as colour}{percent as bright}[, flashing {rate as rate}]',
			'look-cells': [
				{
					when: { colour: null },
					says: '{cells?Cell|Cells} {cells as numbers} dark, {otherCells?cell|cells} {otherCells as numbers} {otherColour as colour}{otherPercent as bright}[, flashing {rate as rate}]',
				},
				{
					when: { otherColour: null },
					says: '{cells?Cell|Cells} {cells as numbers} {colour as colour}{percent as bright}, {otherCells?cell|cells} {otherCells as numbers} dark[, flashing {rate as rate}]',
				},
				{
					says: '{cells?Cell|Cells} {cells as numbers} {colour as colour}{percent as bright}, {otherCells?cell|cells} {otherCells as numbers} {otherColour as colour}{otherPercent as bright}[, flashing {rate as rate}]',
				},
			],
			'look-programme': 'It runs “{name}”: {does as does}',
		},
	},
	'gate-slot': {
		name: 'What keeps a colour in',
		ask: '{fixture} is in mode “{mode}” with start address 1. The desk sends {frame as frame}. “{colour}” is up, and should simply be on, by itself and still, but it isn’t. Which one move of a fader does it?',
		chart: 'The channels of that mode, then what their values do:',
		working: [
			[
				{ when: { does: null }, says: 'Channel {n}, “{gate}”, is at {stands}, and no colour comes past that.' },
				{ says: 'Channel {n}, “{gate}”, is at {stands}, which is “{does}”: that decides the light.' },
			],
			'The colour’s own fader is up already, so leave it.',
		],
		why: 'A colour comes out when all that stands before it lets it: dimmer up, shutter open, no function running.',
		labels: {
			move: [
				{ when: { band: null }, says: 'Channel {n}, “{slot}”, to {level}' },
				{ says: 'Channel {n}, “{slot}”, to {level}: {band}' },
			],
		},
	},
	'follow-setting': {
		name: 'The setting that makes it follow',
		ask: '{leader} leads a row of {fixture}, and {stray} doesn’t follow. One setting is wrong. Which change makes the whole row move with {leader}?',
		chart: 'How they’re set:',
		working: [
			[
				{ when: { key: 'work' }, says: '{stray} isn’t told to follow, so it ignores the leader.' },
				{
					when: { key: 'mode' },
					says: '{stray} reads the leader’s levels by the chart of another mode. The row stands in “{mode}”.',
				},
				{ says: '{stray} reads from its start address, and a leader sends from channel 1.' },
			],
		],
		why: 'A follower has to be told to follow, stand in its leader’s mode, and read where the leader sends.',
		labels: {
			set: [
				{ when: { key: 'work', value: 'line' }, says: 'Have {fixture} obey the line' },
				{ when: { key: 'work', value: 'held' }, says: 'Have {fixture} show its own static colour' },
				{ when: { key: 'work' }, says: 'Have {fixture} follow a leader' },
				{ when: { key: 'lead', value: 'on' }, says: 'Have {fixture} lead' },
				{ when: { key: 'lead' }, says: 'Have {fixture} lead no more' },
				{ when: { key: 'mode' }, says: 'Put {fixture} into mode “{value}”' },
				{ when: { key: 'address' }, says: 'Set {fixture} to start address {value}' },
				{ says: 'Set the static colour of {fixture} to {value}' },
			],
		},
	},
	'row-roles': {
		name: 'Roles in a row',
		ask: [
			{
				when: { hasDesk: true, lines: 1 },
				says: '{first as names} are {fixture}, one after another on the desk’s line, all patched at start address {address}. One set of faders should move all of them. What must each do?',
			},
			{
				when: { hasDesk: true },
				says: '{first as names} are on the desk’s line, patched at start address {address}. {second as names} are on a line of their own, with no desk. All are {fixture}. The desk should decide for the first line, and {leader}, with its own colour, for the second. What must each do?',
			},
			{
				when: { lines: 1 },
				says: '{first as names} are {fixture}, one after another on a line with no desk. All should show the own colour of {leader}, whatever that is. What must each do?',
			},
			{
				says: '{first as names} are on one line and {second as names} on another, with no desk. All are {fixture}. Each line should show the own colour of one of them: {leaders as names}. What must each do?',
			},
		],
		chart: 'Their own colours; those that follow read from channel 1:',
		working: [
			[
				{ when: { hasDesk: false }, says: '' },
				{ says: 'What is on the desk’s line obeys it. One that led there would send against the desk.' },
			],
			[
				{ when: { leader: null }, says: '' },
				{ says: 'One leader on a line with no desk: {leaders as names}. The others there follow.' },
			],
		],
		why: 'A line has one source, a desk or a leader. All others on it listen to that one.',
		labels: {
			fixture: '{name}',
			'role-desk': 'Obey the desk',
			'role-leader': 'Show its own colour and lead',
			'role-follower': 'Follow a leader',
			'role-alone': 'Show its own colour, and lead nobody',
		},
	},
	'display-says': {
		name: 'What the panel says',
		ask: [
			{
				when: { panel: 'dip' },
				says: '{fixture} is set by ten switches. With switch 10 up, the others say what it does. In each group the first switch counts 1 and each next one twice as much. It should do this: {wants as every}. Which switches are up, with all others down?',
			},
			{
				when: { panel: 'flat' },
				says: 'The display of {fixture} shows {shown as lines}. You press {presses as presses}. Page goes on to the next function, from the last to the first again, and the number stays with its function. Up raises it and Down lowers it, and a list goes round. What does the display show then?',
			},
			{
				says: 'The display of {fixture} shows {shown as lines}.[ “{item}” is at {value}.] You press {presses as presses}. Down goes on along a list, from its end to its start again, and lowers a value. What does it show then?',
			},
		],
		chart: [
			{ when: { panel: 'dip' }, says: 'What the switches count:' },
			{ when: { panel: 'flat' }, says: 'Its functions, in order:' },
			{ says: 'Its menu, in order:' },
		],
		working: [[{ when: { panel: 'dip' }, says: '{fields as fields}, and switch 10.' }, { says: '{steps as steps}.' }]],
		why: [
			{
				when: { panel: 'dip' },
				says: 'Switch 10 turns the others from an address into settings, and each group of them makes a number.',
			},
			{
				when: { panel: 'flat' },
				says: 'There’s no menu to go into: each press of Page is the next function, and what you see is what the light does.',
			},
			{ says: 'Set goes in, Back goes out. Up and Down move along a list, or move the value that is being set.' },
		],
		labels: {
			'one-line': '{line}',
			'two-lines': '{first}[, below it {second}]',
			'switches-up': [{ when: { none: true }, says: 'None' }, { says: '{up as every}' }],
		},
	},
	'first-check': {
		name: 'What to check first',
		ask: [
			...Object.entries(complaints).flatMap(([complaint, { says }]) =>
				[
					{ linked: 'desk', how: 'on a desk' },
					{ linked: 'leader', how: 'led by {leader}' },
					{ linked: 'alone', how: 'with no line' },
				].flatMap(({ linked, how }) =>
					during(
						{ complaint, linked },
						says,
						'',
						`. The rig: {fixtures as every}, ${how}. You stand at {fixture}, and nothing has been looked at yet. Every look can be trusted. Which of these, done first, leads to the cause soonest on average?`,
					),
				),
			),
		],
		working: [
			'Where every look can be trusted, this first finds the cause in about {seconds} {seconds?second|seconds} on average, walks included.',
			[
				{ when: { same: true }, says: 'With any of the others first it takes about {next} seconds.' },
				{ says: 'With one of the others first it takes {next} to {worst} seconds.' },
			],
		],
		why: 'A good first check is quick, near at hand, and splits the likely causes whatever it shows.',
		labels: titles,
	},
	'caution-here': {
		name: 'Cautions for a task',
		ask: tasks.flatMap(({ drill, task }) =>
			places.flatMap(({ when, says }) => during({ drill, ...when }, task, says, ' Which cautions go with it?')),
		),
		working: ['They are: {calls as cautions}.'],
		why: 'A caution goes with where the work is, what hands touch there, and what the fixtures do.',
		labels: Object.fromEntries(Object.entries(cautions).map(([id, { title }]) => [`caution-${id}`, title])),
	},
	'on-the-bench': {
		name: 'Done on the bench',
		ask: tasks.flatMap(({ drill, task }) => during({ drill }, task)),
		working: ['It can be done with {fewest} {fewest?press|presses}.'],
		why: tasks.map(({ drill, why }) => ({ when: { drill }, says: why })),
	},
};

/** Bits that the words of these questions are filled with, and the lines of their charts. */
export const rigParts = {
	frame: [
		{ when: { single: true }, says: 'channel {from} at {level}' },
		{ says: 'channels {from} to {to} at {level}' },
	],
	reading: '{name} at {level}[ ({band})]',
	press: [
		{ when: { times: 1 }, says: '{key as key}' },
		{ when: { times: 2 }, says: '{key as key} twice' },
		{ says: '{key as key} {times} times' },
	],
	afterThat: ', then ',
	quoted: '“{line}”',
	below: '“{first}”, below it “{second}”',
	step: '{press} shows {lines}',
	field: '{title}: {at} in {switches?switch|switches} {switches as every}',
	bandLine: [{ when: { single: true }, says: '{slot} {from}: {name}' }, { says: '{slot} {from} to {to}: {name}' }],
	rowLine: [
		{
			when: { lead: 'on' },
			says: '{name} shows its own {held} and leads, in mode “{mode}”[ at start address {address}]',
		},
		{ when: { work: 'held' }, says: '{name} shows its own {held}, in mode “{mode}”[ at start address {address}]' },
		{ when: { work: 'follow' }, says: '{name} follows a leader, in mode “{mode}”[ at start address {address}]' },
		{ says: '{name} obeys the line, in mode “{mode}”[ at start address {address}]' },
	],
	colourLine: '{name}: {colour}',
	listLine: '{things as inTurn}',
	insideLine: 'in “{title}”: {things as inTurn}',
	choicesLine: '{title}, {switches?switch|switches} {switches as every}: {things as inTurn}',
	choice: '{at} {title}',
} as const satisfies Record<string, Says>;
