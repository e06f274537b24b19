/**
 * Words for fixtures read from, and written to, an open fixture file (GDTF): what was lost on the way, and what had to be assumed.
 * The codes and the facts of each are in `shared/gdtf`; the grammar is that of `content/en/rig`.
 */

import { REAL_ACTS } from '../stock/index.ts';

export { leftGroups } from './groups.ts';
export { gdtfNames } from './names.ts';

/** What a file says that has no place here, or the other way round, by its code. */
export const left = {
	'other-files': 'The file holds {count} {count?picture or model|pictures and models}. None is shown here.',
	'part-unused': [
		{
			when: { part: 'Models' },
			says: 'It has {count} {count?shape|shapes} to draw it by. Fixtures are drawn another way here.',
		},
		{ when: { part: 'Revisions' }, says: 'Its history of {count} {count?change|changes} isn’t kept.' },
		{ when: { part: 'FTPresets' }, says: 'Its {count} stored {count?preset|presets} aren’t kept. They’re for a desk.' },
		{
			when: { part: 'Relations' },
			says: 'A mode says {count} {count?time|times} that one channel acts on another. That isn’t acted out. Dimming works all the same.',
		},
		{ when: { part: 'FTMacros' }, says: 'A mode has {count} {count?macro|macros} for a desk. They aren’t kept.' },
		{ when: { part: 'DMXProfiles' }, says: 'It has {count} {count?curve|curves} of its own. Fades are straight here.' },
		{
			when: { part: 'Measurement' },
			says: 'An emitter was measured at {count} {count?level|levels}. Only its colour is used.',
		},
		{ says: 'The part {part} of the file, with {count} {count?entry|entries}, isn’t used.' },
	],
	unreadable: '{attribute} at {path} reads {found}, which it can’t be. It counts as not given.',
	weight: 'It weighs {kilograms} kg, the file says. That isn’t kept here yet. Go by the label.',
	'emitter-unused': 'No channel drives the emitter {name}, so it’s left out.',
	'name-cut': '“{found}” is too long here. It’s called “{name}”.',

	'mode-refused': 'The mode {mode} is left out. {because}',
	'mode-not-asked': 'The mode {mode} wasn’t picked, so it’s left out.',
	'cells-differ':
		'The mode {mode} has {cells} {cells?cell|cells}, and another has {most}. The most is taken for the whole fixture.',

	'virtual-channel': '{channel} of {mode} is worked out by a desk and isn’t sent on the line. It’s left out.',
	'slot-unused': 'Nothing in the file stands at channel {slot} of {mode}. It’s kept as one that does nothing.',
	'extra-bytes':
		'{channel} of {mode} is finer than 16 bit. The {bytes} finest {bytes?channel does|channels do} nothing here.',
	'fine-of-bands':
		'{channel} of {mode} has a fine channel. It does nothing here, since its bands go by the coarse one.',
	'not-acted': `“{name}” of {mode} ({attribute}) is kept by name. What it does isn’t acted out. ${REAL_ACTS}`,
	'shutter-between': `“{name}” of {mode} goes from shut to open on the way. It’s kept by name and does nothing here. ${REAL_ACTS}`,
	reversed: `“{name}” of {mode} runs the other way round, from high to low. It’s kept by name and does nothing here. ${REAL_ACTS}`,
	'other-master': `“{name}” of {mode} works only at some values of {master}. It’s left out: what’s taken is what works when that is at rest. ${REAL_ACTS}`,
	'master-unknown': '“{name}” of {mode} hangs on {master}, which the file doesn’t have. It’s taken to work always.',
	'colour-not-given':
		'“{name}” of {mode} is a colour, but the file doesn’t say which. It’s kept by name and does nothing here.',
	'colour-fitted': '“{name}” of {mode} is a colour. Its levels here were worked out, so the real ones may differ.',
	'colour-out-of-reach':
		'“{name}” of {mode} is a colour that these emitters can’t make. The nearest emitter stands for it.',
	'rate-clamped':
		'“{name}” of {mode} flashes {found} times a second, the file says. It’s taken as {rate}. The real one may flash faster: warn people before you try it.',
	'part-of-slot': `“{name}” of {mode} ({attribute}) shares its channel with others. It’s kept by name and does nothing here. ${REAL_ACTS}`,
	'sets-dropped':
		'“{name}” of {mode} has {count} named {count?stretch|stretches} within its fade. Their names aren’t kept.',
	'same-start': '“{name}” of {mode} starts at the same value as another. The first one is taken.',
	'set-outside': 'A named stretch of “{name}” of {mode} lies outside its values. It’s left out.',
	'cut-off-byte':
		'“{name}” of {mode} starts between two values of the coarse channel. Its edge moves down to the one below.',
	'too-narrow': 'A stretch of “{name}” of {mode} is narrower than one value. It’s left out.',
	'resting-level': '{channel} of {mode} rests at {level} on a desk. Here every fader starts at zero.',

	'beams-swapped':
		'The file gives a beam of {beam}° and a field of {field}°. A field is the wider one, so they’re swapped.',
	'beam-clamped': 'A beam of {found}° can’t be. It’s taken as {degrees}°.',
	'beams-differ': '{count} of its {count?beam differs|beams differ} from the first. The first stands for all.',
	'mixed-figures': [
		{ when: { of: 'lumens' }, says: 'Not every beam of the file says how bright it is, so none is used.' },
		{ says: 'Not every beam of the file says what it draws, so none is used.' },
	],

	'not-written': [
		{ when: { what: 'panel' }, says: 'Its panel and menu aren’t in the file. GDTF has no place for them.' },
		{ when: { what: 'battery' }, says: 'Its battery isn’t in the file. GDTF has no place for one.' },
		{ when: { what: 'idle-watts' }, says: 'What it draws with the light out isn’t in the file.' },
		{ when: { what: 'emitter-watts' }, says: 'The file has the watts of the whole fixture, not of each emitter.' },
		{ when: { what: 'static-levels' }, says: 'Static colours are in the file as colours, not as levels.' },
		{ when: { what: 'programmes' }, says: 'Programmes are in the file by name. What they do isn’t.' },
		{ when: { what: 'settings' }, says: 'Its settings and defaults aren’t in the file.' },
		{ says: 'What it does to the line, and how it follows, isn’t in the file.' },
	],
	'name-changed': '“{found}” has marks that a GDTF name can’t have. It’s “{name}” in the file.',
	'cells-in-other-order': 'The cells of {mode} come in another order in the file: those of one channel stand together.',
	'cells-overlap':
		'In {mode} a channel’s cells overlap another’s, which the file can’t say. It goes to the whole fixture.',
} as const;

