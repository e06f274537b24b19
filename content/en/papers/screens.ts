/** The words around the papers: the trainer's page, the learner's, and the printed one. Questions have theirs elsewhere. */
import { counted } from '../locale/index.ts';

/** Said on all three pages. */
export const paperWords = {
	loading: 'Getting it ready…',
	failed: 'A part of this page couldn’t be fetched. Check the network once, then try again.',
	again: 'Try again',
	noWorker: 'This browser can’t work quizzes out, or the parts for it couldn’t be fetched. Check the network once.',
	broke: 'Working this out broke down. That’s a fault of this page’s own. Load the page again: what is kept is safe.',
	copy: 'Copy the link',
	copied: 'The link is copied.',
	copyFailed: 'The browser wouldn’t copy it. Mark the link above and copy it by hand.',
	share: 'Share it',
	save: 'Save as a file',
	saved: 'The file is saved.',
	qr: 'Show the QR code',
	qrHide: 'Hide the QR code',
	qrAlt: (what: string) => `A QR code that holds the ${what}. The link beside it holds the same.`,
	qrTooLong: 'This is too much for one QR code. Use the link or the file.',
	questions: (n: number) => counted(n, 'question', 'questions'),
	minutes: (n: number) => counted(n, 'minute', 'minutes'),
} as const;

/** Reading QR codes with the camera, on the trainer's page and the learner's. */
export const scanWords = {
	start: 'Read a QR code with the camera',
	stop: 'Stop the camera',
	view: 'What the camera sees',
	asking: 'Waiting for the camera. The browser may ask whether this page may use it.',
	hold: 'Hold the whole code in the frame, flat and still. Nothing of the picture is kept.',
	reading: 'Looking for a QR code in the picture…',
	stopReading: 'Stop reading',
} as const;

/** Around the trainer's page. */
export const papersPage = {
	title: 'Quizzes: Prep Bay',
	description:
		'Set a quiz on the fixtures a crew will touch, hand it out by link or on paper, and see what to go over again.',
	heading: 'Quizzes',
	lead: 'Set questions on the fixtures your crew will touch. Every answer is worked out from the fixtures and the rig. Quizzes and results stay on this device, and nothing is sent by itself.',
	needsScript: 'Quizzes are set and marked in the page and need JavaScript, which is turned off here.',
} as const;

/** Around the learner's page. */
export const sitPage = {
	title: 'Take a quiz: Prep Bay',
	description: 'Answer a quiz on this device, with or without a network, and hand in the result.',
	heading: 'Quiz',
	needsScript: 'The quiz runs in the page and needs JavaScript, which is turned off here.',
} as const;

/** Around the printed one. */
export const printPage = {
	title: 'Print a quiz: Prep Bay',
	description: 'A quiz, its answer sheet and its key, to print.',
	heading: 'Print a quiz',
	needsScript: 'The quiz is set in the page and needs JavaScript, which is turned off here.',
} as const;

