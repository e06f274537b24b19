import type { Says } from '../rig/index.ts';

export interface DrillSays {
	readonly title: string;
	/** What to do, filled from the drill's facts. */
	readonly task: Says;
	/** Why it matters at a gig, in one sentence. */
	readonly why: string;
}

/** Every kind of drill, by its id. */
export const drills = {
	'address-keys': {
		title: 'One address, by keys',
		task: 'Set {fixture as name} to start address {address}, at its own panel. It’s at {from} now, in mode “{mode as mode}”, which stays.',
		why: 'A fixture at the wrong address does some other fixture’s cue in front of everybody.',
	},
	'address-dip': {
		title: 'One address, by switches',
		task: 'Set the switches of {fixture as name} so that it obeys the line from start address {address}. Its slides stay as they are.',
		why: 'Older stock still turns up, and one switch out of place shifts every colour to somebody else’s channel.',
	},
	'held-colour': {
		title: 'A static colour',
		task: 'Have {fixture as name} show the static colour “{held as held}”, with no desk.',
		why: 'When the desk is late, a static colour lights the room for the crew and for doors.',
	},
	'loss-setting': {
		title: 'What it does on signal loss',
		task: [
			{ when: { loss: 'hold' }, says: 'Set {fixture as name} so that it keeps its last look on signal loss.' },
			{ when: { loss: 'dark' }, says: 'Set {fixture as name} so that it goes dark on signal loss.' },
			{ says: 'Set {fixture as name} so that it runs its own programme on signal loss.' },
		],
		why: 'A cable will be kicked out one night, and this decides what the audience sees then.',
	},
	'mains-row': {
		title: 'Power along a row',
		task: '{fixtures as names} stand in that order. With the supply off, plug each but the first into the mains link of the one before it; if a plug is in the wall, that comes out first. The first goes into the wall last, and all end up on.',
		why: 'A row is linked with its supply off, and fed in order from one plug that anyone can find in the dark.',
	},
	'mode-address': {
		title: 'Mode, then address',
		task: 'Put {fixture as name} into mode “{mode as mode}” ({footprint} {footprint?channel|channels}) at start address {address}. It’s in mode “{fromMode as mode}” at {from} now.',
		why: 'The desk’s patch names a mode and an address, and both have to be true before one fader works.',
	},
	'dip-colour': {
		title: 'A colour by switches',
		task: [
			{
				when: { does: 'held' },
				says: 'Set the switches of {fixture as name} so that it shows the static colour “{held as held}” and leads nobody.',
			},
			{
				says: 'Set the switches of {fixture as name} so that it runs “{programme as programme}” at speed {speed} of 100 by itself and leads nobody.',
			},
		],
		why: 'With no desk in the room, ten switches are the only way to tell an old fixture what to show.',
	},
	'programme-speed': {
		title: 'A programme and its speed',
		task: 'Have {fixture as name} run its own programme “{programme as programme}” at speed {speed} of 100.',
		why: 'A bar with no operator still wants light that moves, at the pace the client asked for.',
	},
	'locked-address': {
		title: 'An address behind a lock',
		task: 'The panel of {fixture as name} is locked. Set start address {address}; it’s at {from} now. Holding Set for {seconds} {seconds?second|seconds} opens the panel.',
		why: 'Panels are locked against passing hands, and the next hand is yours with doors in ten minutes.',
	},
	'cable-missing': {
		title: 'A line that stops on the way',
		task: 'The desk drives {fixtures as names}, one after another, and something is wrong with the line. Find it and fix it, so that each of them hears the desk over good data cables.',
		why: 'One bad cable darkens everything after it, and the quickest fix is the one that leaves the rest alone.',
	},
	'past-512': {
		title: 'A footprint past the end',
		task: [
			{
				when: { where: 'highest' },
				says: '{fixture as name} is at {from} with {footprint} channels, so its last would be channel {last}. Move it to the highest start address at which all of it fits[, clear of {neighbours as names}].',
			},
			{
				says: '{fixture as name} is at {from} with {footprint} channels, so its last would be channel {last}. Move it to any start address at which all of it fits[, clear of {neighbours as names}].',
			},
		],
		why: 'A universe ends at channel 512, and what lies past it never hears a thing.',
	},
	'desk-percent': {
		title: 'A colour at a percent, by desk',
		task: 'From the desk, have {fixture as name} show {emitters as emitters} and nothing else, at {percent as percent}. Where its mode has an intensity, that is at {percent as percent} and the {emitters?colour|colours} at full.',
		why: 'Directors ask in percent and desks take values, and a hand who knows both is quick.',
	},
	'sensors-audience': {
		title: 'Sensors away from the audience',
		task: 'Shut the remote sensors of {shut as names}, which face the audience. Have those of {open as names} open.',
		why: 'Anybody in the audience with a remote can play your rig while its sensors listen.',
	},
	'row-as-one': {
		title: 'A row that moves as one',
		task: 'Have {fixtures as names} all obey the desk in mode “{mode as mode}” at start address {address}. Then one set of faders moves them together.',
		why: 'A wash of one colour wants one address: fewer channels, and no fixture out of step.',
	},
	'row-back-to-back': {
		title: 'A row back to back',
		task: '{fixtures as names} stand in that order, with {footprints as counts} channels. Address them back to back from channel {first}, each right after the last channel of the one before.',
		why: 'Addresses without gaps or overlaps give each fixture its own faders and waste no channel.',
	},
	'desk-band': {
		title: 'A programme at a speed, by desk',
		task: 'From the desk, have {fixture as name} run “{programme as programme}” at speed {speed} of 100, no more than {off} off either way. If its mode has an intensity, bring that to full; its other functions stay out of the way.',
		why: 'A function channel does something else every few values, and the chart tells where.',
	},
	'strobe-left-on': {
		title: 'A strobe left on',
		task: [
			{
				when: { by: 'panel' },
				says: 'Somebody left {fixture as name} flashing by itself. Make it steady, and keep it lit.',
			},
			{ says: '{fixture as name} flashes, and the desk makes it. Make it steady from the desk, and keep it lit.' },
		],
		why: 'Flashing that nobody warned of can hurt people, so finding what does it has to be quick.',
	},
	'remote-three': {
		title: 'One remote, three fixtures',
		task: 'With the remote alone, have {fixtures as names} show the static colour “{held as held}” at {level as percent}, with no flashing. {apart as name} stays as it is.',
		why: 'From the floor with a remote you can light a hung row without a ladder.',
	},
	'leader-three': {
		title: 'A leader and three followers',
		task: [
			{
				when: { hasAddress: true },
				says: 'Have {leader as name} show the static colour “{held as held}” and lead, with {followers as names} following it. All stand in mode “{mode as mode}”, the followers at start address {address}.',
			},
			{
				says: 'Have {leader as name} show the static colour “{held as held}” and lead, with {followers as names} following it. All stand in mode “{mode as mode}”.',
			},
		],
		why: 'With no desk, one fixture can move a whole row, if the others are told to follow.',
	},
	'followers-mode': {
		title: 'Followers in the wrong mode',
		task: [
			{
				when: { hasAddress: true },
				says: '{leader as name} leads {followers as names}, and some of them show something else. Have each follower in the leader’s mode, “{mode as mode}”, and at start address {address}.',
			},
			{
				says: '{leader as name} leads {followers as names}, and some of them show something else. Have each follower in the leader’s mode, “{mode as mode}”.',
			},
		],
		why: 'A follower in another mode reads the right levels in the wrong places, and shows the wrong colours.',
	},
	defaults: {
		title: 'Back to defaults',
		task: 'Somebody has been through the menu of {fixture as name}. Put every setting back to its default.',
		why: 'Hired stock arrives as the last crew left it, and a known start is quicker than ten guesses.',
	},
	'line-longer': {
		title: 'A line made longer',
		task: '{fresh as names} {fresh?joins|join} the end of a line that was ended before. Cable the row in order, set {fresh as names} to start {addresses?address|addresses} {addresses as counts}, and put the one terminator where the line ends now.',
		why: 'Rigs grow at the last minute, and a terminator left in the middle keeps the next cable out.',
	},
	'two-universes': {
		title: 'Two universes',
		task: 'Outputs A and B should carry universes {universes as counts}, in that order. {first as names} hang on A, {second as names} on B. Their start addresses, in that order, are {addresses as counts}.',
		why: 'The same address means another fixture in another universe, and the output decides which is heard.',
	},
	'leader-left-on': {
		title: 'A leader left on',
		task: 'The desk is back, and {leader as name} still leads. Have {followers as names} obey the desk, and {leader as name} too. In the order of the row their start addresses are {addresses as counts}.',
		why: 'Two sources on one line garble each other, and the whole row jumps.',
	},
	'other-law-address': {
		title: 'An address on another kind of panel',
		task: 'Set {fixture as name} so that it obeys the line from start address {address}, in the mode it’s in. Its panel may not work like the last one: find out what acts, what stores and what leaves.',
		why: 'Hired stock comes with panels you never saw, and the first one you meet is on tonight’s rig.',
	},
	'panel-unseen': {
		title: 'A panel you never saw',
		task: [
			{
				when: { goal: 'held' },
				says: '{fixture as name} is a {profile}, and you’ve never met one. Have it show the static colour “{held as held}”, with no desk.',
			},
			{
				when: { goal: 'follow' },
				says: '{fixture as name} is a {profile}, and you’ve never met one. Have it follow {leader as name}, which leads already: in mode “{mode as mode}”[, at start address {address}, where this kind listens].',
			},
			{
				says: '{fixture as name} is a {profile}, and you’ve never met one. Set it to start address {address}, in mode “{mode as mode}”.',
			},
		],
		why: 'Hired (US: rented) lights come with panels nobody has met, and the manual, which comes first, isn’t always in the case.',
	},
	'other-law-colour': {
		title: 'A colour on another kind of panel',
		task: 'Have {fixture as name} show the static colour “{held as held}” at {level as percent}, with no desk. Watch the wall it lights, not the lens, while you press: on some panels it follows at once.',
		why: 'A panel that acts as you scroll shows every wrong colour to the room on the way to the right one.',
	},
	'other-law-handover': {
		title: 'Under the desk, on another kind of panel',
		task: [
			{
				when: { loss: 'hold' },
				says: 'Have {fixture as name} obey the desk in mode “{mode as mode}” ({footprint} {footprint?channel|channels}) from start address {address}, and keep its last look on signal loss.',
			},
			{
				when: { loss: 'dark' },
				says: 'Have {fixture as name} obey the desk in mode “{mode as mode}” ({footprint} {footprint?channel|channels}) from start address {address}, and go dark on signal loss.',
			},
			{
				says: 'Have {fixture as name} obey the desk in mode “{mode as mode}” ({footprint} {footprint?channel|channels}) from start address {address}, and run its own programme on signal loss.',
			},
		],
		why: 'Four settings on a panel that goes one way round cost fewest presses in the order it meets them.',
	},
} as const satisfies Record<string, DrillSays>;
