import { counted, locale } from '../locale/index.ts';

export const changeWords = {
	heading: 'What changed',
	none: 'Nothing’s printed or ticked yet, so no sheet is wrong. Once you print or tick, what you change after that is listed here.',
	same: 'Nothing changed since sheets were printed or lights ticked. Every sheet from then is right.',
	since: 'Since sheets were printed, or the first light was ticked:',
	swapHeading: 'Swap a light for a spare',
	swapWords:
		'The spare takes its name, place and circuit, and its start address where a mode fits there. No other light changes. Its weight, clamp and watts may differ. Ask the rigger and the electrician (US: licensed electrician or qualified person) first.',
	which: 'Which light?',
	spare: 'For which spare?',
	mode: 'In which mode?',
	modeFits: 'one that fits there',
	swap: 'Swap it',
	swapped: (name: string, unit: string, mode: string, address: string) =>
		`Swapped: ${name} is a ${unit} now, ${mode}, start address ${address}. Undo brings the old one back.`,
	more: 'Add a light, or take one off, under Plan.',
	lights: 'At the lights. In a show, ask the operator first',
	light: (name: string, unit: string) => `${name} (${unit})`,
	is: {
		new: 'New',
		gone: 'Off the plan',
		swap: 'Swapped',
		change: 'Changed',
	},
	/** What is to be done at one light. */
	does: {
		down: 'Supply and wall plug out first, nobody below, the rigger’s word. Take it down: safety bond (US: safety cable) off last.',
		away: 'On the mains: supply off and wall plug out first. Then take it away.',
		charge: 'Charge it.',
		hang: 'On the mains: supply off and wall plug out first. Clear the floor below. Hang it where the rigger says: clamp, then second fixing (safety bond; US: safety cable) at once.',
		place: 'On the mains: supply off and wall plug out first. Place it.',
		lower: 'It hangs: lower it first, supply off, nobody below. The competent person says who may climb.',
		battery: 'On the mains: supply off and wall plug out first. It runs on its battery now: charge it.',
		moveUp: (x: string) => `Supply off, nobody below. Then move it to ${x}, overhead.`,
		move: (x: string) => `On the mains: supply off first. Then move it to ${x}, standing.`,
		set: (what: string) => `Set ${what}.`,
		link: 'On the mains: supply off first. Link it, wall plug last.',
		circuit: (circuit: string) => `Supply off first. Then feed it from circuit ${circuit}, wall plug last.`,
		noCircuit: 'Supply off. It has no circuit any more: ask the electrician what feeds it.',
		unknownCircuit: 'Supply off first. Nobody knows its circuit yet: ask the electrician what feeds it.',
		wires: 'Its settings and place stay. See the cables and sheets below.',
	},
	setting: {
		mode: (mode: string) => `mode ${mode}`,
		address: (address: string, was: string | null) =>
			was === null ? `start address ${address}` : `start address ${address} (was ${was})`,
		work: 'what it listens to',
		lead: 'whether it leads',
		loss: 'what it does when data stops',
		lock: 'the lock',
	},
	cables: 'Data cables',
	pull: (from: string, to: string, length: number) => `Take out: ${from} to ${to}, ${locale.number(length, 0)} m`,
	run: (from: string, to: string, length: number) => `Run: ${from} to ${to}, ${locale.number(length, 0)} m`,
	bring: (lengths: readonly number[]) =>
		lengths.length === 0
			? 'The cables you take out are enough.'
			: `Bring ${locale.list(lengths.map((length) => `${locale.number(length, 0)} m`))}. For the rest, use what you take out.`,
	unterminate: (name: string) => `Terminator out of ${name}`,
	terminate: (name: string) => `Terminator into data out of ${name}`,
	desk: (universe: number) => `the desk, universe ${universe}`,
	split: (universe: number) => `the splitter, universe ${universe}`,
	sheets: 'Sheets that are wrong now',
	sheetsNone: 'None: prep slips and labels are still right.',
	slips: (n: number) => counted(n, 'prep slip', 'prep slips'),
	labels: (n: number) => counted(n, 'label', 'labels'),
	patch: 'The patch list is wrong too. Print it again under Patch list.',
	renumbered: (n: number) =>
		`${counted(n, 'more light has', 'more lights have')} another number in the list. Names and start addresses on those sheets are still right.`,
	throwAway: 'Throw the old ones away, so that nobody works from them.',
	fromBefore:
		'A light that stayed begins from what its panel was set to before, a new or swapped one from its defaults. If a panel shows something else, use its prep slip under Prep slips.',
	done: 'Lights and sheets are as planned now',
	doneWords: 'Press this once all of it is done. What you change after that makes a new list.',
	markHeading: 'Is this sheet old?',
	markAsk: 'Mark on the sheet',
	markHint: 'Five letters and digits, printed on each prep slip, label and list.',
	markDo: 'Check the mark',
	markBad: 'Type the five letters and digits of the mark.',
	verdict: {
		current: (what: string) => `It’s up to date: ${what}.`,
		old: (what: string) => `It’s old: ${what}, as it was before. Don’t work from it. Print it again.`,
		unknown:
			'No sheet of this rig as it stands has that mark. It’s old, of another rig, or mistyped. Don’t work from it. Print it again.',
	},
	sheet: {
		slip: (name: string) => `the prep slip of ${name}`,
		label: (name: string) => `the label of ${name}`,
		cable: (name: string) => `the labels of the cable to ${name}`,
		patch: () => 'the patch list',
		line: () => 'the line plan',
		load: () => 'the load sheet',
		charge: () => 'the charge plan',
		whole: () => 'the page of cautions for these prep slips',
	},
	mark: (mark: string) => `Mark ${mark}`,
} as const;
