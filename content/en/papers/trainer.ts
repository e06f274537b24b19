/** The words around the trainer's page: setting a quiz, results, and what they tell. */
import { counted, locale } from '../locale/index.ts';
import { paperWords } from './screens.ts';

/** The trainer's page. */
export const trainerWords = {
	parts: {
		build: 'Set a quiz',
		give: 'Give it out',
		gather: 'Collect results',
		learn: 'What it shows',
		keep: 'Kept here',
	},
	partsLabel: 'On this page',
	title: 'What it’s called',
	titleNone: 'Give the quiz a name, so that people know which one it is.',
	titleFirst: 'A quiz for the crew',
	about: 'What it’s about',
	aboutWays: { fixtures: 'Fixtures', rig: 'A rig of the hall', own: 'Our own rig' },
	ownFixtures: 'Fixtures from your stock',
	ownHint: 'They go with the quiz, so whoever takes it needs no stock of their own.',
	ownPicked:
		'Questions ask about their charts, channels and start addresses only. Their panels are stand-ins, and their power and light are partly assumed.',
	unseen: {
		// the list of words in `content/en/invent`
		id: 'en-1',
		legend: 'Charts nobody has seen',
		name: 'A new fixture for each chart',
		hint: 'We make one up for each question about a chart, so nobody can know it by heart. If you pick fixtures too, they take turns.',
	},
	fixtures: 'Fixtures',
	fixturesHint: 'With none picked, all of them.',
	rig: 'Rig',
	paste: 'A rig sheet, or a link to a bench',
	pasteUse: 'Use this rig',
	pasteEmpty: 'Paste the text of a rig sheet, or a link that a bench made.',
	ownIs: (name: string, n: number) => `${name}, ${counted(n, 'fixture', 'fixtures')}`,
	topics: 'Topics',
	topicsHint: 'With none picked, all of them.',
	kinds: 'Kinds of question',
	kindsHint: 'With none picked, all that fit but hexadecimal.',
	kindsHintAll: 'With none picked, all that fit.',
	kindsOpen: (n: number, of: number) => (n === 0 ? `All ${of} that fit` : `${n} of ${of} picked`),
	kindRig: 'on the rig',
	kindsNone: 'No kind of question fits these topics and fixtures. Pick other topics, or more fixtures.',
	count: 'Questions',
	countHint: 'From 1 to 100.',
	levels: 'How hard',
	levelsHint: 'Those picked are taken in turn.',
	minutes: 'Minutes',
	minutesHint: 'Leave it empty for no limit.',
	pass: 'Percent to pass',
	passHint: 'From 0 to 100.',
	order: 'Order',
	orders: { mixed: 'Mixed', 'by-topic': 'By topic', 'easy-first': 'Easy first' },
	feedback: 'Tell the learner',
	feedbacks: { end: 'At the end', each: 'After each question' },
	number: (least: number, most: number) => `Type a whole number from ${least} to ${most}.`,
	preview: 'How it looks',
	previewOf: (shown: number, of: number) => (shown < of ? `The first ${shown} of ${of}` : `All ${of}`),
	previewMore: 'Show all',
	previewFewer: 'Show fewer',
	key: 'Show the answers',
	another: 'Another set',
	anotherHint: 'Other questions of the same kinds, just as hard.',
	notSet: 'Pick what it asks, or leave it as it is. Every answer is worked out as the quiz is set.',
	setIt: 'Set the quiz',
	setting: 'Setting the quiz…',
	isSet: (title: string, n: number, seed: number) => `${title}: ${counted(n, 'question', 'questions')}, set ${seed}.`,
	seed: (n: number) => `Set ${n}`,
	formShort: { number: 'A number to type.', switches: 'Switches to set.', practical: 'Done on the bench.' },
	right: 'Right',
	giveLead: 'Whoever has this link has the whole quiz: it works with no network once the page has been opened there.',
	giveUnset: 'Set the quiz above, then it can be given out.',
	giveNot: 'Fix the quiz above, then it can be given out.',
	link: 'Link to the quiz',
	linkWhat: 'quiz',
	linkLong: (n: number) => `This link has ${n} characters. Some phones cut long links: use the file.`,
	open: 'Open it as a learner',
	print: 'Print it',
	gatherLead: 'Open a result’s link on this device, or bring results in here. Each is marked again from its answers.',
	drop: 'Drop result files here',
	choose: 'Choose files',
	chooseHint: 'Results, quizzes, or pictures of QR codes. Several at once will do.',
	pasteResults: 'Paste links or the text of results',
	take: 'Take them in',
	taking: 'Reading…',
	took: (n: number) => `${counted(n, 'result', 'results')} taken in.`,
	hadAlready: (n: number) => `${counted(n, 'result was', 'results were')} here already.`,
	notRead: (n: number) => `${counted(n, 'piece', 'pieces')} couldn’t be read.`,
	alike: (first: string, more: number) => `${first}, and ${more} more like it`,
	leftOut: (n: number) => `${n} more couldn’t be read, each in another way.`,
	tookNone: 'Nothing was taken in.',
	tookPaper: (title: string) => `‘${title}’ is a quiz, and is kept with the others.`,
	refused: 'Couldn’t be read',
	paper: 'Quiz',
	paperOf: (title: string, set: number, n: number) => `${title}, set ${set}: ${counted(n, 'result', 'results')}`,
	noResults: 'No results here yet. They appear as soon as one is taken in.',
	table: 'The class',
	who: 'Who',
	nameless: 'No name',
	scoreHead: 'Score',
	passHead: 'Passed',
	yes: 'yes',
	no: 'not yet',
	when: 'Handed in',
	took2: 'Took',
	minutes2: (n: number) => paperWords.minutes(n),
	unset: 'No quiz for these',
	notes: 'Notes',
	tryOf: (n: number) => `Try ${n}`,
	flag: 'Doesn’t fit',
	whole: 'Who had which right',
	remove: 'Remove',
	removeOne: (who: string) => `Remove the result of ${who}`,
	removeAsk: (who: string) => `Remove the result of ${who}?`,
	removeWords: 'It’s deleted from this device for good. Save it to a file first if it may be wanted.',
	removeDo: 'Delete it',
	removeKeep: 'Keep it',
	rename: (who: string) => `Name for ${who}`,
	learnNoneFits:
		'None of the results of this quiz is counted. The reasons stand below: count any of them with one tap.',
	learnNone: 'With two results or more of one quiz, this shows what to go over again.',
	plotScores: 'How the scores lie',
	plotScoresAlt: (words: string) => `A bar for each tenth of the score. ${words}`,
	plotBand: (from: number, to: number, n: number) => `${from} to ${to} %: ${n}`,
	perQuestion: 'Each question',
	perTopic: 'Each topic',
	perPerson: 'Each person',
	question: 'Question',
	share: 'Right',
	told: 'Tells apart',
	next: 'What to set next',
	nextWhy: (topics: string) => `Most was missed on ${topics}. This quiz asks after that, with new questions.`,
	nextWhyKinds: 'Some kinds of question were missed. This quiz asks after those, with new questions.',
	nextNone: 'Nothing stands out as missed. A harder quiz, or other fixtures, may be the next step.',
	nextDo: 'Set that quiz',
	nextTitle: (title: string) => `${title}: again`.slice(0, 60),
	keepLead: 'Everything stays on this device until you delete it.',
	keeps: (papers: number, results: number) =>
		`${counted(papers, 'quiz', 'quizzes')} and ${counted(results, 'result', 'results')} are kept here.`,
	notKept: 'This device keeps nothing for this page. What you do here is gone when it closes: save it to a file.',
	asideSay: (n: number) =>
		`${counted(n, 'entry', 'entries')} kept here couldn’t be read and ${locale.plural(n, 'is', 'are')} set aside. The rest is all there. You can save or delete what is set aside on the page ‘Kept on this device’.`,
	exportAll: 'Save everything to a file',
	exportAs: {
		csv: 'The table as CSV',
		'qti-3': 'Questions as QTI 3.0',
		'qti-2': 'Questions as QTI 2.2',
		xapi: 'Results as xAPI',
	},
	exportHint:
		'QTI is for a learning platform. xAPI is for a record store of your own, and names go with it. Questions on the bench stay out of QTI. Nothing is sent: each is a file.',
	importHow: 'To bring a saved file back, choose it under ‘Collect results’.',
	saved: 'The file is saved.',
	exports: 'For this quiz',
	papers: 'Quizzes',
	paperAgain: 'Take it up again',
	paperAgainOne: (title: string) => `Take it up again: ${title}`,
	paperDelete: 'Delete',
	paperDeleteOne: (title: string) => `Delete: ${title}`,
	paperDeleteAsk: (title: string) => `Delete ‘${title}’?`,
	paperDeleteWords: (n: number) =>
		n === 0
			? 'The quiz is deleted from this device for good.'
			: `The quiz and ${counted(n, 'result', 'results')} of it are deleted from this device for good.`,
	clear: 'Delete everything',
	clearAsk: 'Delete all quizzes and results?',
	clearWords: 'All of it is gone from this device for good. Save it to a file first if it may be wanted.',
	clearDo: 'Delete all of it',
	deleted: 'Deleted.',
	pasted: 'What was pasted',
	differs: 'Another result with the same number is here already, and this one isn’t the same. The first one was kept.',
	allFile: 'quizzes and results',
} as const;

