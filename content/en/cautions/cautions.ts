/** Permanent: saved work, drills and lessons name them. Never reused for something else. */
export const cautionIds = [
	'hanging',
	'height',
	'lifting',
	'mains',
	'batteries',
	'ultraviolet',
	'flashing',
	'hot',
	'staring',
	'live-show',
] as const;
export type CautionId = (typeof cautionIds)[number];

export interface Caution {
	/** A few words, as the heading. */
	readonly title: string;
	/** What can happen, in one sentence. */
	readonly harm: string;
	/** What to do about it, each in a line of its own, the first first. */
	readonly care: readonly string[];
	/** Whose word comes before ours, where it is someone in particular. */
	readonly defer: string;
}

/** Stands with every caution. */
export const siteFirst =
	'The rules of the place, the local code and the competent person on site (in the US, the competent or the qualified person, by the work) come before anything written here.';

/** The cautions, each the usual practice of the trade. */
export const cautions: Readonly<Record<CautionId, Caution>> = {
	hanging: {
		title: 'Overhead: two fixings, always',
		harm: 'A fixture that comes down can kill the person under it.',
		care: [
			'Fit a secondary safety bond, rated for the load, to everything overhead: round pipe or truss chord that is itself rated, and to the maker’s own bond point on the fixture, with as little slack as possible.',
			'A chord is one of a truss’s long main tubes. Never bond to a thin brace between them, unless the rigger says so.',
			'Never bond to the yoke alone, unless the maker gives that as the point.',
			'Use hardware with a rating marked on it, for that pipe or truss and for that weight. No string, no cable ties, no found wire.',
			'Clear and mark off the floor below before anything goes up. Nobody stands under the work.',
			'Look at clamp, bolt and bond after the fixture is aimed, and again before doors.',
		],
		defer: 'Only the person responsible for rigging says what may hang, where, and from what.',
	},
	height: {
		title: 'Working at height',
		harm: 'A fall can kill, even from low down.',
		care: [
			'Do it from the floor if it can be done from the floor: aim before it is hung, use the remote or the desk.',
			'Lower before you climb: what can come down, pipe, truss or stand, is brought down first by whoever is in charge of it, with its supply off and nobody below.',
			'Use a ladder, tower or lift only if you are trained for it, and it is the right one, in date, on firm ground.',
			'Have someone with you. Tools on lanyards, pockets empty, both hands free to climb.',
		],
		defer: 'The competent person on site says who may go up, and with what.',
	},
	lifting: {
		title: 'Lifting and carrying',
		harm: 'Backs, toes and fingers are easily hurt at load-in and load-out.',
		care: [
			'Read the weight on the case. If in doubt, two people, and one of them counts.',
			'Legs, not back; the load close; no twisting. Look at the way before you carry along it.',
			'Gloves for cases, pipe and truss. Keep fingers out from under.',
		],
		defer: 'The place’s own manual-handling rules hold.',
	},
	mains: {
		title: 'Mains electricity',
		harm: 'Mains (in the US: power, or line voltage) can kill. Wet ground and damaged cable make it likelier.',
		care: [
			'Isolate before you touch a mains connection: supply off, wall plug out, and nobody else can put it back.',
			'Link a row with its supply off, and put the plug at the wall in last. Taking it down, that plug comes out first.',
			'Look along the cable and at both plugs before you plug in. Damaged, wet, taped or out of test (PAT in the UK, inspection in the US): put it aside and label it.',
			'Unwind a cable drum (cord reel in the US) to the end before it feeds anything, and lay the rest in loose loops, not in a heap. Stay within its plate. Wound up, it heats, and can burn.',
			'Take a mains fixture for class I unless its label shows a square within a square: it needs its earth (ground in the US), by a pin or by clips. Never cut them, tape them, or use a lead, adapter or socket that has none.',
			'Feed through a residual-current device (RCD; GFCI in the US), at the supply end of the lead, where the rules ask for one, and always outdoors.',
			'Press the test button of a plug-in RCD, with power on it, before the lights go on it. If it does not trip, or will not reset, do not use it. If it trips later, leave it off and ask the electrician. One in the distribution is theirs to test.',
			'Do not open a fixture. There is nothing inside for you to set. Label it and hand it to a competent repairer.',
			'A blown fuse or a damaged plug: do not touch it. Have its supply cut first. Then label it and leave it to a competent person: it failed for a reason.',
			'Add up the current before you link one fixture to the next, and stay within the least of cable, socket and supply.',
			// what to do and the numbers: first-aid advice, from memory
			'Someone is getting a shock: do not touch them until the supply is off. Whoever is nearest its switch or its wall plug, and can get there without touching them, cuts it at once. At the same time have the first aider and the emergency services called (999 or 112 in the UK, 911 in the US, elsewhere the local number). Anyone who had a shock is seen by a medic, even if they feel well.',
		],
		defer:
			'Supplies and distribution belong to the licensed or competent electrician on site (in the US, to a licensed electrician or a qualified person, as the local code says).',
	},
	batteries: {
		title: 'Batteries and charging',
		harm: 'A lithium pack that is damaged, covered or wrongly charged can burn, and is hard to put out.',
		care: [
			'Charge with the charger or inlet that the maker approves and no other, on a hard surface that will not burn, in air, out of exit routes, in sight of someone.',
			'Never cover a fixture that charges, and do not charge it shut in its case unless the maker says the case is made for that.',
			'Swollen, dropped hard, or wet: do not charge it, do not use it. Keep it away from people and from what burns, and say so.',
			'Hot by itself, smelling, hissing or smoking: keep away, get people out, and raise the alarm. Do not breathe the smoke.',
			'Let a hot fixture cool before it goes on charge, and charge inside the temperatures on its label.',
			// 0 °C: cell makers' data sheets, from memory; below it lithium plates out on the electrode, and the cell is spoilt for good
			'Never charge a lithium pack below 0 °C (32 °F), nor below what its label says, where that is warmer. One from a cold van warms up first, in a room and never on a heater, for some hours. It must be dry, too.',
		],
		defer: 'The maker’s manual and the place’s fire rules hold.',
	},
	ultraviolet: {
		title: 'Ultraviolet',
		harm: 'Ultraviolet looks dim and hurts eyes and skin all the same.',
		care: [
			'Keep faces out of the beam. Aim it at walls, ceilings and scenery, not at seats or at the height of eyes.',
			'Keep to the distance and the time the maker gives. Nobody works in the beam.',
			'Warn people with light-sensitive skin or eyes, and those whose medicine makes them so.',
		],
		defer: 'The maker’s exposure limits and the venue’s assessment hold.',
	},
	flashing: {
		title: 'Flashing light',
		harm: 'Flashing can bring on a seizure in someone with photosensitive epilepsy, and can make others ill.',
		care: [
			'Do not flash where people did not expect it. Put the warning at the doors, where it is read before going in.',
			'Keep rates low and bursts short. The UK regulator’s advice is four flashes a second at most, all fixtures together; other places have their own limit.',
			'Never let several fixtures flash out of step into a faster rate.',
			'Know how to stop it at once: the desk’s fader, or the fixture’s own panel.',
			'While setting up, say aloud that it is coming.',
			// what to do, and the five minutes: health services' first-aid advice, from memory
			'Someone has a seizure: have the flashing stopped at once, with light left to see by, and call the first aider. Clear what could hurt them, and stay with them. Do not hold them down, and put nothing in their mouth. Over five minutes, a first one, a second one after it, hurt, not coming round, or if you are not sure: call the emergency services (999 or 112 in the UK, 911 in the US, elsewhere the local number).',
		],
		defer: 'The venue’s strobe policy and the local licence hold.',
	},
	hot: {
		title: 'Hot surfaces',
		harm: 'Housings and lenses get hot enough to burn skin, and cloth.',
		care: [
			'Give it the clear space the label asks for, from drapes, paper, foam and people.',
			'Keep the vents free. No bag, no coat, no cover while it is lit.',
			'After use, let it cool before you handle or case it. Gloves if you cannot wait.',
		],
		defer: 'The label on the fixture holds.',
	},
	staring: {
		title: 'Bright emitters',
		harm: 'Looking into an emitter from close up can hurt the eye before it feels bright.',
		care: [
			'Never look into the lens to see whether it works: look at the wall it lights.',
			'Point it away, or turn it down, before you lean over it to read the panel.',
			'No lens, mirror or magnifier in the beam close up.',
		],
		defer: 'The risk group and distance on the fixture’s label hold.',
	},
	'live-show': {
		title: 'People are in the room',
		harm: 'A light that goes dark, jumps or flashes in a running show can put people in danger on stairs and stages.',
		care: [
			'Ask the operator before you touch panel, cable or power. Wait for the word.',
			'Look before you try, and try before you swap: leave the rest of the line alone.',
			'Unplugging one fixture can take every fixture after it with it.',
			'Exit signs and escape lights (egress lighting in the US) are left alone: never switched off, covered, dimmed or outshone. One that is dark or hidden: tell whoever is in charge of the place.',
			'Leads, cases, stands and packs on charge stay out of exit routes.',
		],
		defer: 'The show’s operator or stage manager says when.',
	},
};
