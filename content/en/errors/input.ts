import { misshapen, noMode, notPlain, span, unfit } from './shapes.ts';

/** Of numbers, fixtures, rig sheets and papers: what `shared/` refuses. */
export const inputErrors = {
	'level.range': [
		{
			when: { trouble: 'level-past' },
			says: 'A level ends at {hi}, and {found as found} is past it. For a percent, put % after it.',
		},
		{ when: { trouble: 'percent-past' }, says: 'A percent ends at {hi}, and {found as found} is past it.' },
		...span,
	],
	'level.text': [
		{ when: { trouble: 'not-text' }, says: 'A level is read from text; found {found as found}.' },
		{
			when: { trouble: 'nothing-typed' },
			says: 'Nothing was typed. Type a value such as 128, or a percent such as 50 %.',
		},
		{
			when: { trouble: 'not-whole' },
			says: 'A level is a whole number, and {found as found} isn’t. For a percent, put % after it.',
		},
		{
			when: { trouble: 'looks-hexadecimal' },
			says: '{found as found} looks hexadecimal: put an x in front, as in x80.',
		},
		{ says: '{found as found} is no level. Type 0 to 255, a percent such as 50 %, full or out.' },
	],
	'level.mismatch': '{level} and {percent} % don’t agree: it should read {level} ({right} %).',
	'percent.range': span,
	'fraction.range': span,
	'word.range': span,
	'byte.range': span,
	'address.range': span,
	'footprint.range': span,
	'slot.range': span,
	'slots.range': span,
	'count.range': span,
	'universe.range': span,
	'absolute.range': span,
	'pin.range': span,
	'load.range': span,
	'terminator.range': span,
	'timing.range': span,
	'address.past-end': [
		{
			when: { trouble: 'slot-past-end' },
			says: 'Channel {n} of a fixture at {start} would be {slot}, past {last}: start at {highest} or lower.',
		},
		{
			says: 'Fixture {n} would run past {last}: from {first} on, {fit} of footprint {footprint} {fit?fits|fit}.',
		},
	],
	'band.range': 'A band runs from a lower to a higher value within 0 to {hi}; found {from} to {to}.',
	'band.outside': '{level} isn’t in the band {from} to {to}.',
	'dip.count': 'An address is read from {length} switches; found {found as found}. Leave out those with other jobs.',
	'dip.unreachable':
		'Nine switches read as a plain sum end at {highest}; {address} can’t be set. Take a lower start address.',
	'dip.switch': span,
	'id.twice': 'The id "{id}" stands twice; give each its own.',

	'optics.range': [
		{ when: { expected: 'over-0' }, says: '{of as measure} is more than 0; found {found as found}.' },
		{ when: { expected: 'below' }, says: 'A beam angle is less than {limit} degrees; found {found as found}.' },
		{
			when: { expected: 'beam-angle' },
			says: 'A beam angle is between 0 and 180 degrees; found {found as found}.',
		},
		{
			when: { expected: 'beam' },
			says: 'A beam has 0 lumens or more and an angle between 0 and 180 degrees; found {lumens} lumens at {degrees} degrees.',
		},
		{
			when: { expected: 'illuminances' },
			says: 'Uniformity needs at least one illuminance, each 0 lux or more.',
		},
		{
			when: { expected: 'spacing' },
			says: 'At a throw of {metres} m a spacing is at least {lo} m; found {found as found}.',
		},
		...span,
	],
	'power.range': [
		{ when: { expected: 'over-0' }, says: '{of as measure} is a number over 0; found {found as found}.' },
		{ when: { expected: 'from-0' }, says: '{of as measure} is 0 or more; found {found as found}.' },
		...span,
	],
	'power.area': 'There’s no figure for a cable of {found as found} mm². Pick one of {known as list}.',
	'power.emitter': '{profile} has no emitter {found as found}. Its emitters: {known as list}.',

	'random.whole': 'hash01 takes whole numbers only; found {found as found}.',
	'random.seed': span,
	'random.int': 'int takes two whole numbers, the lower first, at most {apart} apart; found {lo} and {hi}.',
	'random.empty': 'pick needs at least one item; the list is empty.',
	'invent.words': "Everything is left out for '{of}'. Leave at least one in.",
	'random.chance': span,

	'statistics.share': span,
	'statistics.length': [
		{
			when: { expected: 'score-for-each' },
			says: 'Everybody must have a score for each question, 0 where not answered.',
		},
		{ says: 'A correlation takes two lists of one length; found {xs} and {ys}.' },
	],
	'statistics.right': 'KR-20 takes questions that are right, 1, or wrong, 0.',

	'mode.unknown': "{profile} has no mode '{id}'. Its modes: {known as list}.",
	'profile.shape': [misshapen('The profile', 'Fix that place and read it again.')],
	'profile.id': [
		{ when: { trouble: 'menu-id-twice' }, says: "Two menu items are called '{id}'. Ids are used once." },
		{ says: "Two of them are called '{id}'. Ids are used once." },
	],
	'profile.reference': [
		...unfit,
		{
			says: "A sound programme names how it answers, and no other does; '{id}' is a {kind} programme.",
		},
	],
	'profile.default': [...unfit, { says: "The panel's '{item}' can’t show the default {value}. It shows: {known}." }],
	'profile.slot': [
		{
			when: { trouble: 'taken-twice' },
			says: "Channel {slot} is taken twice: by '{other}' and by '{id}'. Give one of them another number.",
		},
		{
			when: { trouble: 'no-such-cell' },
			says: "The fixture has {cells} cells; '{id}' asks for cell {cell}.",
		},
		{
			when: { trouble: 'bands-and-fine' },
			says: "A channel of bands has no fine half; take '{id}' down to one channel.",
		},
		{ says: 'Channel {slot} is left out, though the chart runs to {last}. Name it, or close the gap.' },
	],
	'profile.band': [
		{
			when: { trouble: 'strobe-falls' },
			says: "'{id}' strobes from {slow} to {fast} a second: the rate rises across a band.",
		},
		{ when: { trouble: 'no-bands' }, says: "Bands of '{id}': There are no bands: 0 to 255 do nothing." },
		{
			when: { trouble: 'band-not-whole' },
			says: "Bands of '{id}': Band {band} ({from} to {to}) has an end that is no whole number.",
		},
		{
			when: { trouble: 'band-reversed' },
			says: "Bands of '{id}': Band {band} ({from} to {to}) starts above its end: swap the two.",
		},
		{
			when: { trouble: 'band-below-zero' },
			says: "Bands of '{id}': Band {band} ({from} to {to}) starts below 0: values are 0 to 255.",
		},
		{
			when: { trouble: 'band-past-end' },
			says: "Bands of '{id}': Band {band} ({from} to {to}) runs past 255: values are 0 to 255.",
		},
		{
			when: { trouble: 'band-out-of-order' },
			says: "Bands of '{id}': Band {band} ({from} to {to}) is listed after band {before}, which starts higher, at {beforeFrom}.",
		},
		{
			when: { trouble: 'band-overlap' },
			says: "Bands of '{id}': Bands {one} and {other} both hold {from}[ to {to}]: each value belongs to one band.",
		},
		{ says: "Bands of '{id}': {from}[ to {to}] {count?belongs|belong} to no band: close the gap." },
	],
	'profile.panel': [
		{
			when: { trouble: 'switch-twice' },
			says: "Switch {switch} is used by '{other}' and by '{id}'.",
		},
		{
			when: { trouble: 'choices-off' },
			says: "{switches} switches make {wanted} choices; '{id}' lists {choices}.",
		},
		{
			when: { trouble: 'key-missing' },
			says: "The panel has no '{key}' key, and its law needs one. With no law of its own, its four keys are back, down, up and set.",
		},
		{
			when: { trouble: 'key-twice' },
			says: "The panel lists its '{key}' key twice. List each key once.",
		},
		{
			when: { trouble: 'law-unplayed' },
			says: "No panel here with the law '{shape}' works like that. Change its '{part}': a flat panel acts as it scrolls and stores by itself.",
		},
		{
			when: { trouble: 'idle-off' },
			says: "'{id}' can’t have a value that does nothing at place {at}. On a tree’s list each has a place of its own; a flat panel has none.",
		},
		{
			when: { trouble: 'item-and-law', shape: 'flat' },
			says: "'{id}' doesn’t say who decides the light. On a flat panel each function says it, in 'work', and there are no menus.",
		},
		{
			when: { trouble: 'item-and-law' },
			says: "'{id}' says who decides the light, in 'work'. Only a flat panel’s functions do.",
		},
		{
			when: { trouble: 'least-over-most' },
			says: "'{id}' runs from {least} to {most}: the first must be the smaller.",
		},
		{
			when: { trouble: 'value-twice' },
			says: "'{id}' lists {value} twice, so Up would never get past it. List it once.",
		},
		{ says: "'{text}' doesn’t fit a display of {columns} characters." },
	],

	'rig-plan.shape': [misshapen('The plan', 'Fix that place and open it again.')],
	'rig-ticks.shape': [misshapen('The list of ticks', 'Ask whoever sent it to send it again.')],
	'rig-plan.row': [
		{ when: { trouble: 'id-twice' }, says: "The plan has two fixtures with the id '{id}'. Give each its own." },
		{ says: "The plan names a fixture type '{id}' that isn’t here. Add its profile to the plan, or change the row." },
	],
	'rig-plan.universes':
		'The plan uses {found} universes, and a desk here has {limit} outputs. Take modes with fewer channels, or split the rig.',

	'stock.shape': [misshapen('The fixture', 'Fix that place and open it again.')],
	'sheet.shape': [misshapen('The rig sheet', 'Fix that place and open it again.')],
	'sheet.id': "'{id}' is taken: give each {of as part} an id of its own.",
	'sheet.socket': [
		{
			when: { trouble: 'no-such-socket' },
			says: "There’s no socket '{port}' on this rig. A fixture has in and out, a desk its outputs, a splitter in and numbers.",
		},
		{ says: "Cable '{cable}' has both ends in {port}. Move one of them." },
	],
	'sheet.settings': [
		...unfit,
		{ when: { trouble: 'no-switches' }, says: '{profile} has no switches; set it by its settings.' },
		{
			when: { trouble: 'switches-alone' },
			says: '{profile} is set by its switches and slides alone; give those instead of settings.',
		},
		{ when: { trouble: 'slides-off' }, says: '{profile} has {slides} slides; the sheet gives {given}.' },
		{ says: 'That slide has positions 0 to {last}, not {position}.' },
	],
	'sheet.mains': [
		{
			when: { trouble: 'no-such-fixture' },
			says: "'{id}' is no fixture of this rig. A mains plug is in 'wall', 'none' or a fixture with a link socket.",
		},
		{
			when: { trouble: 'no-link-socket' },
			says: "'{name}' has no mains link socket to feed another fixture from.",
		},
		{
			says: "The mains links run in a circle through '{name}'. One of them must be plugged into the wall.",
		},
	],
	'sheet.reference': [
		noMode,
		{
			when: { trouble: 'no-such-profile' },
			says: "No fixture profile is called '{id}'. Add it to the sheet's profiles, or choose a bundled one.",
		},
		{
			when: { trouble: 'patch-to-none' },
			says: "The desk is patched to '{id}', which is no fixture of this rig.",
		},
		{ says: "The desk is patched to '{name}' twice. Keep one line for it." },
	],
	'quick.linked': 'A rig is linked as one of: {known as list}.',
	'quick.count': span,
	'quick.profile': "No bundled fixture is called '{id}'. Choose one of those shown.",

	'paper.recipe': [
		misshapen('The recipe of the quiz', 'Change it there, or build it again.'),
		...notPlain('The recipe of the quiz'),
	],
	'paper.shape': [
		misshapen('The quiz', 'Ask whoever set it for the file or link again.'),
		...notPlain('The quiz'),
		{ says: 'A quiz is what setPaper gives; found {found as found}.' },
	],
	'paper.answers': [
		misshapen('The answers', 'Ask whoever took the quiz to hand it in again.'),
		...notPlain('The answers'),
		{ says: 'Answers are held by question id; found {found as found}.' },
	],
	'paper.seed': span,
	'paper.profile': "No bundled fixture is called '{id}'. Choose from {known as list}, or bring it whole under own.",
	'paper.rig': "No bundled rig is called '{id}'. Choose from {known as list}, or bring a rig sheet whole.",
	'paper.needs-rig':
		'This quiz has questions that are read from a rig, and no rig is at hand here. Set it where the bench is, or name only kinds that need none.',
	'paper.unseen':
		'This quiz is about fixtures made up with words that this copy of the site hasn’t got. Update the copy, or ask for a quiz set with it.',
	'paper.empty':
		'No question of these kinds and topics can be asked about these fixtures. Choose more kinds or topics, or other fixtures.',
	'analyse.none': 'There’s nothing to look at yet: at least one marked quiz is needed.',
	'analyse.papers': 'These marks are of different quizzes. Questions can only be compared within one quiz: choose one.',
	'analyse.marks': [
		{ when: { expected: 'list' }, says: 'Marks are a list, one of each person; found {found as found}.' },
		{ says: 'A mark is what markPaper gives, with an item for each question; found {found as found}.' },
	],
} as const;
