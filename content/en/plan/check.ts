import { counted, locale } from '../locale/index.ts';

/** Of every light that hangs, whatever else its card says. */
const FROM_FLOOR = 'From the floor only, no ladder for this.';

/** Rigs kept before a row was marked as taken from the bench don’t say so. */
const FROM_BENCH = 'Was the rig taken from the bench? Then look at each all the same.';

/** The rig against the desk: what panels show beside what the patch says. */
export const checkWords = {
	lead: 'Walk the row and look at each panel. What it shows is noted here beside the patch, and the prep slips can start from it.',
	leader: 'Nothing is patched: the row listens to its first fixture. Take a desk under ‘Plan’ to check against one.',
	none: 'No fixtures yet.',
	stand: 'You stand at',
	desk: 'the left end',
	far: 'the far end',
	progress: (done: number, all: number, off: number) =>
		`${locale.number(done)} of ${locale.number(all)} looked at, ${off === 0 ? 'none differs' : `${counted(off, 'differs', 'differ')}`}`,
	next: 'Next',
	walk: (metres: number) => `${locale.number(metres, 0)} m along from here`,
	at: (x: number, isUp: boolean) => `${locale.number(x, 1)} m from the left${isUp ? ', overhead' : ''}`,
	says: 'The patch says',
	address: 'start address',
	shows: (lines: string) => `Its display shows: ${lines}`,
	lookOnly:
		'Look only, and press nothing: on many panels a value acts as you step, and may flash. Can’t read it? Leave it for later.',
	standIn:
		'The panel here is a stand-in. Does the real one show its mode and start address? If not, leave it for later.',
	silent:
		'Look first, with no press. On the simulated panel its start address doesn’t show. The only reason to press is before doors, with the operator’s yes: say aloud that light may jump, with nobody in front of it. Then step to it in its menu, and come back out with nothing stored. If it asks for something, press nothing more, and tell the operator.',
	silentUp: `${FROM_FLOOR} On the simulated panel its start address doesn’t show as it hangs. Yours neither? Leave it for later.`,
	overhead: `${FROM_FLOOR} What can’t be read is left for later.`,
	same: 'As it says',
	other: 'Something else',
	later: 'Leave it for now',
	mode: 'Mode it shows',
	start: 'Start address it shows',
	startHint: 'From 1 to 512.',
	startBad: 'Type a whole number from 1 to 512.',
	keep: 'Note it',
	back: 'Back',
	noted: (name: string, shows: string) => `${name}: noted ${shows}.`,
	all: `All looked at. ${FROM_BENCH}`,
	allSame: `Every panel is noted as the patch says. This says nothing of cables, power or how it hangs. ${FROM_BENCH}`,
	left: (count: number) => `${counted(count, 'fixture', 'fixtures')} left for later.`,
	leftDo: 'Go back to those',
	again: 'Check all again',
	off: 'What differs',
	offNone: 'Nothing so far.',
	pair: (mode: string, address: string) => `${address} in ${mode}`,
	it: (shows: string, says: string) => `Shows ${shows}. The patch has ${says}.`,
	hears: (universe: number, from: number, to: number) =>
		from === to
			? `It answers to channel ${from} of universe ${universe}.`
			: `It answers to channels ${from} to ${to} of universe ${universe}.`,
	runsOut: 'Its last channels are past 512: no desk reaches those.',
	own: {
		all: 'All its own channels on the desk reach it.',
		some: 'Only some of its own channels on the desk reach it.',
		none: 'Its own channels on the desk don’t reach it.',
	},
	movedBy: (names: readonly string[]) => `It moves when ${locale.list(names)} is brought up.`,
	alone: 'No other light on this plan has channels that reach it.',
	right: 'Put it right',
	presses: (count: number) => `On the simulated panel: ${counted(count, 'press', 'presses')}`,
	before: 'Ask the operator first. The light may jump or flash: nobody in front of it.',
	hangs:
		'It hangs: no presses up there. The rigger says who brings it down first, with the supply off and nobody below. Or change the patch, if the operator agrees.',
	noWay: 'No presses on this panel lead there. Change the plan, or the fixture.',
	working: 'Working out the presses.',
	isRight: 'It shows the patch now',
	look: (name: string) => `Look again: ${name}`,
	lookDo: 'Look again',
	others: 'As the patch says',
} as const;
