/**
 * Words for a rig read from, and written to, an open rig file (MVR): what was lost on the way, by the codes of `shared/mvr`, and what
 * the page asks. The grammar of a loss is that of `content/en/rig`.
 */

import { counted, locale } from '../locale/index.ts';

/** What a file says that has no place here, or the other way round, by its code. */
export const mvrLeft = {
	'files-unused': 'The file holds {count} other {count?file|files}: pictures, models or fixtures. None is used.',
	'part-unused': [
		{
			when: { part: 'FixtureID' },
			says: '{count} {count?fixture has an ID|fixtures have IDs} beside the name. IDs aren’t kept here.',
		},
		{
			when: { part: 'Gobo' },
			says: '{count} {count?fixture has a gobo|fixtures have gobos}. No light here shows one.',
		},
		{ says: 'The part {part}, found {count} {count?time|times}, isn’t used here.' },
	],
	'object-unused': [
		{
			when: { kind: 'Truss' },
			says: 'It has {count} {count?piece|pieces} of truss. A plan here holds fixtures alone. Only the person responsible for rigging says what a truss can take.',
		},
		{
			when: { kind: 'Support' },
			says: 'It has {count} {count?support or hoist|supports or hoists}. A plan here holds fixtures alone. Only the person responsible for rigging says what a point can take.',
		},
		{ says: 'It has {count} of the kind {kind}. A plan here holds fixtures alone.' },
	],
	layers: 'Its fixtures stand in {count} layers. They come in one list here.',
	groups: 'It has {count} {count?group|groups}. Each fixture keeps its place, but not its group.',

	'file-refused': 'The fixture file {spec} can’t be used. {because}',
	'file-missing': 'The fixture file {spec} isn’t in there.',
	'too-many-kinds': 'A plan takes {limit} kinds of fixture from a file. The file {spec} wasn’t read.',
	'too-many-own':
		'A plan takes {limit} kinds of fixture that aren’t known here. {name} is one too many, so {count} {count?fixture is|fixtures are} left out.',
	'stand-in':
		'{name} comes from its fixture file. Its panel is a stand-in: the real panel differs. [{lost} {lost?thing|things} in that file couldn’t be kept. ]{assumed} {assumed?thing|things} had to be assumed. They’re listed under its name.',

	'fixture-left': [
		{ when: { spec: '' }, says: 'The fixture {name} says nothing of its kind. Pick one, or it’s left out.' },
		{ says: 'The fixture {name} goes by {spec}, which can’t be used. Pick a fixture for it, or it’s left out.' },
	],
	'mode-left': [
		{ when: { mode: '' }, says: 'The fixture {name} says nothing of its mode. Pick one, or it’s left out.' },
		{ says: 'The fixture {name} is in mode {mode}, which isn’t known here. Pick a mode for it, or it’s left out.' },
	],
	'name-cut': '“{found}” is too long here. It’s called “{name}”.',
	'name-made': 'Fixture {name} of the file has no name. It gets one here.',
	'uuid-twice': 'The fixture {name} has the same ID as another. A cable that names it goes to the last one.',
	turned: 'The fixture {name} is turned. Which way it points isn’t kept.',
	depth:
		'The fixture {name} stands {metres} m to the front or back. Here all stand in one row along the wall, so cables come out too short: measure there, and never pull one tight to reach.',
	'no-place':
		'The file doesn’t say where the fixture {name} is. It’s put in the row, and taken as overhead until you say that it stands.',
	unreadable:
		'{part} of the fixture {name} reads {found}, which it can’t be. It’s put in the row, and taken as overhead until you say that it stands.',
	moved: [
		{
			when: { to: 'right' },
			says: 'Some fixtures stand left of where the file starts to measure. The whole rig is moved {metres} m to the right.',
		},
		{
			says: 'Most fixtures stand too far from where the file starts to measure. The whole rig is moved {metres} m to the left.',
		},
	],
	'place-cut': [
		{
			when: { of: 'along' },
			says: 'The fixture {name} is {found} m along the wall, far from the others. That’s too far here, so it’s put at {metres} m. Look where it really is.',
		},
		{
			says: 'The fixture {name} is {found} m above the floor. That can’t be here, so it’s put at {metres} m. Below the floor, it’s taken as overhead: look how it hangs.',
		},
	],
	overhead:
		'{count} {count?fixture is|fixtures are} over {metres} m up. {count?It’s|They’re} taken as overhead. Give {count?its weight|their weights} off the label or the maker’s sheet, from the floor, and follow the cautions. Nobody goes up for this.',
	'address-bad': 'The fixture {name} has {found} for a start address, which it can’t be. It gets a free one.',
	'other-break':
		'The fixture {name} has a second start address, {found}. A fixture here has one, so it’s left out. Set it at the panel.',
	'not-patched': 'The fixture {name} has no start address in the file. It gets a free one.',
	multipatch:
		'The fixture {name} goes with another, on one start address. Both are kept, and the plan tells you they share it.',

	'link-power':
		'A mains link goes from {from} to {to}. Mains links aren’t kept: name the circuit of each fixture here.',
	'link-unknown':
		'A cable goes from {from} to {to}, but nothing says what runs in it (socket {socket}). It’s left out.',
	'link-nowhere': 'A cable from {from} goes to something that’s no fixture of this plan. It’s left out.',
	'link-branch':
		'The cable from {from} to {to} would split a data line, or join two. A line here runs from fixture to fixture, so it’s left out.',
	'link-across': 'The cable from {from} to {to} goes to another universe. A line here stays in one, so it’s left out.',
	'link-circle': 'The cable from {from} to {to} would make the data line a circle. It’s left out.',

	'not-written': [
		{
			when: { what: 'panels' },
			says: 'Panels and batteries aren’t in the file. Open standards have no place for them.',
		},
		{ when: { what: 'circuits' }, says: 'Circuits aren’t in the file.' },
		{ when: { what: 'labels' }, says: 'Which labels are written, and what panels show now, isn’t in the file.' },
		{ when: { what: 'throws' }, says: 'How far each fixture stands from the wall isn’t in the file.' },
		{ when: { what: 'tilts' }, says: 'How far fixtures are tilted isn’t in the file.' },
		{ when: { what: 'supply' }, says: 'What you gave for breakers and feed cables isn’t in the file.' },
		{ when: { what: 'weights' }, says: 'Weights and surges from labels aren’t in the file.' },
		{ when: { what: 'rules' }, says: 'The rules of this plan and what panels do on signal loss aren’t in the file.' },
		{
			when: { what: 'leader' },
			says: 'The file doesn’t say who leads. It has no start addresses, since no desk sends.',
		},
		{ when: { what: 'cables' }, says: 'Cable lengths, splitters and terminators aren’t in the file.' },
		{ says: 'The cable from the desk to each line isn’t in the file.' },
	],
	'place-changed':
		'The fixture {name} hangs or stands otherwise than its height says. Whoever opens the file may take one that hangs as standing: tell them.',
	'mode-doubled': 'Two modes of the fixture {name} are called {mode}. Whoever reads the file has to ask which.',
} as const;

