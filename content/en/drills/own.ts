import type { Says } from '../rig/index.ts';
import { CREW_PANEL } from '../ui/index.ts';

/** Drills on the crew's own fixtures: their page, and what each asks. */
export const ownDrills = {
	page: {
		title: 'Drills on your own fixtures: Prep Bay',
		description:
			'A task on a fixture of your own: an address, a mode, a static colour or a follower, made fresh each time and marked.',
		heading: 'On your own fixtures',
		lead: 'Pick one from your stock. Each go asks for something else, as far as its panel has it: an address, a static colour, a mode, or to follow a leader.',
	},
	/** On the page of all drills, before them. */
	first: 'Drills on your own fixtures',
	firstWhy: 'Tonight’s lights, from your stock: an address, a mode, a colour, a follower.',
	list: 'From your stock',
	none: 'There’s no fixture of your own here yet.',
	add: 'Add one from its manual',
	of: (name: string) => `A task on ${name}`,
	/** Where a panel comes from that isn't known whole. */
	panelFrom: {
		'stand-in':
			'Its panel here is a stand-in. What has to be set is by your chart, partly assumed. The presses aren’t the real one’s: go by its manual, before doors, with nobody in front of it.',
		crew: CREW_PANEL,
	},
	link: 'The address of this page holds the fixture and the task. Whoever opens it gets the same.',
	nothing: 'Nothing can be asked of this one: its panel sets no address, mode or colour.',
	another: 'Pick another fixture',
	failed: 'This link holds no fixture that can be read. Pick one of yours, or ask for the link again.',
	task: [
		{
			when: { goal: 'held' },
			says: '{fixture as name} is a {profile}. Have it show the static colour “{held as held}”, with no desk.',
		},
		{
			when: { goal: 'follow' },
			says: '{fixture as name} is a {profile}. Have it follow {leader as name}, which leads already: in mode “{mode as mode}”[, at start address {address}, where this kind listens].',
		},
		{ says: '{fixture as name} is a {profile}. Set it to start address {address}, in mode “{mode as mode}”.' },
	] satisfies Says,
} as const;

/** Tasks on the crew's own rig: its names, places and addresses. */
export const rigDrills = {
	of: (rig: string) => `Practice: a made-up task on ${rig}`,
	practice:
		'This is practice on a copy. Nothing here touches your lights, or says what your real panels show. Do it here, not at your lights.',
	nothing: 'Nothing can be asked of these panels: they set no address, mode or data source.',
	link: 'The address of this page holds the rig and the task. Whoever opens it gets the same.',
	failed: 'This link holds no rig that can be read. Start again from tonight’s rig.',
	another: 'Back to tonight’s rig',
	task: [
		{
			when: { goal: 'swapped' },
			says: 'Practice: {fixture as name} and {other as name} were mixed up: each has the other’s start address. Set {fixture as name} to {address}, and {other as name} to {otherAddress}.',
		},
		{
			when: { goal: 'mode' },
			says: 'Practice: {fixture as name} is in the wrong mode for the patch. Set it to mode “{mode as mode}”, and leave it at start address {address}.',
		},
		{
			when: { goal: 'listen', follows: true },
			says: 'Practice: {fixture as name} plays a look of its own. Have it follow the leader again, as the rest of the row does.',
		},
		{
			when: { goal: 'listen' },
			says: 'Practice: {fixture as name} plays a look of its own. Have it listen to the desk again, at start address {address}.',
		},
		{
			says: 'Practice: {fixture as name} isn’t where the patch has it. Set it to start address {address}, and leave it in mode “{mode as mode}”.',
		},
	] satisfies Says,
} as const;
