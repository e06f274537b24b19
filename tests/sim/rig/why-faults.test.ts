import { describe, expect, test } from 'vitest';
import { bundledRig, RIG_IDS, type RigSheet } from '../../../shared/sheet/index.ts';
import type { PlacedFault } from '../../../sim/event/index.ts';
import { FAULTS, faultEvents, placedFaults } from '../../../sim/fault/index.ts';
import { openRig, type Reason, type Rig, why } from '../../../sim/rig/index.ts';

/** Whether a link of a fixture's trail is the one that names a fault at its place. */
type Names = (reason: Reason, placed: PlacedFault, fixture: string) => boolean;

const own =
	(...ids: string[]): Names =>
	({ id }, { place }, fixture) =>
		fixture === place && ids.includes(id);
const any =
	(...ids: string[]): Names =>
	({ id }) =>
		ids.includes(id);
const either =
	(...all: Names[]): Names =>
	(...of) =>
		all.some((names) => names(...of));
/** The fact of that name is, or holds, the fault's place and what follows it. */
const at =
	(id: string, fact: string, after = ''): Names =>
	(reason, { place }) =>
		reason.id === id && [reason.facts[fact]].flat().includes(`${place}${after}`);
const cable = (id: string): Names => at(id, 'cables');
const leader = at('source.leader-off', 'fixtures');
const noSymptom: Names = () => false;
const collides = either(at('line.collision', 'sockets', ':out'), own('drive.leading'));

/** What names each fault. A fault with no line here, or one here with no fault, fails. */
const NAMED: Readonly<Record<string, Names>> = {
	'switched-off': either(own('power.off', 'power.charging'), leader),
	'battery-flat': either(own('power.flat'), leader),
	'battery-low': noSymptom,
	'battery-worn': noSymptom,
	'charger-dead': noSymptom,
	'mains-unplugged': either(own('power.no-mains'), leader),
	'hall-power-off': any('power.hall-dark', 'source.desk-off', 'line.splitter-off'),
	'wrong-mode': own('address.mode-differs'),
	'wrong-address': own('address.patch-differs'),
	'left-on-held': own('drive.held'),
	'left-on-programme': own('drive.programme'),
	'left-on-sound': own('drive.programme'),
	'follower-under-desk': own('drive.follow'),
	'follower-on-line': own('address.patch-differs'),
	'leader-not-leading': leader,
	'second-leader': collides,
	'leader-under-desk': collides,
	'limit-low': own('level.limit'),
	'level-down': own('level.nothing', 'drive.held', 'drive.programme'),
	'strobe-left-on': own('drive.held'),
	'strobe-programme': own('drive.programme'),
	'wrong-held': own('drive.held'),
	'curve-wrong': own('level.curve'),
	'loss-set-wrong': own('signal.holding', 'signal.dark', 'signal.running'),
	'hearing-nothing': own('level.silence'),
	'back-at-defaults': either(
		own('drive.held', 'drive.programme', 'address.patch-differs', 'address.mode-differs'),
		leader,
	),
	'one-switch-wrong': own('address.patch-differs'),
	'tenth-switch-up': own('drive.held', 'drive.programme'),
	'slide-wrong': own('address.mode-differs'),
	'sensor-shut': own('drive.remote-shut'),
	'sensor-left-open': noSymptom,
	'out-of-sight': own('drive.remote-hidden'),
	'remote-battery-flat': any('drive.remote-flat'),
	'remote-other-code': any('drive.remote-code'),
	'fixture-other-code': own('drive.remote-code'),
	'sensor-dead': own('drive.sensor-dead'),
	'cable-out': cable('line.cable-loose'),
	'cable-dead': cable('line.pair-open'),
	'minus-open': cable('line.one-wire-open'),
	'plus-open': cable('line.one-wire-open'),
	'common-open': cable('line.common-open'),
	'wires-swapped': cable('line.swapped'),
	'microphone-cable': cable('line.microphone-cable'),
	'cable-too-long': any('line.too-long', 'line.no-terminator'),
	'terminator-missing': at('line.no-terminator', 'port'),
	'universes-exchanged': any('address.universe-differs'),
	'bad-socket-in': at('line.bad-socket', 'port', ':in'),
	'bad-socket-out': at('line.bad-socket', 'port', ':out'),
	'too-many-loads': any('line.too-many-loads'),
	'split-without-splitter': any('line.split'),
	'output-off': at('source.output-off', 'output'),
	'master-down': any('source.master'),
	'wrong-universe': any('address.universe-differs'),
	'patched-elsewhere': own('address.patch-differs'),
	'patched-other-universe': own('address.universe-differs'),
	'levels-down': own('slots.intensity', 'slots.colours'),
	'wrong-colour-slots': own('slots.colours'),
	'function-left-up': own('slots.programme'),
	'strobe-left-up': own('slots.strobe'),
	'shutter-closed': own('slots.dark'),
	'emitter-dead': own('lamp.dead-emitter'),
	'receiver-dead': own('line.receiver-dead'),
	'folded-back': own('lamp.folded-back'),
	'display-dead': noSymptom,
	'microphone-dead': own('level.silence'),
	'lens-covered': own('lamp.covered'),
	'ultraviolet-alone': own('slots.colours'),
	'fuse-blown': either(own('power.no-mains'), leader),
	'supply-dead': either(own('power.no-mains'), leader),
	'socket-dead': any('power.no-mains'),
	'lead-dead': any('power.no-mains'),
	'breaker-off': any('power.no-mains'),
	'function-switch-wrong': own('drive.held', 'drive.programme', 'drive.line', 'drive.follow'),
	'tenth-switch-down': own('drive.line'),
	'sensor-covered': own('drive.remote-hidden'),
	'splitter-off': any('line.splitter-off'),
	'splitter-output-dead': any('line.no-cable'),
	'second-source': any('line.collision'),
	'patched-other-mode': own('address.mode-differs'),
	'desk-blind': noSymptom,
	'desk-frozen': noSymptom,
	'start-code-wrong': any('source.start-code'),
};