/** What the page says around it. */
export const mvrWords = {
	title: 'A rig from an MVR file',
	close: 'Close',
	lead: 'MVR is an open standard (DIN SPEC 15801) for a whole rig in one file. Choose one. Nothing is sent anywhere.',
	choose: 'Choose a file',
	noOwn: 'Your own fixtures couldn’t be read, so none of them can be picked here. Close this and open it again.',
	reading: 'Reading the file. A large one takes a moment.',
	found: (n: number, kinds: number) =>
		`${counted(n, 'fixture', 'fixtures')} of ${counted(kinds, 'kind', 'kinds')} in the file.`,
	kinds: 'What each kind is here',
	kind: (spec: string, n: number) => `${spec === '' ? 'No kind given' : spec}: ${counted(n, 'fixture', 'fixtures')}`,
	mode: (found: string) => (found === '' ? 'Mode (none given)' : `Mode ${found}`),
	pick: 'Pick one, or leave them out',
	asFile: 'As the file has it, if it does',
	pickMode: 'Pick a mode, or leave them out',
	fromFile: (name: string) => `${name} (from the file)`,
	early: 'Picked earlier. Check that it’s right for this file too.',
	earlyInstead: (name: string) =>
		`Picked earlier. This file has its own fixture under that name: ${name}. Check which one you have.`,
	asStock: (name: string) => `${name} (invented, known here)`,
	lost: (n: number) =>
		n === 0 ? 'Nothing in the file is lost.' : `${counted(n, 'thing', 'things')} in the file can’t be kept as it is`,
	lostLead: 'Read these before you use it. Check the plan at the lights.',
	assumed: (name: string, n: number) => `${name}: ${counted(n, 'note', 'notes')} on its fixture file`,
	more: (n: number) => `And ${locale.number(n)} more`,
	use: (n: number) => `Use ${counted(n, 'fixture', 'fixtures')}`,
	leftOut: (n: number) =>
		`${counted(n, 'fixture is', 'fixtures are')} left out. They’re in no sum: not amps, not kilograms, not start addresses.`,
	stands: (n: number, all: number) =>
		`${locale.number(n)} of ${locale.number(all)} come in as standing on the floor, by the heights in the file. A height can be wrong, or measured from somewhere else. Does any of them hang, or stand on a stand? Tick Overhead for it before anybody works from this plan.`,
	circuits:
		'The file says nothing of circuits: a light with a battery counts as on battery until you name its circuit.',
	rig: 'Rig from a file',
	slow: 'That file took over a minute to read, so it was given up. Ask for a smaller one.',
	broke: 'That file couldn’t be read, and it isn’t clear why. Save it again where it came from, and try once more.',
	noWorker: 'The part of the page that reads such files couldn’t be fetched. Try again with a network.',
	save: 'Save as an MVR file',
	stays: (n: number) => `${counted(n, 'thing doesn’t', 'things don’t')} go into an MVR file`,
	saveLead: 'It holds fixtures, modes, start addresses, places and cables. This stays behind:',
	fileName: 'prep-bay-rig.mvr',
	writing: 'Writing the file.',
	saved: 'Saved.',
} as const;
