import { locale } from '../locale/index.ts';

/** Words of the drawer of things that break, of the reason trail and of the log. */
export const breakWords = {
	hint: 'What is broken here shows only in what the rig does, and in the reason trail. Fix it, or undo.',
	hall: 'Mains of the hall',
	hallWords: ['off', 'on'] as const,
	what: 'What to break',
	choose: 'Choose a cable or a fixture',
	cables: 'Cables',
	fixtures: 'Fixtures',
	desk: 'Desk outputs',
	wire: { common: 'Common', minus: 'Data minus', plus: 'Data plus' },
	wireWords: ['broken', 'good'] as const,
	swapped: 'Data wires change places',
	microphone: 'It’s a microphone cable',
	length: 'Length in metres',
	badLength: 'A cable is 0.1 to 2000 metres long. Type a number, such as 5.',
	noYes: ['no', 'yes'] as const,
	receiverDead: 'Line receiver dead',
	sensorDead: 'Remote sensor dead',
	microphoneDead: 'Microphone dead',
	displayDead: 'Display dead',
	covered: 'Lens covered',
	chargerDead: 'Won’t charge',
	socket: 'Bad socket',
	sockets: { none: 'neither', in: 'data in', out: 'data out' },
	emitterDead: (name: string) => `${name} emitters dead`,
	foldBack: 'Held back by its own heat to',
	foldBacks: { 1: 'not at all', 0.6: '60 %', 0.3: '30 %', 0: 'nothing' },
	health: 'Battery holds',
	healths: { 1: 'all it held when new', 0.6: '60 % of new', 0.25: '25 % of new', 0: 'nothing' },
	startCode: 'Start code it sends',
	startCodes: { 0: '0: levels', 23: '23: text', 85: '85: test' },
	mend: 'Fix everything',
} as const;

export const whyWords = {
	title: (name: string) => `Why ${name} looks like that`,
	lead: 'From the source to the light. The trail ends where something stops it.',
	effects: { passes: 'goes on', shapes: 'changes it', stops: 'stops here' },
	/** Where something is cut off while the light goes on: by the link's id, or by its stage. */
	cuts: {
		'drive.leading': 'spoils the line',
		'drive.leading-not': 'sends nothing',
		drive: 'the remote stops here',
		source: 'data stops here',
		line: 'data stops here',
	},
	close: 'Close',
} as const;

export const logWords = {
	startAgain: 'Start again',
	none: 'Nothing has been done yet.',
	more: (count: number) => `${count} earlier lines`,
} as const;

export const clockWords = {
	label: 'Clock',
	runs: ['stopped', 'running'] as const,
	speed: 'How fast',
	speeds: { 1: 'As it is', 60: 'A minute a second', 600: 'Ten minutes a second' },
	hint: 'Fast clocks are for batteries: watch one run down or fill up.',
	since: 'since this bench was set up.',
} as const;

/** Where more fixtures changed at once than are told one by one. */
export const tellingWords = {
	more: (count: number) => locale.plural(count, 'One more fixture changed.', `${count} more fixtures changed.`),
} as const;
