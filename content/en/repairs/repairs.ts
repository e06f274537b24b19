import type { CheckSpot } from '../checks/index.ts';
import type { Says } from '../rig/index.ts';

/** Words for one mend. Facts are what the sheet says of its place. */
export interface RepairWords {
	/** What it comes to, in a few words, with its place. No full stop. */
	readonly title: Says;
	/** One to three short sentences: what to do. */
	readonly does: Says;
	/** One sentence or two: how to tell that it is mended. */
	readonly confirm: Says;
	/** Where the hands go. */
	readonly spot: CheckSpot;
}

const steady = 'The data indicators of the fixtures beyond it stay steady.';
const rest = 'Then hold its other settings to the sheet.';
const leads = '[{leads} ]';

/** Every mend of the catalogue, by id. */
export const repairs: Readonly<Record<string, RepairWords>> = {
	'switch-on': {
		title: 'Switch on {place as name}',
		does: 'Switch it on at its own power switch.',
		confirm: 'Its power indicator is lit.',
		spot: 'power-switch',
	},
	'fresh-battery': {
		title: 'A full battery for {place as name}',
		does: 'If it hangs, this is for those cleared to go up. Switch it off, and fit a charged pack of the maker’s own kind if it goes in from outside. If not, put a charged fixture of the same kind in its place.',
		confirm: 'Its battery indicator shows four bars.',
		spot: 'battery-lamp',
	},
	'plug-mains': {
		title: 'Plug in the mains lead of {place as name}',
		does: [
			{
				when: { plug: 'wall' },
				says: 'Ask first why it’s out: someone may have pulled it to work on the row. All hands off the leads, the lead and both its plugs dry and undamaged? Then plug it into {plug as feed}.',
			},
			{
				says: 'Isolate first: the plug of its row comes out at the wall. If the lead and both its plugs are dry and undamaged, plug it into {plug as feed}. The plug at the wall goes in last, once all hands are off the leads.',
			},
		],
		confirm: 'Its power indicator is lit, or its battery indicator says that it charges.',
		spot: 'mains',
	},
	'restore-hall': {
		title: 'Get the hall’s mains back',
		does: 'Ask whoever is responsible for the supply to find out why it went and to restore it. Do not reset a breaker yourself.',
		confirm: 'The desk and all that runs on mains come up again.',
		spot: 'hall',
	},
	'set-panel': {
		title: 'Set {place as name} as on the sheet',
		does: [
			{
				when: { meantWork: 'line' },
				says: `At its panel, set the light to come from the line, start address {meantAddress}, mode “{meantMode as mode}”. ${leads}${rest}`,
			},
			{
				when: { meantWork: 'follow' },
				says: `At its panel, set it to follow a leader, in mode “{meantMode as mode}”. ${rest}`,
			},
			{
				when: { meantWork: 'held' },
				says: `At its panel, set its own static colour {meantHeld as held}, at {meantLevel as percent} brightness, {meantStrobe as strobe}. ${leads}${rest}`,
			},
			{
				says: `At its panel, set its own programme “{meantProgramme as programme}”, at {meantLevel as percent} brightness. ${leads}${rest}`,
			},
		],
		confirm: 'Read each value again on the display. Then check if the light is right.',
		spot: 'keys',
	},
	'set-switches': {
		title: 'Set the switches of {place as name}',
		does: [
			{ when: { allDown: true }, says: 'Put all ten switches down[, and the slides so: {slides as list}].' },
			{
				says: 'Put {up?switch|switches} {up as numbers} up and the others down[, and the slides so: {slides as list}].',
			},
		],
		confirm: 'Read the switches once more from 1 to 10, then each slide.',
		spot: 'switches',
	},
	'open-sensor': {
		title: [
			{ when: { meantSensor: 'open' }, says: 'Open the remote sensor of {place as name}' },
			{ says: 'Shut the remote sensor of {place as name}' },
		],
		does: 'At its panel, set “Remote sensor” to {meantSensor as sensor}.',
		confirm: [
			{ when: { meantSensor: 'open' }, says: 'Its sensor indicator is lit, and it answers the remote.' },
			{ says: 'Its sensor indicator is out, and it ignores the remote.' },
		],
		spot: 'keys',
	},
	'clear-sight': {
		title: 'Clear the view to {place as name}',
		does: 'Move what’s in the way, or stand where you can see its sensor.',
		confirm: 'It answers the remote from there.',
		spot: 'sensor-lamp',
	},
	'remote-battery': {
		title: 'A fresh battery for the remote',
		does: 'Put a fresh battery in the remote, the right way round.',
		confirm: 'The remote’s own indicator blinks at a press.',
		spot: 'remote',
	},
	'remote-code': {
		title: 'Set the remote to code {code}',
		does: 'Set the remote to code {code}, as on the sheet.',
		confirm: 'The fixtures that should answer the remote do.',
		spot: 'remote',
	},
	'plug-cable': {
		title: 'Plug in {place as cable}',
		does: 'Plug in both its ends, from {from as port} to {to as port}. Push each plug until it latches.',
		confirm: steady,
		spot: 'cable',
	},
	'replace-cable': {
		title: 'Replace {place as cable}',
		does: 'Run a known-good data cable in its place, from {from as port} to {to as port}. Tape the old one and put it with the repairs.',
		confirm: steady,
		spot: 'cable',
	},
	'fit-terminator': {
		title: 'Fit a terminator in {place as port}',
		does: 'Push a terminator into {place as port}.',
		confirm: 'The light no longer jumps, and the data indicators of its line stay steady.',
		spot: 'socket-out',
	},
	'right-way-round': {
		title: 'Each cable in its own output',
		does: 'At the desk, put each cable in its own output: {plugs as list}.',
		confirm: 'Each fixture answers its own faders, and no others.',
		spot: 'desk-output',
	},
	'output-on': {
		title: 'Switch on {place as output}',
		does: 'At the desk, switch on {place as output}.',
		confirm: 'The data indicators of its line stay steady.',
		spot: 'desk-output',
	},
	'raise-master': {
		title: 'Set the master to {master as level}',
		does: 'Say aloud that light is coming. Then bring the desk’s master to {master as level}.',
		confirm: 'All that the desk asks for is lit, as bright as it should be.',
		spot: 'desk-screen',
	},
	'set-universe': {
		title: 'Set {place as output} to universe {universe}',
		does: 'At the desk, set {place as output} to universe {universe}.',
		confirm: 'The fixtures of its line answer their own faders.',
		spot: 'desk-output',
	},
	'set-patch': {
		title: 'Patch {place as name} as on the sheet',
		does: 'At the desk, patch it in universe {patchUniverse} at start address {patchAddress}, mode “{patchMode as mode}”. Then call up the look again.',
		confirm: 'It answers its own faders, and nothing else does.',
		spot: 'desk-screen',
	},
	'set-levels': {
		title: 'Faders of {place as name} as on the sheet',
		does: [
			{ when: { raised: null }, says: 'At the desk, take all its faders to 0.' },
			{ says: 'At the desk, set its faders so: {raised as list}[; {others} at 0].' },
		],
		confirm: 'Its colour and brightness are right, and it does nothing by itself.',
		spot: 'desk-screen',
	},
	'let-cool': {
		title: 'Let {place as name} cool',
		does: 'Turn it down or off for {mendTime as time}, in clear air. Take away what crowds its vents.',
		confirm: 'It comes back to its full brightness, and stays there.',
		spot: 'lens',
	},
	'clear-lens': {
		title: 'Clear the lens of {place as name}',
		does: 'Turn it down. What covers it may be hot: let it cool, or use gloves, and take it away without looking into the lens. If it smokes, keep away and raise the alarm.',
		confirm: 'Its light falls on the wall again.',
		spot: 'lens',
	},
	'swap-fixture': {
		title: 'A spare in place of {place as name}',
		does: [
			{
				when: { plug: 'none' },
				says: 'Let it cool; if it hangs, this is for those cleared to go up. Put a known-good fixture of the same kind in its place, set as on the sheet. Tape the old one and hand it to a competent repairer.',
			},
			{
				says: 'On mains, this is for the competent person (in the US, the qualified person): isolate first, the row’s plug comes out at the wall and goes in last. Let it cool, and put a known-good fixture of the same kind in its place, set as on the sheet. Tape the old one and hand it to a competent repairer.',
			},
		],
		confirm: 'The spare does what the sheet asks.',
		spot: 'wall',
	},
	'other-socket': {
		title: 'Another socket for {place as name}',
		does: 'Leave the dead socket: mark it, and tell the venue. It’s for a competent electrician (in the US, a licensed electrician or a qualified person). Ask them which other socket this load may go on. If socket, lead, plug and fixture are dry and undamaged, all hands are off the row, and the lead stays out of walkways and exit routes, plug it in there.',
		confirm: 'Its power indicator is lit.',
		spot: 'wall',
	},
	'replace-lead': {
		title: 'A good mains lead for {place as name}',
		does: 'Scorched, warm, wet or damaged? Don’t touch it: have its supply cut first. On mains, this is for the competent person (in the US, the qualified person), and overhead for those cleared to go up. Isolate: the plug of its row comes out at the wall, and nobody else can put it back. Fit a lead of the same kind and rating, undamaged and in test, and mark the old one. The plug at the wall goes in last, once all hands are off the leads.',
		confirm: 'Its power indicator is lit.',
		spot: 'mains',
	},
	'ask-breaker': {
		title: 'Get the breaker looked at',
		does: 'Hands off the row, and touch nothing that’s wet, hot or damaged. Tell whoever is responsible for the supply (the electrician; in the US, a licensed electrician or a qualified person) what was switched on last. They find out why it went, say what comes out, and restore it. Don’t reset it yourself, not even once. If it goes again, it stays off.',
		confirm: 'They say that it’s back, and what may run on it. That comes up, and stays up.',
		spot: 'hall',
	},
	'box-on': {
		title: 'Power to {place as device}',
		does: 'Ask first why it’s off. If its lead and both plugs are in, dry and undamaged, say aloud that light is coming, then switch it on. Still out? Leave it, and its socket, to the electrician.',
		confirm: `Its power indicator is lit. ${steady}`,
		spot: 'power-lamp',
	},
	'other-output': {
		title: 'Another output of {place as device}',
		does: 'Move the cable to an output of the splitter that you know works, or put in a spare splitter. Mark the dead output.',
		confirm: steady,
		spot: 'socket-out',
	},
	'lift-stray': {
		title: 'One source on {place as cable}',
		does: 'Find the second cable that’s joined to this line. Ask the operator, and be sure by its tape which one it is, before you pull it: the wrong one takes out the whole line. Say aloud that light may jump, then pull it. One line has one source: to join two, use a merger.',
		confirm: steady,
		spot: 'socket-in',
	},
	'leave-blind': {
		title: 'Take the desk out of blind',
		does: 'Ask the operator first: what was set in blind may jump on stage. Say aloud that light may jump, then leave blind.',
		confirm: 'The light follows its faders.',
		spot: 'desk-screen',
	},
	'restart-desk': {
		title: 'Restart the desk',
		does: 'Ask the operator first. While it restarts, lights may go dark, jump or flash by themselves: have other light up to see by (house lights), and tell everyone. Save the show if it still lets you. Then restart it as its maker says. With people in the room it waits, unless the operator says now.',
		confirm: 'The light follows its faders.',
		spot: 'desk-screen',
	},
	'set-start-code': {
		title: 'Let {place as output} send levels',
		does: 'Ask the operator first, and say aloud that light may jump. Then, in the setup of the desk’s outputs, set {place as output} to send levels: start code 0.',
		confirm: steady,
		spot: 'desk-output',
	},
	'clear-sensor': {
		title: 'Clear the sensor of {place as name}',
		does: 'If it hangs, this is for those cleared to go up. Ask if the tape is there on purpose. Turn the light down and let it cool, keep your eyes off the lens, and take off what covers the window of its remote sensor. If strong light falls on it, have that light turned down or away.',
		confirm: 'It answers the remote.',
		spot: 'sensor-lamp',
	},
};
