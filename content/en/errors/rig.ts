import { misshapen, span } from './shapes.ts';

/** Of the rig, its log, its faults, drills and the finder: what `sim/` refuses. */
export const rigErrors = {
	'fault.unknown': "No fault is called '{id}'. Choose one of the catalogue's.",
	'fault.place': "'{fault}' can’t sit at '{place}'[ ({detail})] on this rig.",

	'sequence.list': [
		{ when: { expected: 'list' }, says: '{of as part} are a list; found {found as found}.' },
		{ says: 'A problem has weights, costs and outcomes; found {found as found}.' },
	],
	'sequence.lengths': [
		{
			when: { of: 'outcomes-of-suspects' },
			says: 'A check has one outcome for each of the {length} suspects; found {found as found}.',
		},
		{
			when: { of: 'repair-seconds' },
			says: 'Each of the {length} repairs has its own seconds; found {found as found}.',
		},
		{ when: { of: 'asked' }, says: 'Here {path} must be {length} long; found {found as found}.' },
		{ says: '{of as part} are {length}, one for each; found {found as found}. Give each its own.' },
	],
	'sequence.suspects': 'A problem has at least one suspect; found none.',
	'sequence.weight': [
		{
			when: { expected: 'from-0' },
			says: '{of as measure} is a finite number, 0 or more; found {found as found}.',
		},
		...span,
	],
	'sequence.weights': [
		{
			when: { trouble: 'weights-sum' },
			says: 'Weights are 0 or more and sum to a finite number above 0; these sum to {found as found}.',
		},
		{
			says: 'Weights are 0 or more and sum to a finite number above 0; one is below 0 or no number.',
		},
	],
	'sequence.cost': [
		{
			when: { expected: 'from-0' },
			says: '{of as measure} is a finite number, 0 or more; found {found as found}.',
		},
		...span,
	],
	'sequence.outcomes': [
		{
			when: { trouble: 'too-many-outcomes' },
			says: 'A check has at most {limit} outcomes; check {check} has more. Put like outcomes together.',
		},
		{ says: 'An outcome is a text or a finite number; found {found as found}.' },
	],
	'sequence.refund': "What an outcome gives back is 0 to the check's own cost of {hi}; found {found as found}.",
	'sequence.place': span,
	'sequence.walk': '{of as measure} is a finite number, 0 or more; found {found as found}.',
	'sequence.error-rate': span,
	'sequence.answer': span,
	'sequence.contradiction':
		'No suspect fits this answer and those before it. Take one back, or allow for wrong answers with an error rate.',
	'sequence.order': 'An order names each of the {checks} checks once, by number from 0.',
	'sequence.policy': 'A policy is {known as either}; found {found as found}.',
	'sequence.limit': span,
	'sequence.exact-size': [
		{
			when: { trouble: 'too-many-suspects' },
			says: 'The exact policy takes at most {limit} suspects that checks can part; here are {suspects}. Use the default policy.',
		},
		{
			says: 'The exact policy has tried {tries} checks and isn’t through: these suspects can be parted in too many ways. Use the default policy.',
		},
	],

	'line.device-twice': 'Every device needs an id of its own, but "{id}" is there twice. Rename or remove one.',
	'line.cable-twice': 'Every cable needs an id of its own, but "{id}" is there twice. Rename or remove one.',
	'line.loads':
		'Unit loads are a number from 0 up (1 for most receivers), but {fixture} has {found as found}. Correct its profile.',
	'line.length':
		"A cable's length is a number of metres above 0, but cable {cable} has {found as found}. Measure it, or guess.",
	'line.talker-twice': 'One socket has one source, but {socket} is listed twice. Remove one of the two.',
	'line.leader-unknown':
		'A leader sends from a socket of its own and is one of the receivers, but {fixture} at {port} isn’t. Add the fixture, or take the source away.',

	'held.index': 'Static colours of {profile} run from 0 to {last}; found {found as found}.',
	'programme.index': 'Programmes of {profile} run from 0 to {last}; found {found as found}.',
	'ask.shape':
		'An ask for {profile} holds {cells} cells of {emitters} emitters; this one is of another size. Make it with makeAsk.',

	'rig.options': [misshapen('What the rig is opened with', 'It may hold `faults`, a list of what is placed where.')],
	'rig.wait': 'A rig waits a number of milliseconds from 0 up, not {found as found}.',
	'rig.fixture': 'There’s no fixture {found as found} on this rig. Its fixtures: {known as list}.',
	'event.shape': [
		misshapen('An event of the log', 'The rig can be opened without its log.'),
		{ says: 'An event has a type in words; found {found as found}.' },
	],
	'event.wait': 'Time moves by wait, not by send. Call rig.wait with the milliseconds.',
	'event.key': [
		{ when: { trouble: 'no-such-key' }, says: "The panel of '{fixture}' has no '{key}' key. Press one that it has." },
		{ says: "'{fixture}' has switches and no keys. Flip a switch instead." },
	],
	'event.switch': "'{fixture}' has keys and no DIP switches. Press a key instead.",
	'event.slide': "'{fixture}' has no slide '{slide}' with a position {position}.",
	'event.settings': '{profile} is set by its switches alone. Flip those.',
	'event.charge': '{profile} has no battery to charge.',
	'event.mains': [
		{
			when: { trouble: 'no-link-socket' },
			says: "'{fixture}' has no mains link socket on this rig. Plug into the wall, or into a fixture that has one.",
		},
		{ says: "That would feed '{fixture}' from itself. One of the row must be in the wall." },
	],
	'event.remote': 'There’s no remote on this rig. Give the sheet one first.',
	'event.desk': [
		{ when: { trouble: 'no-desk' }, says: 'There’s no desk on this rig. Give the sheet one first.' },
		{ says: "The desk has no output '{id}'. It has {known as list}." },
	],
	'event.box': "There’s no box '{id}' on this rig with that output. Look at its name on the sheet.",
	'event.cable': [
		{
			when: { trouble: 'id-taken' },
			says: "There’s a cable '{id}' already. Give the new one another id.",
		},
		{ when: { trouble: 'end-loose' }, says: "That end of '{id}' hangs loose already." },
		{ when: { trouble: 'no-such-cable' }, says: "There’s no cable '{id}' on this rig." },
		{ says: "That end of '{id}' is in {port}. Unplug it first." },
	],
	'event.socket': [
		{
			when: { trouble: 'both-ends-in-one-socket' },
			says: 'Both ends of a cable can’t be in one socket.',
		},
		{ when: { trouble: 'cable-in-it' }, says: "{port} has cable '{cable}' in it. Unplug that first." },
		{
			when: { trouble: 'terminator-in-it' },
			says: '{port} has a terminator in it. Take that out first.',
		},
		{ says: "There’s no socket '{port}' on this rig." },
	],
	'event.terminator': 'There’s no terminator in {port}.',
	'log.shape': 'A log is a list of events; found {found as found}. The rig can be opened without its log.',
	'log.length': 'A log holds at most {limit} events; this one has {events}. Start again and share sooner.',

	'finder.complaint': [
		{
			when: { expected: 'complaint' },
			says: 'A complaint is of a kind ({known as list}) and of a fixture; found {found as found}.',
		},
		{
			says: "By its sheet {fixture} isn’t meant to do what '{kind}' misses. Choose another complaint, or correct the sheet.",
		},
	],
	'finder.check': 'There’s no check {found as found} in this walk. Answer the one that is asked.',
	'finder.outcome': "'{check}' can’t show {found as found}. It shows one of: {known as list}.",

	'drill.kind': 'There’s no drill {found as found}. The kinds are {known as list}.',
	'drill.shape': [misshapen('The drill', 'Make it again from its kind and seed.')],
	'drill.fixture': "The drill asks for '{id}', which isn’t on its sheet. Make it again from its kind and seed.",
	'drill.hands': "This drill is done by {hands as list}, and '{type}' is none of these. Start the drill again.",
	'drill.stuck': 'From here the hands of this drill can’t finish it any more. Start it again.',
	'task.solved': 'This task is done before it begins. Ask for something that isn’t so yet.',
	'paper.practical': "Only a question to be done on the bench is marked by a log; this one is answered as '{form}'.",
} as const;
