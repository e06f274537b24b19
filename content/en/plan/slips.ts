import { counted, locale } from '../locale/index.ts';
import { keyNames } from '../rig/index.ts';

type Key = keyof typeof keyNames;
const showing = (shows: string): string => (shows === '' ? '' : `, so it shows ${shows}`);

/** One thing to do at a panel, in words. */
export const slipSteps = {
	tap: (key: Key, times: number, shows: string) =>
		`${keyNames[key]}${times > 1 ? ` × ${times}` : ''}${shows === '' ? '' : ` → ${shows}`}`,
	hold: (key: Key, until: string, again: boolean, shows: string) =>
		`Hold ${keyNames[key]} until it shows ${until}, let go. ${again ? 'Hold or tap' : 'Tap'} on to ${shows}`,
	unlock: (seconds: number, shows: string) =>
		`Hold ${keyNames.set} for ${counted(seconds, 'second', 'seconds')} to unlock${showing(shows)}`,
	switches: (up: readonly number[]) =>
		up.length === 0 ? 'All switches down' : `Switches up: ${up.join(' ')}. All others down`,
	slide: (title: string, to: string) => `Slide ‘${title}’ to ${to}`,
	power: 'Power switch on',
} as const;

export const slipWords = {
	lead: 'One prep slip for each fixture. The presses are worked out on the simulated panel, and they’re the fewest a hand can be sure of.',
	from: 'Work from',
	fromDefaults: 'a fixture at its defaults',
	fromShown: 'what each panel shows now, where known',
	working: 'Working out the presses.',
	presses: (n: number) => counted(n, 'press', 'presses'),
	nothing: 'Nothing to press: it stands as planned.',
	none: 'No presses on this panel lead there. Change the plan.',
	cannot: (what: string) => `This panel can’t set: ${what}.`,
	settings: {
		mode: 'mode',
		loss: 'what it does when data stops',
		lock: 'the lock',
		address: 'start address',
		work: 'what it listens to',
	},
	keys: 'Press',
	switches: 'Switches',
	up: 'up',
	down: 'down',
	universe: (n: number) => `U${n}`,
	mode: 'Mode',
	role: { desk: 'Listens to the desk', leader: 'Leads the others', follower: 'Follows the leader' },
	dataFrom: (from: string) => `Data in from ${from}`,
	to: (to: string) => `Data out to ${to}`,
	end: 'Terminator in data out',
	desk: 'the desk',
	splitter: 'the splitter',
	nothingIn: 'nothing',
	battery: (hours: number) => `Battery: ${locale.number(hours, 1)} h at tonight’s look`,
	mains: (circuit: string) => (circuit === '' ? 'Mains' : `Mains, circuit ${circuit}`),
	boxes: { charged: 'charged', set: 'set', hung: 'hung', bond: 'bond first', linked: 'linked', answers: 'answers' },
	siteFirst: 'Local rules and the competent or licensed person on site come first.',
} as const;

export const printWords = {
	print: 'Print',
	paper: 'Prints on A4 and Letter, black only.',
	patchLead: 'What the desk is to have patched, in order of universe and start address.',
	patch: {
		number: 'No.',
		name: 'Name',
		unit: 'Fixture',
		mode: 'Mode',
		universe: 'Universe',
		start: 'Start',
		last: 'Last',
		place: 'Place',
		circuit: 'Circuit',
	},
	labelsLead: 'One label for each fixture, 62 by 29 mm. Cut along the lines.',
	of: (n: number, all: number) => `${n} of ${all}`,
	number: (n: number) => locale.number(n),
} as const;