const percent = (share: number): number => Math.round(share * 100);
const two = (figure: number): string => locale.number(figure, 2).replace('-', '\u2212');

/** What the figures say, in plain sentences. Limits stand where they are used, in `shared/paper/analyse.ts` and `src/features/papers/trainer/learn.ts`. */
export const learnWords = {
	people: (n: number) => `${counted(n, 'person', 'people')} counted.`,
	leftOut: (n: number) =>
		`${counted(n, 'result is', 'results are')} left out here. ${locale.plural(n, 'It is', 'They are')} listed below, with the reason.`,
	leftOutHead: 'Not counted',
	leftOutLead: 'Count any of these with one tap. Leave one out again in the table above.',
	whichOf: (person: number, of: number) => `${person} of ${of}`,
	whichTry: (n: number) => `try ${n}`,
	told: (name: string, which: string) => `${name} (${which})`,
	/** Said of a result that counts, where that is not plain. */
	counted: {
		'in-place': 'Counted in place of an earlier try that doesn’t fit.',
		'by-hand': 'You counted this one.',
	},
	namesakes: (n: number) =>
		`One of ${n} people of this name: they were at it at the same time. Type a fuller name to tell them apart.`,
	/** Why a result does not count. */
	notCounted: {
		misfit: 'Something in it doesn’t fit. Its notes in the table say what.',
		'later-try': 'Another result of this name counts. Is this somebody else of the same name? Then count it too.',
		copy: 'It was begun at the same moment as another of this name. It may be a copy.',
		'by-hand': 'You left this one out.',
	},
	count: 'Count it',
	countOne: (who: string) => `Count it: the result of ${who}`,
	leave: 'Leave it out',
	leaveOne: (who: string) => `Leave it out: the result of ${who}`,
	mean: (mean: number, passed: number, of: number) => `${percent(mean)} % right on average. ${passed} of ${of} passed.`,
	kr20: 'How steady the quiz is',
	kr20Says: (figure: number, low: number, high: number) =>
		`KR-20 is ${two(figure)}; with so many people it may be anywhere from ${two(low)} to ${two(high)}.`,
	kr20Alone: (figure: number) => `KR-20 is ${two(figure)}. With so few people its interval can’t be told.`,
	/** @param people where it may be chance; null where it is no chance */
	kr20Below: (figure: number, people: number | null) =>
		`People who did well on one half did no better on the other (KR-20 ${two(figure)}).${people === null ? '' : ` With ${counted(people, 'person', 'people')} it may be chance.`}`,
	kr20None: 'KR-20 can’t be told yet: it takes two people or more, and scores that differ.',
	kr20Means: {
		firm: 'A second quiz like it would rank people much the same. You can go by single scores.',
		fair: 'Good enough to steer what you teach next. For a judgement on one person, ask more.',
		weak: 'Too loose to judge anyone by. More questions, or clearer ones, would firm it up.',
	},
	/** @param questions whole, 1 and more */
	again: (questions: number) =>
		`On a second quiz just as hard, at least two people in three would come within ${counted(questions, 'question', 'questions')} of the score they have here.`,
	right: (right: number, of: number, low: number, high: number) =>
		`${right} of ${of} had it right. Of all people like these, anything from ${percent(low)} to ${percent(high)} % may know it (95 in 100).`,
	discrimination: (figure: number) =>
		figure >= 0
			? `Of the strongest, ${percent(figure)} in 100 more had it right than of the weakest (discrimination ${two(figure)}).`
			: `Of the weakest, ${percent(-figure)} in 100 more had it right than of the strongest (discrimination ${two(figure)}).`,
	discriminationNone: 'The strongest can’t be set against the weakest: it takes four people, and scores that differ.',
	biserial: (figure: number) =>
		figure >= 0.3
			? `Who had it right tended to do well elsewhere (point-biserial ${two(figure)}).`
			: figure >= 0.1
				? `Having it right went a little with doing well elsewhere (point-biserial ${two(figure)}).`
				: figure > -0.1
					? `Having it right didn’t go with doing well elsewhere (point-biserial ${two(figure)}).`
					: `Who had it right tended to do worse elsewhere (point-biserial ${two(figure)}).`,
	biserialNone: 'All had it right, or all wrong, or all scored alike: so it tells nobody apart.',
	findings: {
		'too-few': 'Too few to judge the question by',
		'upside-down': 'Look at this question',
		'too-easy': 'Easy for this crew',
		'too-hard': 'Hard for this crew',
		'tells-little': 'Tells little',
		sound: 'Good',
	},
	hint: (people: number) =>
		`With ${counted(people, 'person', 'people')}, take what is said of a question as a hint, not a verdict: chance alone can make a good one look wrong.`,
	findingSays: {
		'too-few': 'With ten people or more it can be said whether the question itself is good.',
		'upside-down': 'The stronger people got it wrong. It may be read another way than it was meant.',
		'too-easy': 'Nearly all had it right: a warm-up, or time to ask something harder.',
		'too-hard': 'Nearly all had it wrong: teach it again before you ask it again.',
		'tells-little': 'Right or wrong hardly goes with the rest of the quiz.',
		sound: 'It tells those who can from those who can’t yet.',
	},
	drew: (answer: string, n: number, names: string) => `${answer}: ${n} (${names})`,
	drewNone: 'Not answered',
	drewHead: 'Wrong answers, and who gave them',
	more: (n: number) => `and ${n} more`,
	topic: (right: number, of: number) => `${right} of ${of} right`,
	/** Why a topic's bar has no line. */
	topicShort: {
		questions: 'Too few questions on it to tell: ask more.',
		people: 'Too few people to tell.',
	},
	topicOf: (name: string, right: number, of: number) => `${name} (${right} of ${of} right)`,
	weakest: (topics: string) => `Go over ${topics}.`,
	/** Missed, but a person who knows the topic well enough could have missed as much. */
	weakFew: (topics: string) => `Some missed, too few questions to tell: ${topics}.`,
	strong: 'Nothing stands out.',
	score: (score: number, of: number, percentRight: number) => `${score} of ${of} (${percentRight} %)`,
	topicFirst:
		'Weakest first. The line is where the true share may lie for people like these and questions like these (95 in 100). No line: too little to tell.',
	bars: 'The bar is the share right; the line through it is where the true share may lie (95 in 100).',
} as const;
