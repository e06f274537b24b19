import { counted, locale } from '../locale/index.ts';

/** Each step at the lights, as it is ticked. */
export const stepNames = {
	charged: 'Charged',
	mode: 'Mode set',
	address: 'Start address set',
	off: 'Supply off',
	hung: 'Hung and clamped',
	bond: 'Second fixing: safety bond (US: safety cable) on and checked',
	placed: 'Placed',
	linked: 'Linked',
	lit: 'Lit',
} as const;

/** The same in a word or two, where there is little room. */
export const stepShort = {
	charged: 'charge',
	mode: 'mode',
	address: 'start address',
	off: 'supply off',
	hung: 'hang',
	bond: 'second fixing',
	placed: 'place',
	linked: 'link',
	lit: 'lit',
} as const;

export const warningWords = {
	bond: 'The second fixing isn’t ticked. Clear the floor below, then see that the safety bond (US: safety cable) is on, before anything else.',
	supply:
		'The supply isn’t ticked as off, or a light on it is ticked as lit. Supply off and wall plug out before you touch a mains link, and nobody else can put it back.',
} as const;

/** A warning with the fixture that it is about, where that stands apart from its card. */
export const warningOf = (name: string, warning: string): string => `${name}: ${warning}`;

export const tickWords = {
	lead: 'Tick each step as it’s done, along the room. Ticks stay on this phone until you send them.',
	walk: 'Local rules and the competent or licensed person come first. Then: charge all, set all, supply off, put up and link, light.',
	initialsAsk: 'Your initials',
	initialsHint: 'One to four letters. They stand with each tick, and go with the ticks you send.',
	initialsBad: 'Type one to four letters, such as AB.',
	initialsDo: 'Start ticking',
	initialsNot: 'This browser keeps nothing. Your initials and ticks go when the page closes: send them before that.',
	as: (who: string) => `Ticking as ${who}.`,
	change: 'Change initials',
	next: 'Next',
	allDone: 'All ticked. That’s no sign-off: look at clamps and bonds (US: safety cables) again before doors.',
	none: 'No fixtures yet. Add some under Plan.',
	tick: 'Tick',
	goTo: 'Show it',
	tickOne: (step: string, name: string) => `Tick: ${step}, ${name}`,
	goToOne: (name: string) => `Show it: ${name}`,
	later: 'Later',
	laterOne: (step: string, name: string) => `Leave for later: ${step}, ${name}`,
	ticked: (step: string, name: string) => `Ticked: ${step}, ${name}.`,
	unticked: (step: string, name: string) => `Unticked: ${step}, ${name}.`,
	progress: (done: number, all: number) => `${locale.number(done)} of ${locale.number(all)} steps done`,
	of: (done: number, all: number) => `${locale.number(done)} of ${locale.number(all)}`,
	allOf: 'all done',
	byAt: (who: string, when: string) => `${who}, ${when}`,
	stale: 'Ticked, and the plan has changed since. Do it again.',
	staleUp:
		'Ticked, and the plan has changed since. Do it again. If it hangs, bring it down first: whoever’s in charge of it, supply off, nobody below.',
	litSince: 'Ticked as lit since: take it as live.',
	split: 'Said differently. Take it as not done: look, then tick or untick.',
	isDone: 'It’s done',
	isNot: 'It’s not done',
	saidOn: (who: string, when: string) => `Done, says ${who}, ${when}`,
	saidOff: (who: string, when: string) => `Not done, says ${who}, ${when}`,
	details: {
		desk: 'the desk',
		split: 'the splitter',
		supply: 'wall plug out, and nobody else can put it back',
		mains: 'supply off, wall plug last',
		in: (from: string) => `data in from ${from}`,
		out: (to: string) => `data out to ${to}`,
		end: 'terminator in data out',
		leads: 'it leads: nothing in',
		mainsLit: 'say aloud that it’s coming; wall plug in last, then supply on',
		batteryLit: 'say aloud that it’s coming',
	},
	note: 'Note',
	noteFor: (name: string) => `Note: ${name}`,
	noteDo: 'Keep the note',
	noteHint: 'What is wrong with it, or what fixed it. Up to 500 letters.',
	noteLong: 'That’s too long. Keep it to 500 letters.',
	noted: 'Note kept.',
	notes: 'Two people wrote. Keep one note to replace both.',
	dark: 'It won’t come on',
	darkOne: (name: string) => `It won’t come on: find the fault of ${name}`,
	back: 'Once it’s fixed, the finder offers to note here what it was.',
	found: {
		title: (name: string) => `The finder, on ${name}`,
		likely: (was: string) => `most likely ${was}`,
		note: (was: string, repair: string | null) => `It was: ${was}.${repair ? ` What fixed it: ${repair}.` : ''}`,
		noteIt: 'Note it',
		noteLit: 'Note it and tick ‘Lit’',
		litHint: 'Tick ‘Lit’ if you’ve seen it come on.',
		swapped: (name: string) =>
			`${name} is another fixture now, so its ticks go. Before it’s lit again, look at each step, clamp and second fixing first if it hangs.`,
		handled: (name: string, steps: readonly string[]) =>
			`Hands were at ${name}, so these ticks go: ${locale.list(steps)}. Look at each again before you tick it.`,
		others: 'If anything else came down, or was moved or unplugged, untick that too.',
		circuit: (name: string) => `Which circuit is ${name} on now?`,
		/** @param circuit empty where none is known */
		circuitHint: (circuit: string) =>
			circuit === ''
				? 'Ask the electrician. Left empty, it counts as on a circuit that nobody knows: any of the others may be it.'
				: `Ask the electrician. Left empty, its amps still count on circuit ${circuit}.`,
		circuitUnknown: 'Nobody knows its circuit yet: count its amps as on no named circuit',
		leave: 'Leave it',
		full: 'There’s no room left in its note. Shorten that first.',
		asks: {
			light: (name: string, planned: string) =>
				`The plan has ${name} at ${planned}. Read the light’s own display, from the floor: no ladder for this. Press nothing: on many panels a value acts as you scroll past it. Which changes, the plan or the light?`,
			desk: (name: string, planned: string) =>
				`The plan has ${name} at ${planned}. Read the desk’s patch. Which changes, the plan or the desk?`,
		},
		address: { light: 'Start address on the light', desk: 'Start address at the desk' },
		ifChanged: (problem: string) => `If the plan changes: ${problem}`,
		lightChanges: { light: 'The light: back to its fix', desk: 'The desk: back to its fix' },
		planChanges: (to: string) => `The plan: put it at ${to}`,
		planChanged: (was: string, to: string) => `The finder: ${was}. The plan was changed to ${to}.`,
		after: {
			light:
				'If the plan changes, the desk’s patch has to match it, and the label too. Ask the operator first if people are in the room: lights may jump.',
			desk: 'If the plan changes, the light has to be set to match it, and the label too. Ask the operator first if people are in the room: lights may jump.',
		},
	},
	send: 'Send ticks and plan',
	bring: 'Bring in ticks from a file',
	brought: (n: number, by: readonly string[]) =>
		n === 0
			? 'Nothing new: these ticks were here already.'
			: `${counted(n, 'new tick or note', 'new ticks and notes')} came in from ${locale.list(by)}.`,
	broughtNot:
		'The ticks couldn’t be kept: there’s no room on this device. Make room, then open the link or file again.',
	otherPlan: 'What you opened has another version of the plan. This is the one on this device.',
	usePlan: 'Use the other plan',
	usedPlan: 'Changed to the other plan. Undo brings yours back.',
	otherRig: 'That file is of another rig. Open it under ‘Another rig’.',
	badFile: 'That file holds no ticks of a rig. Save one under ‘Send ticks and plan’ on the other phone, and open that.',
	kept: {
		full: 'There’s no room left on this device. Send your ticks now, or they go when the page closes.',
		refused: 'This browser keeps nothing. Send your ticks now, or they go when the page closes.',
		newer:
			'A newer version of Prep Bay made the ticks here. They’re left as they are. Load this page again to get the newest version.',
	},
	gone: (n: number) =>
		`${counted(n, 'fixture', 'fixtures')} with ticks or notes ${n === 1 ? 'is' : 'are'} no longer on the plan. What was ticked is kept.`,
} as const;
