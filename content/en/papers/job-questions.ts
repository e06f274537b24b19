import type { QuestionSays } from './says.ts';

const supplyLeavesOut =
	'This sum leaves out what lights draw at switch-on, cables, plugs and sockets, heat, and what else is on the circuit. For electrical work, the competent person on site (in the US, the qualified person) says what goes where, and the local code comes first.';

/** Questions about power, lines, light and bonds, by kind. */
export const jobQuestions = {
	'hours-left': {
		name: 'Hours at a look',
		ask: [
			{
				when: { adds: true },
				says: 'The battery of {fixture} holds {wattHours} Wh when full, and {charge} % of it is left. It draws {idle} W with the light out, and what the list says more with each colour at full. Those colours are at {percent} %, and the dimming is straight. Plan on {planOn} % of what is left. How many whole hours does it last?',
			},
			{
				when: { isFull: true },
				says: 'The battery of {fixture} holds {wattHours} Wh and is full. The look draws {watts} W. Plan on {planOn} % of it. How many whole hours does it last?',
			},
			{
				says: 'The battery of {fixture} holds {wattHours} Wh when full, and {charge} % of it is left. The look draws {watts} W. Plan on {planOn} % of what is left. How many whole hours does it last?',
			},
		],
		chart: 'At full, each draws:',
		working: [
			[
				{
					when: { adds: true },
					says: 'The colours at {percent} % draw {lit} W, and with {idle} W for the rest that is {watts} W.',
				},
				{ says: '' },
			],
			[{ when: { isFull: true }, says: '' }, { says: '{charge} % of {wattHours} Wh is {energy} Wh.' }],
			'{planOn} % of that to plan on is {counted} Wh.',
			'{counted} / {watts}, rounded down, is {right} {right?hour|hours}.',
		],
		why: 'Age, cold and a long speech take their share, so round down and keep a reserve.',
	},
	'fit-on-circuit': {
		name: 'How many on a circuit',
		ask: [
			{
				when: { told: false },
				says: '{fixture} takes up to {watts} W from the mains. No power factor is told, so take it as 1 here. The person in charge of the supply gives you {amperes} A at {volts} V. By that sum alone, how many stay within it?',
			},
			{
				when: { planOn: 100 },
				says: '{fixture} takes up to {watts} W from the mains, at a power factor of {factor}. The person in charge of the supply gives you {amperes} A at {volts} V. By that sum alone, how many stay within it?',
			},
			{
				says: '{fixture} takes up to {watts} W from the mains, at a power factor of {factor}. The person in charge of the supply gives you {amperes} A at {volts} V, and says to plan on {planOn} % of it. By that sum alone, how many stay within it?',
			},
		],
		working: [
			[{ when: { planOn: 100 }, says: '' }, { says: '{planOn} % of {amperes} A is {usable} A.' }],
			[
				{ when: { told: false }, says: '{volts} V × {usable} A is {most} W.' },
				{ says: '{volts} V × {usable} A × {factor} is {most} W.' },
			],
			'{most} / {watts}, rounded down, is {right} {right?fixture|fixtures}.',
		],
		why: supplyLeavesOut,
	},
	'row-amps': {
		name: 'Amps of a row',
		ask: [
			{
				when: { told: false },
				says: 'One {fixture} takes up to {watts} W from the mains. No power factor is told, so take it as 1 here. How many amps do {count} of them take at {volts} V? Round up to a whole number.',
			},
			{
				says: 'One {fixture} takes up to {watts} W from the mains, at a power factor of {factor}. How many amps do {count} of them take at {volts} V? Round up to a whole number.',
			},
		],
		working: [
			'{count} × {watts} W is {all} W.',
			[
				{ when: { told: false }, says: '{all} W / {volts} V is about {drawn} A, so {right} A.' },
				{ says: '{all} W / ({volts} V × {factor}) is about {drawn} A, so {right} A.' },
			],
		],
		why: supplyLeavesOut,
	},
	'splitter-after': {
		name: 'Unit loads on a line',
		ask: [
			{
				when: { hasSplitter: false, isWhole: true },
				says: 'Each fixture draws one unit load of its data line. A line can take {most} unit loads. By that sum alone, how many of these fixtures is that?',
			},
			{
				when: { hasSplitter: false },
				says: 'Each fixture draws 1/{per} of a unit load of its data line. A line can take {most} unit loads. By that sum alone, how many of these fixtures is that?',
			},
			{
				when: { whole: 0, isWhole: true },
				says: 'In a very long row each fixture draws one unit load of the data line, and a line can take {most}. A splitter goes at the end of the line, and its input draws one too. By that sum alone, after how many fixtures must it come at the latest?',
			},
			{
				when: { whole: 0 },
				says: 'In a very long row each fixture draws 1/{per} of a unit load of the data line, and a line can take {most}. A splitter goes at the end of the line, and its input draws one unit load. By that sum alone, after how many fixtures must it come at the latest?',
			},
			{
				says: 'In a very long row the first {whole} fixtures draw one unit load each of the data line, and all that follow 1/{per} of one. A line can take {most}. A splitter goes at the end of the line, and its input draws one unit load. By that sum alone, after how many fixtures must it come at the latest?',
			},
		],
		working: [
			[
				{ when: { hasSplitter: false }, says: 'There is room for {room} unit loads.' },
				{ when: { whole: 0 }, says: '{most} minus one for the splitter leaves {room}.' },
				{ says: '{most} minus {whole} for the first fixtures and one for the splitter leaves {room}.' },
			],
			[
				{ when: { isWhole: true }, says: 'That is one fixture each.' },
				{ says: 'Each takes {per} fixtures: {room} × {per} = {more}.' },
			],
			[{ when: { whole: 0 }, says: '' }, { says: 'With the first {whole} that is {right}.' }],
		],
		why: 'A line counts unit loads, not fixtures, and a splitter’s output starts a fresh one. This sum leaves out cable length and what the makers allow: many say 32 fixtures or fewer, and the lowest figure on the line comes first.',
	},
	'terminator-place': {
		name: 'Where the terminator goes',
		ask: [
			{
				when: { hasSplitter: true },
				says: 'These are the data cables of a rig. The splitter ends the line at its own input. At which fixtures does a terminator go into data out?',
			},
			{ says: 'These are the data cables of a rig. At which fixture does a terminator go into data out?' },
		],
		chart: 'Each cable, from data out to data in:',
		working: [
			'Follow each line from where it starts to the fixture with nothing after it.',
			'That is {names as every}.',
		],
		why: 'A line ends where nothing is plugged in after, and each output of a splitter has a line of its own. Some fixtures have a switch for it, or do it by themselves: then no plug goes in. Their manual says.',
	},
	'lux-at-throw': {
		name: 'Light at a throw',
		ask: 'Straight ahead at {near} m, {fixture} gives {lux} lux. How many lux at {far} m? Two percent either way is close enough.',
		working: [
			'{far} / {near} is about {times} times as far.',
			'Squared, that is about {squared} times the area.',
			'{lux} / {squared} is about {right} lux.',
		],
		why: 'Twice as far is four times the area, so a quarter of the light. Close up that doesn’t hold: stay five times the width of a wide light away, and more for a narrow beam.',
	},
	'pool-at-throw': {
		name: 'Pool at a throw',
		ask: 'Square on at {near} m, the pool of {fixture} is {pool} cm across. How many centimetres at {far} m? Two percent either way is close enough.',
		working: ['{pool} × {far} / {near} is about {right} cm.'],
		why: 'A beam opens in a straight line, so twice as far is a pool twice as wide.',
	},
	'row-spacing': {
		name: 'Spacing for an overlap',
		ask: [
			{
				when: { scaled: true },
				says: 'Square on at {near} m, the pool of {fixture} is {pool} cm across. At {far} m, neighbours are to overlap by {overlap} % of the pool there. How many centimetres apart do they go? Two percent either way is close enough.',
			},
			{
				says: 'Square on at {near} m, the pool of {fixture} is {pool} cm across. Neighbours are to overlap by {overlap} % of it. How many centimetres apart do they go? Two percent either way is close enough.',
			},
		],
		working: [
			[
				{ when: { scaled: true }, says: 'At {far} m the pool is {pool} × {far} / {near}, about {here} cm.' },
				{ says: '' },
			],
			'100 % − {overlap} % = {rest} %, and {rest} % of {here} cm is about {right} cm.',
		],
		why: 'Spacing and overlap together make one pool.',
	},
	'bond-check': {
		name: 'Good and bad bonds',
		ask: 'A light weighs {kilograms} kg with everything on it. The person in charge of rigging says that pipe and truss can take it, and wants no more than {slack} cm of drop. Which of these bonds are wrong?',
		working: [
			'Read each in turn: what it is round, where it holds the light, how far the light would drop, the tag, the link, the wire.',
			[{ when: { count: 1 }, says: 'One of {of} is wrong.' }, { says: '{count} of {of} are wrong.' }],
			'{flaws as flawList}',
		],
		why: 'A bond with one fault is no bond. A tag holds for the drop its maker gives, and no longer one. This doesn’t pass the rest either: the maker’s manual, the rules of the place and the person in charge of rigging come first.',
		labels: {
			bond: 'Round {around as bondAround}, to {to as bondTo}, {slack} cm of drop, {rated as bondTag}, link {closed as bondLink}, wire {state as bondState}',
		},
	},
} as const satisfies Record<string, QuestionSays>;

/** Parts of a bond, and what is wrong with it, by their ids. */
export const bondWords = {
	around: { pipe: 'the pipe', 'truss-chord': 'a truss chord', conduit: 'an electrical conduit', tray: 'a cable tray' },
	to: { 'makers-point': 'the maker’s bond point', yoke: 'the yoke alone', handle: 'the handle' },
	tag: [{ when: { rated: 0 }, says: 'no tag' }, { says: 'tag {rated} kg' }],
	link: { closed: 'closed', open: 'open' },
	state: { good: 'good', frayed: 'frayed', shocked: 'good, has caught a light before' },
	flaws: {
		around: 'Conduit and cable tray aren’t made to catch a load.',
		to: 'It goes to the maker’s point, never to yoke or handle unless the maker says so.',
		long: 'The drop is longer than was said.',
		rating: 'With no tag, or one for less than the light weighs, it isn’t rated for it.',
		open: 'An open link can come off.',
		worn: 'A frayed wire, or one that has caught a load, is out of use.',
	},
} as const;

/** How fixtures were found set, one sentence each. */
export const settingFound = '{name} is at {address}, in “{mode}”.';
