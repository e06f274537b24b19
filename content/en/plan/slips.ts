import { counted, locale } from '../locale/index.ts';
import { CREW_PANEL } from '../ui/index.ts';

const showing = (shows: string): string => (shows === '' ? '' : `, so it shows ${shows}`);

/** One thing to do at a panel, in words; a key by what its panel calls it. */
export const slipSteps = {
	tap: (key: string, times: number, shows: string) =>
		`${key}${times > 1 ? ` × ${times}` : ''}${shows === '' ? '' : ` → ${shows}`}`,
	hold: (key: string, until: string, again: boolean, shows: string) =>
		`Hold ${key} until it shows ${until}, let go. ${again ? 'Hold or tap' : 'Tap'} on to ${shows}`,
	unlock: (key: string, seconds: number, shows: string) =>
		`Hold ${key} for ${counted(seconds, 'second', 'seconds')} to unlock${showing(shows)}`,
	long: (key: string, seconds: number, shows: string) =>
		`Hold ${key} for ${counted(seconds, 'second', 'seconds')}${showing(shows)}`,
	switches: (up: readonly number[]) =>
		up.length === 0 ? 'All switches down' : `Switches up: ${up.join(' ')}. All others down`,
	slide: (title: string, to: string) => `Slide ‘${title}’ to ${to}`,
	power: 'Power switch on',
} as const;

export const slipWords = {
	lead: 'One prep slip for each fixture. The presses are worked out on the simulated panel. The real fixture’s manual and display come first.',
	/** Where a panel comes from: none is that of the real light. */
	panelFrom: {
		'stand-in':
			'Stand-in panel: these presses aren’t for the real one. Go by its manual, and set it where nobody is in front of it.',
		crew: CREW_PANEL,
		invented:
			'Invented fixture: your real panel differs. Go by its manual. Does its display, or its row of switches, look otherwise? Stop, press nothing more, and tell whoever is in charge.',
	},
	/** On the slip of a light that counts as on battery. */
	noCircuit:
		'No circuit is named, so it counts as on battery. To be plugged in? Name its circuit first, and print again',
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
		lead: 'whether it leads',
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
	nothingOut: 'Nothing in data out',
	desk: 'the desk',
	splitter: 'the splitter',
	nothingIn: 'nothing',
	battery: (hours: number) =>
		`Battery: about ${locale.number(hours, 1)} h by the sum, if charged full. Cold and age take more; watch its own display`,
	mains: (circuit: string) =>
		`${circuit === '' ? 'Mains' : `Mains, circuit ${circuit}`}. Supply off, link first, wall plug last`,
	/** Before anything of it is plugged in, to charge or to light. */
	volts: 'Label doesn’t name this supply’s volts? It stays unplugged',
	boxes: {
		charged: 'charged',
		set: 'set',
		off: 'supply off',
		hung: 'clamped',
		stood: 'placed',
		bond: 'safety bond (US: safety cable) on and checked',
		linked: 'data linked',
		linkedAll: 'mains and data linked',
		answers: 'answers',
	},
	notOverhead:
		'Planned as standing. If it hangs: the person responsible for rigging first, then two fixings, clamp and secondary bond.',
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
	of: (n: number, all: number) => `${n} of ${all}`,
	number: (n: number) => locale.number(n),
} as const;