/** The learner's page. */
export const sitWords = {
	none: 'No quiz is open here.',
	last: 'Go on with the quiz you began',
	noneWays: 'Open the link your trainer gave you, read its QR code, choose the quiz’s file, or paste the link here.',
	isOpen: (title: string) => `‘${title}’ is open.`,
	paste: 'The link to the quiz',
	openPasted: 'Open the quiz',
	file: 'Open a quiz’s file, or a picture of its QR code',
	notPaper: 'That holds no quiz. Use the whole link or the file your trainer gave you.',
	begin: 'Begin',
	about: (n: number, pass: number) => `${paperWords.questions(n)}.${pass > 0 ? ` ${pass} % right is a pass.` : ''}`,
	noLimit: 'Take the time you need.',
	limit: (n: number) =>
		`You have ${paperWords.minutes(n)} from when you begin. The time runs on if the page is closed.`,
	told: {
		each: 'You’re told after each question how it went.',
		end: 'You’re told how it went once you hand in.',
	},
	savedHere: 'Every answer is kept on this device as you give it. You can close the page and come back.',
	resumed: 'Your answers are still here.',
	where: (at: number, of: number) => `Question ${at} of ${of}`,
	back: 'Back',
	next: 'Next',
	flag: 'Flag it',
	review: 'Look over',
	reviewTitle: 'Before you hand in',
	reviewCount: (answered: number, open: number, flags: number) =>
		[
			counted(answered, 'answered', 'answered'),
			open > 0 ? `${open} not answered` : '',
			flags > 0 ? `${flags} flagged` : '',
		]
			.filter(Boolean)
			.join(', '),
	question: 'Question',
	answered: 'Answered',
	notAnswered: 'Not answered',
	flagged: 'Flagged',
	saved: 'Kept.',
	notKept: 'This device keeps nothing for this page. Hand in before you close it, or the answers are gone.',
	noRoom:
		'There’s no room left on this device to keep your answers. Hand in before you close the page, or make room on the page ‘Kept on this device’.',
	tryAgain: 'Try again',
	handIn: 'Hand in',
	handInOpen: (open: number) =>
		`${counted(open, 'question is', 'questions are')} not answered. You can go back, or hand in as it is.`,
	name: 'Your name',
	nameHint: 'If you like. It goes into your result and nowhere else.',
	timeLeft: 'Time left',
	timeSay: {
		five: 'Five minutes left.',
		one: 'One minute left.',
		none: 'Time is up. Your answers are kept: hand them in.',
	},
	timeUp: 'Time is up. Your answers are kept: hand them in.',
	elsewhere:
		'This quiz is open in another tab of this browser. Answers are only kept from one, so that neither spoils the other.',
	takeOver: 'Go on in this tab',
	lost: 'This quiz was taken over in another tab. Go on there, or take it back here.',
	damaged: 'What was kept of this quiz was damaged. It has been set aside, and you start again.',
	newer:
		'Your answers to this quiz were kept by a newer version of Prep Bay. They stay as they are. Load the page again to get that version before you start over.',
	check: 'See how it went',
	form: {
		one: 'Pick one.',
		several: 'Pick all that are right.',
		order: 'Put them in order, the first at the top.',
		switches: 'Set the switches.',
		match: 'Find the right one for each.',
		practical: 'Do it on the bench below. What you do is your answer.',
	},
	number: (least: string, most: string) => `A whole number from ${least} to ${most}.`,
	numberHex: (least: string, most: string) => `In hex, from ${least} to ${most}.`,
	/** Beside the box, by what is asked for. */
	numberUnits: {
		value: 'value',
		percent: 'percent',
		slot: 'channel',
		address: 'address',
		slots: 'channels',
		fixtures: 'fixtures',
		word: 'word',
		hours: 'hours',
		amps: 'amps',
		lux: 'lux',
		centimetres: 'centimetres',
	},
	numberLabel: 'Your answer',
	numberWrong: {
		10: 'That is no whole number. Type digits alone, such as 128.',
		16: 'That is no hex number. Type digits and the letters A to F, such as 7F.',
	},
	numberRange: (least: string, most: string) => `That is out of range. Type a number from ${least} to ${most}.`,
	up: (what: string) => `Move up: ${what}`,
	down: (what: string) => `Move down: ${what}`,
	movedTo: (what: string, at: number) => `${what}: now ${at}.`,
	keepOrder: 'This order is right',
	switchName: (n: number) => `Switch ${n}`,
	switchUp: 'up',
	switchDown: 'down',
	choose: 'Choose…',
	benchOpen: 'Open the bench',
	benchDone: (n: number) => `${counted(n, 'thing', 'things')} done on the bench so far.`,
	benchAgain: 'Start it again',
	right: 'Right',
	wrong: 'Not right',
	partly: (part: number, of: number) => `${part} of ${of} right`,
	skipped: 'Not answered',
	gave: 'Your answer',
	key: 'Right answer',
	working: 'The working',
	why: 'Why',
	trail: 'What the rig says',
	trailNone: 'This rig can’t be opened here. Try it on the bench.',
	tryIt: 'Try it on the bench',
	score: (score: number, of: number) => `${score} of ${of}`,
	percent: (percent: number, pass: number) => `${percent} % right.${pass > 0 ? ` ${pass} % is a pass.` : ''}`,
	passed: 'Passed',
	notPassed: 'Not passed yet',
	done: 'Handed in',
	give: 'Give your result to your trainer',
	giveWays: 'Any one of these holds all of it. None is sent by itself.',
	resultLink: 'Link to your result',
	resultWhat: 'result',
	went: 'How it went',
	fresh: 'Take it again',
	freshAsk: 'This result is taken off this device. Give it to your trainer first.',
	freshDo: 'Start again',
	freshKeep: 'Keep it',
} as const;
