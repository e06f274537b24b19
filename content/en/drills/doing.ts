import { counted } from '../locale/index.ts';

/** Kinds of drill, by how hard they are. */
export const levels = { easy: 'Easy', middle: 'Medium', hard: 'Hard' } as const;

/** Words around a drill that is being done. */
export const drillWords = {
	loading: 'Setting up the drill…',
	badLink: 'This link holds no drill that there is. Pick one from the list.',
	failed: 'This part couldn’t be loaded. Check the network and try again.',
	again: 'Try again',
	begin: 'Begin',
	takenUp: 'You were in the middle of this. It stands as you left it, with the help you had used.',
	disturbs: 'This one disturbs a running show',
	disturbsWords:
		'People are in the room, and on the quickest way a fixture loses its light or its data. At a real show, wait for the operator’s word first.',
	beginAnyway: 'I have the operator’s word: begin',
	scene: {
		bench: 'On the prep bench.',
		rig: 'On the hung rig, before doors.',
		show: 'In a running show, with people in the room.',
		'load-out': 'At load-out, after the show.',
	},
	hands: 'In your hands',
	handWords: {
		panel: 'panels',
		power: 'power switches',
		desk: 'the desk',
		line: 'the line',
		mains: 'mains leads',
		remote: 'the remote',
	},
	notInHand: (hands: string) => `This drill is done by ${hands} alone.`,
	wholeTask: 'The whole task',
	ways: 'Ways on',
	bar: 'This drill',
	mark: 'Mark it',
	hint: 'Hint',
	startAgain: 'Start again',
	another: 'Another like it',
	next: 'Give me the next kind',
	share: 'Share',
	list: 'All drills',
	copied: 'Link copied. It holds the kind and the seed, and nothing of yours.',
	copyFailed: 'The browser wouldn’t copy it. The page’s address is the link: copy that.',
	nothingLeft: 'Nothing is left to do. Mark it.',
	hintWord: 'Hint',
	/** Each press of Hint tells one step more. */
	hintSteps: ['where to look', 'what and why', 'the press'],
	done: 'Done',
	doneLive: 'Done, but not safely',
	notYet: 'Not yet',
	doneWords: 'Everything is as the task asks.',
	harm: 'You moved a live link',
	harmWords:
		'On a real rig that can kill. Isolate first: pull the plug at the wall, move the links, and put that plug back last. On mains, the competent person on site (in the US, the qualified person) says when it’s safe.',
	harmStays: 'It stays in this result, and ends the row. Start again to do it safely from the first plug.',
	wrong: 'Still wrong',
	/** {causes}: what is wrong by somebody's hand, by itself. */
	causeCount: (causes: number, follows: number) =>
		follows === 0
			? `${counted(causes, 'thing is', 'things are')} still wrong.`
			: `${counted(causes, 'cause', 'causes')} to fix; ${counted(follows, 'other thing follows', 'other things follow')} from that.`,
	/** What follows from a cause, by what it is. */
	therefore: {
		one: 'Therefore:',
		data: (names: string, count: number) =>
			`${counted(count, 'fixture doesn’t get the data it should', 'fixtures don’t get the data they should')}: ${names}.`,
		light: (names: string, count: number) =>
			`${counted(count, 'fixture’s light is', 'fixtures’ lights are')} not as they should be: ${names}.`,
		power: (names: string, count: number) => `${counted(count, 'fixture has', 'fixtures have')} no power: ${names}.`,
	},
	right: (count: number) => `${counted(count, 'thing is', 'things are')} right`,
	presses: 'Presses',
	/** {fewest}: what a steady hand can be sure of; luck may need fewer. */
	pressesOf: (presses: number, fewest: number) => `${presses}, where ${fewest} will do`,
	looked: 'Looked',
	lookedTimes: (presses: number) => `${counted(presses, 'press', 'presses')} that changed nothing. No fault.`,
	time: 'Time',
	hints: 'Hints',
	hintsUsed: (count: number) => (count === 0 ? 'none' : `${count}`),
	best: 'Your best',
	isBest: 'This is your best so far.',
	streak: 'In a row',
	cleanCounts:
		'A drill you hadn’t begun before, right the first time you mark it and with no hint, counts for the row. Loading the page again in the middle begins it again.',
	notKept:
		'This device keeps nothing for this page, so results are gone when it closes. Export them from the list to keep them.',
	result: (presses: number, fewest: number, time: string, hints: number) =>
		`${presses} presses, where ${fewest} will do, in ${time}, ${hints === 0 ? 'no hints' : counted(hints, 'hint', 'hints')}`,
} as const;
