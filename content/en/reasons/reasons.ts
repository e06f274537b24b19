import type { Says } from '../rig/index.ts';

const band = 'Channel {slot as slot} ({name}) is at {value as level}, in {from} to {to}: {band}.';
const spoils = '[ That spoils {spoiled as percent} of the frames.]';

const reads =
	'{span?channel|channels} {span as numbers} as mode “{mode as mode}”, a footprint of {footprint}.[ Its panel says start address {panel}, but a follower of this kind reads from channel 1 on.]';

/** Words for every link of a reason trail. */
export const reasons = {
	// ---- what feeds it
	'power.off': 'Its own power switch is off.',
	'power.charging':
		'Its own power switch is off and mains reaches it: it stands on charge, with its battery at {percent as percent}.',
	'power.no-mains': [
		{ when: { plug: 'none' }, says: 'It runs on mains alone, and its mains lead is plugged into nothing.' },
		{ says: 'It runs on mains alone, and none comes from {plug as feed}.' },
	],
	'power.hall-dark': 'It runs on mains alone, and the hall’s mains is off.',
	'power.flat': 'It’s switched on, but its battery is empty and no mains reaches it.',
	'power.battery': 'It runs on its battery, which is at {percent as percent}[ and gives {watts} W].',
	'power.mains': 'It runs on mains from {plug as feed}.',

	// ---- what decides
	'drive.line': 'It’s set to obey the line, from start address {address} on, in mode “{mode as mode}”.',
	'drive.follow': [
		{
			when: { talker: 'desk' },
			says: 'It’s set to follow a leader, in mode “{mode as mode}”, though it’s a desk that sends on this line.',
		},
		{ says: 'It’s set to follow a leader, in mode “{mode as mode}”.' },
	],
	'drive.held':
		'It’s set to its own static colour, {held as held}, at {level as percent} brightness[, flashing {strobe as rate}]. It takes no light from the line.',
	'drive.programme': [
		{
			when: { kind: 'sound' },
			says: 'It’s set to its own programme “{programme as programme}”, at {level as percent} brightness: {answer as does}. It takes no light from the line.',
		},
		{
			says: 'It’s set to its own programme “{programme as programme}”, at speed {speed} of 100 and {level as percent} brightness. It takes no light from the line.',
		},
	],
	'drive.leading': [
		{
			when: { effect: 'cuts' },
			says: 'It leads, and {others as ports} {others?drives|drive} the same line. With more than one sender every frame is spoiled, for all on that line.',
		},
		{ says: 'It leads: it sends its own light down the line from channel 1, laid out as mode “{mode as mode}”.' },
	],
	'drive.leading-not': [
		{
			when: { following: true },
			says: 'It’s set to lead as well, but it sends nothing while it follows. A leader shows its own colour or programme.',
		},
		{
			says: 'It’s set to lead as well, but it sends nothing while it obeys the line. A leader shows its own colour or programme.',
		},
	],
	'drive.remote-shut': 'Its remote sensor is set shut, so the remote changes nothing here.',
	'drive.remote-hidden': 'Something stands between the remote and its sensor, so the remote changes nothing here.',
	'drive.sensor-dead': 'Its remote sensor is dead, so the remote changes nothing here.',
	'drive.remote-flat': 'The remote’s own battery is flat, so the remote changes nothing here.',
	'drive.remote-code':
		'The remote sends code {remote} and this fixture listens to code {fixture}, so the remote changes nothing here.',

	// ---- where the frames come from
	'source.none': 'Neither a desk nor a leader sends its way.',
	'source.desk-off': 'The desk has no power, since the hall’s mains is off. So it sends nothing.',
	'source.output-off': '{output as output} is switched off, so it sends nothing down this line.',
	'source.leader-off': [
		{
			when: { set: true },
			says: '{fixtures as names} {fixtures?is|are} set to lead this line, but {fixtures?has|have} no power.',
		},
		{
			says: '{fixtures as names} {fixtures?shows|show} light of {fixtures?its|their} own on this line, but {fixtures?isn’t|aren’t} set to lead, so {fixtures?it sends|they send} nothing.',
		},
	],
	'source.desk': '{output as output} sends universe {universe} its way.',
	'source.start-code':
		'Those frames have start code {code}[ ({code as startCode})]. Only start code 0 carries levels, so they’re ignored.',
	'source.master': 'The desk’s master is at {level as level} and holds the light down.',
	'source.leader': '{fixture as name} leads this line, and sends its own light laid out as mode “{mode as theirMode}”.',

	// ---- how they fare on the way
	'line.no-cable': 'No cable leads to its data sockets from anything that sends.',
	'line.cable-loose':
		'{cables as cableNames} {cables?has|each have} a loose end, so nothing comes through {cables?it|them}. The other {cables?end is|ends are} in {ports as ports}.',
	'line.splitter-off': '{splitter as device} has no power, so nothing leaves it.',
	'line.bad-socket': 'The contact in {port as port} is bad: nothing passes between that socket and its plug.',
	'line.pair-open': 'Both data wires are open on the way, in {cables as cables}, so nothing gets past.',
	'line.one-wire-open': [
		{
			when: { spoiled: null },
			says: 'One of the two data wires, {wire as wire}, is open[ in {cables as cables}].',
		},
		{
			says: `One of the two data wires, {wire as wire}, is open[ in {cables as cables}], so the signal is half there.${spoils}`,
		},
	],
	'line.common-open': `The common wire is open[ in {cables as cables}], and mains earth (ground in the US) doesn’t join the two ends in its place.${spoils}`,
	'line.swapped':
		'The two data wires change places on the way[, in {cables as cables}], so the signal arrives the wrong way round.',
	'line.collision': '{sockets as ports} drive this line at once, so every frame is spoiled.',
	'line.no-terminator': [
		{
			when: { free: false },
			says: `The line runs on for {metres as metres} to {port as port}, gets to no terminator by {plugged as cableNames}, which {plugged?is|are} in there, and the echo comes back.${spoils}`,
		},
		{
			says: `The line runs on for {metres as metres} to an open end at {port as port}, with no terminator there, and the echo comes back.${spoils}`,
		},
	],
	'line.too-long': `It is {metres as metres} of cable to here, and {most as metres} is the most.${spoils}`,
	'line.too-many-loads': `This line carries {loads} unit loads, and {most} is the most.${spoils}`,
	'line.microphone-cable': `{metres as metres} of the way is microphone cable, which isn’t made for this signal: {cables as cables}.${spoils}`,
	'line.split': `Two plugs share {port as port}, and a line must not branch without a splitter.${spoils}`,
	'line.ring': `The line runs in a ring[ through {cables as cables}], so the signal meets itself.${spoils}`,
	'line.extra-terminators': `There are {count} terminators on this line, and {most} is the most.${spoils}`,
	'line.receiver-dead': 'Its line receiver is dead: it passes the line on and hears nothing itself.',
	'line.common-open-yet':
		'The common wire is open in {cables as cables}. On its own this doesn’t spoil the data here, since mains earth (ground in the US) joins the two ends. With one of them on battery it would. Swap the cable all the same.',
	'line.microphone-cable-yet':
		'{metres as metres} of the way is microphone cable: {cables as cables}. On its own this doesn’t spoil the data here: on this bench that starts at about {harms as metres}. Swap it for data cable all the same.',
	'line.no-terminator-yet': [
		{
			when: { free: false },
			says: 'The line gets to no terminator by {plugged as cableNames}, which {plugged?is|are} in {port as port}. On its own this doesn’t spoil the data here: the line runs on for {metres as metres} to that end, and on this bench that starts at about {harms as metres}. Look at {plugged?that cable|those cables} all the same.',
		},
		{
			says: 'There’s no terminator in {port as port}. On its own this doesn’t spoil the data here: the line runs on for {metres as metres} to that end, and on this bench that starts at about {harms as metres}. Fit one all the same.',
		},
	],
	'line.clean': 'Nothing spoils the signal on the way[: it comes by {cables as cables}].',

	// ---- whether there is data
	'signal.never': 'It has had no data since it came on, so it stays dark.',
	'signal.overdue': 'Its data has just stopped. Until it takes the data for lost, it keeps its last look.',
	'signal.holding': 'Its data is gone, and it’s set to keep its last look.',
	'signal.dark': 'Its data is gone, and it’s set to go dark then.',
	'signal.running': [
		{
			when: { kind: 'sound' },
			says: 'Its data is gone, and it’s set to run its own programme then: “{programme as programme}”, at {level as percent} brightness.',
		},
		{
			says: 'Its data is gone, and it’s set to run its own programme then: “{programme as programme}”, at speed {speed} of 100 and {level as percent} brightness.',
		},
	],

	// ---- which slots it reads
	'address.reads':
		'It reads {span?channel|channels} {span as numbers} as mode “{mode as mode}”, a footprint of {footprint}.',
	'address.follows': [
		{ when: { talker: 'leader' }, says: `As a follower it reads the leader’s ${reads}` },
		{ says: `As a follower it reads ${reads}` },
	],
	'address.past-end':
		'Its channels run on to {last}, and a universe ends at {end}: {slots} of them {slots?doesn’t|don’t} exist, and {slots?reads|read} as 0.',
	'address.universe-differs': 'The desk has it in universe {desk}, and this line carries universe {line}.',
	'address.patch-differs': [
		{
			when: { talker: 'leader' },
			says: 'A leader sends from channel {desk} on, and this one reads from channel {fixture} on.',
		},
		{ when: { panel: null }, says: 'The desk has it at start address {desk}, and it’s set to {fixture}.' },
		{
			says: 'The desk has it at start address {desk}, and its panel says {panel}. But it follows, and a follower of this kind reads from channel {fixture} on.',
		},
	],
	'address.mode-differs': [
		{
			when: { talker: 'leader' },
			says: 'The leader sends as mode “{other as theirMode}”, and this one reads as mode “{fixture as mode}”.',
		},
		{ says: 'The desk has it in mode “{other as mode}”, and it’s set to mode “{fixture as mode}”.' },
	],

	// ---- what the slots say
	'slots.intensity': [
		{
			when: { effect: 'stops' },
			says: 'Channel {slot as slot} ({slotName}) is at {value as level}, so no light gets out.',
		},
		{ says: 'Channel {slot as slot} ({slotName}) is at {value as level}.' },
	],
	'slots.colours': [
		{ when: { up: 0 }, says: 'All its colour channels[, {slots as numbers},] are at 0, so no colour is asked for.' },
		{ says: 'Of its colour channels, {slots as numbers}, these are up: {raised}.' },
	],
	'slots.band': [
		{ when: { overruled: true }, says: `${band} Another channel has taken over, so this changes nothing.` },
		{ says: band },
	],
	'slots.programme': [
		{
			when: { kind: 'sound' },
			says: `${band} That starts the programme “{programme as programme}”: {answer as does}.`,
		},
		{ says: `${band} That starts the programme “{programme as programme}”, at speed {speed} of 100.` },
	],
	'slots.held': `${band} That calls up the static colour {held as held}.`,
	'slots.dark': `${band} That shuts the light off.`,
	'slots.strobe': `${band} That makes it flash {rate as rate}.`,
	'slots.ignored': 'Its colour channels[, {slots as numbers},] are ignored.',

	// ---- how bright it may be
	'level.nothing': 'Its own brightness is set to 0 %, so no light gets out.',
	'level.silence': [
		{ when: { hearing: 0 }, says: 'The programme waits for sound, and its microphone is set to hear nothing.' },
		{ says: 'The programme waits for sound, and it hears none. Its microphone is set to {hearing as percent}.' },
	],
	'level.limit': 'Its highest output is set to {limit as percent}, and all below comes down in proportion.',
	'level.curve': 'Its dimmer curve is {curve as curve}: {curve as bends}.',

	// ---- what is wrong with the lamp
	'lamp.dead-emitter': [
		{
			when: { effect: 'stops' },
			says: 'Its {emitters as emitters} {emitters?emitter doesn’t|emitters don’t} light, and nothing else is asked for.',
		},
		{
			says: 'Its {emitters as emitters} {emitters?emitter doesn’t|emitters don’t} light, though {emitters?it is|they are} asked to.',
		},
	],
	'lamp.folded-back': [
		{ when: { percent: 0 }, says: 'It’s too hot, and has shut its light off to cool.' },
		{ when: { percent: 100 }, says: 'It’s hot, and holds its light back a little.' },
		{ says: 'It’s too hot, and holds its light back to {percent as percent}.' },
	],
	'lamp.covered': 'Something covers its lens, so no light gets out. Cover nothing that is lit: it gets hot.',

	// ---- what is seen
	'light.dark': [
		{ when: { emitting: true }, says: 'Its emitters are lit, too faintly to see.' },
		{ says: 'No emitter is lit.' },
	],
	'light.shows': 'What is seen is {seen}.',
	'light.ultraviolet': 'Ultraviolet comes out of it: barely seen, still strong. Do not look in.',
	'light.flashes': 'It flashes {rate as rate}. Warn people before they see it.',
	'light.flickers': 'It jumps about, since [{damaged as percent} of its ]frames arrive damaged.',
} as const satisfies Record<string, Says>;