/** What the file doesn’t say, and was assumed, by its code. */
export const asked = {
	panel: 'The file says nothing of the panel. This one is a stand-in: the real panel differs.',
	battery: 'The file can’t say if it has a battery. It’s taken as mains only. Look at the label.',
	'idle-watts': 'The file can’t say what it draws with the light out. It’s taken as {assumed} W.',
	'power-link': 'The file doesn’t say if mains goes on to the next fixture. It’s taken as not. Look at the back.',
	line: 'The file can’t say what load it puts on the line. It’s taken as {assumed} unit load.',
	follows:
		'The file can’t say where a follower listens. It’s taken as its own start address; some listen from channel 1 instead. At start address 1 both come to the same. Its manual says what else it needs to follow.',
	settings:
		'The file can’t say what it does on signal loss or at its defaults. It’s taken to hold. Look in the manual.',
	'static-colour': 'It needs one static colour here, so “{assumed}” stands in.',
	programme:
		'The file can’t say what its programmes do. “{assumed}” stands in, and only the panel starts it. The real ones differ, and may flash: warn people before you try them.',
	emitters: 'No channel of the file drives an emitter. One white emitter stands in.',
	'emitter-colour': 'The file doesn’t say which {assumed} this is. The usual one is taken.',
	lumens: 'The file doesn’t say how bright it is. It’s taken as {assumed} lm.',
	'emitter-lumens': 'The file doesn’t say how bright each emitter is. All of them come to {assumed} lm.',
	watts: 'The file doesn’t say what it draws. It’s taken as {assumed} W. Go by the label for any sum of power.',
	'emitter-watts': 'The file doesn’t say what each emitter draws. It’s taken as {assumed} W each.',
	beam: 'The file doesn’t say its beam angle. It’s taken as {assumed}°.',
	field: 'The file doesn’t say its field angle. It’s taken as {assumed}°.',
	'strobe-rate':
		'The file doesn’t say how fast a strobe flashes. It’s taken as {assumed} times a second. The real one may flash faster. Look in the manual, and warn people before you try it.',
} as const;