/** What a person sees the fault by: the light, and whether the data indicator says that data comes. */
const shows = (rig: Rig, fixture: string): string => {
	const { light, lamps } = rig.look(fixture);
	return JSON.stringify([light, lamps.data === 'out' ? 'steady' : lamps.data]);
};

/** The rig opened with the fault in it, and the rig into which it came while all was running. */
function* sights(sheet: RigSheet, placed: PlacedFault): Generator<{ sound: Rig; faulty: Rig; when: string }> {
	const sound = openRig(sheet);
	sound.wait(2000);
	const cold = openRig(sheet, { faults: [placed] });
	cold.wait(2000);
	yield { sound, faulty: cold, when: 'from the start' };
	const warm = sound.fork();
	warm.sendTogether(faultEvents(sheet, placed));
	warm.wait(3000);
	sound.wait(3000);
	yield { sound, faulty: warm, when: 'while it ran' };
}

// Symptom: a dead, reversed or sourceless line was marked as going on, in green, and then nothing got past. Cause: its links took
// their mark from whether data comes, so a link that stops it was marked by what it had stopped.
describe.each(RIG_IDS)('every fault at every place, on %s', (rigId) => {
	const sheet = bundledRig(rigId);
	const ids = sheet.fixtures.map(({ id }) => id);

	test.each(FAULTS.map(({ id }) => id))(
		'%s: is never marked as going on, and is named where it is suffered',
		(fault) => {
			const names = NAMED[fault] ?? (() => false);
			for (const { placed } of placedFaults(sheet).filter((each) => each.placed.fault === fault)) {
				for (const { sound, faulty, when } of sights(sheet, placed)) {
					const said = `${fault} at ${placed.place} ${placed.detail ?? ''} ${when}`;
					const victims = ids.filter((id) => shows(sound, id) !== shows(faulty, id));
					const named = victims.filter((id) => why(faulty, id).some((reason) => names(reason, placed, id)));
					if (victims.length > 0) expect(named, `${said} is named by none of ${victims}`).not.toEqual([]);
					for (const id of new Set([...victims, ...ids.filter((each) => each === placed.place)]))
						for (const reason of why(faulty, id))
							if (names(reason, placed, id))
								expect(reason.effect, `${said}: ${id} has ${reason.id}`).not.toBe('passes');
				}
			}
		},
	);
});

test('each fault has a link that names it, and no link is asked of a fault that is none', () => {
	expect(Object.keys(NAMED).sort()).toEqual(FAULTS.map(({ id }) => id).sort());
});
