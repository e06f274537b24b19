import { describe, expect, test } from 'vitest';
import { bundledRig, type RIG_IDS } from '../../../shared/sheet/index.ts';
import type { PlacedFault } from '../../../sim/event/index.ts';
import { type Complaint, faultyWitness, offeredBy, openOutcomes } from '../../../sim/finder/index.ts';
import { boxed } from './boxed.ts';

// Symptom: with a check read the wrong way round every test stayed green. Cause: they answered with the very `read` that was wrong. So
// what each check shows under each fault stands here, thought out by hand: what a tech would see who stood there.

interface Scene {
	readonly rig: (typeof RIG_IDS)[number] | 'boxed';
	readonly complaint: Complaint;
	/** Faults at the fixture complained of, unless a place is named: `fault@place:detail`. */
	readonly faults: string;
	/** Per line a check, what it shows on a rig that is right, and under which of the faults it shows something else. What is not named shows the first. */
	readonly shows: string;
}

const SCENES: readonly Scene[] = [
	{
		rig: 'four-in-line',
		complaint: { kind: 'dark', fixture: 'wash-3' },
		faults: `switched-off battery-flat battery-low hall-power-off@rig display-dead sensor-shut sensor-dead out-of-sight fixture-other-code
			remote-battery-flat@remote remote-other-code@remote wrong-mode:long wrong-address:default left-on-held:held left-on-programme:fade
			leader-under-desk:on limit-low:low strobe-programme:strobe curve-wrong:square loss-set-wrong:dark cable-out@cable-3:from
			cable-out@cable-3:to cable-dead@cable-3 minus-open@cable-3 wires-swapped@cable-3 microphone-cable@cable-3 cable-too-long@cable-3
			terminator-missing@wash-4:out output-off@a master-down@desk:out master-down@desk:low wrong-universe@a patched-elsewhere levels-down
			wrong-colour-slots function-left-up ultraviolet-alone emitter-dead:red receiver-dead folded-back lens-covered`,
		// dark: no power, no data after it came up, the desk sends it nothing, or the light does not get out; ultraviolet alone is no light to see
		shows: `
			lit@wash-3: lit; dark: switched-off battery-flat hall-power-off cable-out:from cable-out:to cable-dead wires-swapped output-off master-down:out wrong-universe patched-elsewhere levels-down ultraviolet-alone receiver-dead lens-covered
			ultraviolet@wash-3: off; on: wrong-colour-slots ultraviolet-alone
			flashing@wash-3: steady; flashing: strobe-programme:strobe
			moving@wash-3: still; moving: left-on-programme:fade leader-under-desk:on function-left-up
			jumping@wash-3: calm; jumping: minus-open cable-too-long
			power-lamp@wash-3: lit; out: switched-off battery-flat
			data-lamp@wash-3: steady; out: switched-off battery-flat; blinking: hall-power-off cable-out:from cable-out:to cable-dead wires-swapped output-off receiver-dead; flickering: minus-open cable-too-long leader-under-desk:on
			battery-lamp@wash-3: good; empty: battery-flat; low: battery-low
			sensor-lamp@wash-3: lit; out: switched-off battery-flat sensor-shut sensor-dead
			display@wash-3: readable; dark: switched-off battery-flat display-dead
			power-switch@wash-3: on; off: switched-off
			socket-in@wash-3: plugged; empty: cable-out:to
			socket-out@wash-2: plugged; empty: cable-out:from
			terminator@wash-4: in; missing: terminator-missing
			lens@wash-3: clear; covered: lens-covered
			heat@wash-3: warm; hot: folded-back
			sight-line@wash-3: clear; blocked: out-of-sight
			panel-address@wash-3: as-meant; no-display: switched-off battery-flat display-dead; other: wrong-address:default
			panel-mode@wash-3: as-meant; no-display: switched-off battery-flat display-dead; other: wrong-mode:long
			panel-work@wash-3: as-meant; no-display: switched-off battery-flat display-dead; other: left-on-held:held left-on-programme:fade leader-under-desk:on strobe-programme:strobe
			panel-lead@wash-3: as-meant; no-display: switched-off battery-flat display-dead; other: leader-under-desk:on
			panel-limit@wash-3: as-meant; no-display: switched-off battery-flat display-dead; other: limit-low:low
			panel-curve@wash-3: as-meant; no-display: switched-off battery-flat display-dead; other: curve-wrong:square
			panel-loss@wash-3: as-meant; no-display: switched-off battery-flat display-dead; other: loss-set-wrong:dark
			panel-sensor@wash-3: as-meant; no-display: switched-off battery-flat display-dead; other: sensor-shut
			panel-code@wash-3: as-meant; no-display: switched-off battery-flat display-dead; other: fixture-other-code
			colour@wash-3: as-meant; dark: switched-off battery-flat hall-power-off cable-out:from cable-out:to cable-dead wires-swapped output-off master-down:out wrong-universe patched-elsewhere levels-down ultraviolet-alone receiver-dead lens-covered; other: wrong-mode:long wrong-address:default left-on-held:held left-on-programme:fade leader-under-desk:on strobe-programme:strobe curve-wrong:square minus-open cable-too-long wrong-colour-slots function-left-up emitter-dead:red
			brightness@wash-3: as-meant; dark: switched-off battery-flat hall-power-off cable-out:from cable-out:to cable-dead wires-swapped output-off master-down:out wrong-universe patched-elsewhere levels-down ultraviolet-alone receiver-dead lens-covered; dimmer: limit-low:low minus-open cable-too-long master-down:low emitter-dead:red folded-back; brighter: wrong-mode:long wrong-address:default left-on-held:held strobe-programme:strobe wrong-colour-slots
			desk-strips@wash-3: answers; still: switched-off battery-flat hall-power-off wrong-address:default left-on-held:held left-on-programme:fade leader-under-desk:on strobe-programme:strobe cable-out:from cable-out:to cable-dead minus-open wires-swapped cable-too-long output-off master-down:out wrong-universe patched-elsewhere receiver-dead lens-covered
			desk-colours@wash-3: all; none: switched-off battery-flat hall-power-off cable-out:from cable-out:to cable-dead minus-open wires-swapped output-off master-down:out wrong-universe patched-elsewhere receiver-dead lens-covered; other: wrong-mode:long wrong-address:default left-on-held:held left-on-programme:fade leader-under-desk:on strobe-programme:strobe; missing: emitter-dead:red
			held-at-panel@wash-3: lights; no-display: switched-off battery-flat display-dead; dark: lens-covered
			power-cycle@wash-3: same; other: switched-off; dark: battery-flat hall-power-off cable-out:from cable-out:to cable-dead wires-swapped output-off master-down:out wrong-universe patched-elsewhere levels-down receiver-dead lens-covered
			remote-close@wash-3: answers; still: switched-off battery-flat sensor-shut sensor-dead fixture-other-code remote-battery-flat remote-other-code lens-covered
			charger@wash-3: charges; not: hall-power-off
			row-right@wash-3: all; none: hall-power-off output-off master-down:out master-down:low wrong-universe leader-under-desk:on; beyond: cable-out:from cable-out:to cable-dead minus-open wires-swapped cable-too-long patched-elsewhere
			colour@wash-2: as-meant; dark: hall-power-off output-off master-down:out wrong-universe; other: leader-under-desk:on
			brightness@wash-4: as-meant; dark: hall-power-off cable-out:from cable-out:to cable-dead wires-swapped output-off master-down:out wrong-universe; dimmer: master-down:low minus-open cable-too-long leader-under-desk:on
			neighbour-strips@wash-3+wash-1: still; answers: wrong-address:default
			neighbour-strips@wash-3+wash-4: still; answers: wrong-mode:long
			line-ended@wash-3: steady; out: switched-off battery-flat; blinking: hall-power-off cable-out:from cable-out:to cable-dead wires-swapped output-off receiver-dead; flickering: minus-open cable-too-long leader-under-desk:on
			line-ended@wash-2: steady; blinking: hall-power-off output-off
			line-straight@wash-3: steady; dark: switched-off battery-flat hall-power-off output-off master-down:out wrong-universe patched-elsewhere levels-down receiver-dead lens-covered; flickering: leader-under-desk:on
			cable-ends@cable-3: both-in; near-out: cable-out:from; far-out: cable-out:to
			cable-kind@cable-3: data; microphone: microphone-cable
			cable-length@cable-3: as-meant; longer: cable-too-long
			cable-place@cable-3: as-meant; loose: cable-out:from cable-out:to
			cable-place@cable-2: as-meant
			desk-output@a: on; off: hall-power-off output-off
			desk-universe@a: as-meant; other: wrong-universe
			desk-master@desk: up; out: master-down:out; low: master-down:low
			desk-patch@wash-3: as-meant; other: patched-elsewhere
			desk-intensity@wash-3: as-meant; other: levels-down
			desk-functions@wash-3: as-meant; other: function-left-up
			hall-power@rig: on; off: hall-power-off
			remote-lamp@remote: blinks; dead: remote-battery-flat
			remote-code@remote: as-meant; other: remote-other-code`,
	},
	{
		rig: 'leader-and-three',
		complaint: { kind: 'follower-silent', fixture: 'wash-2' },
		faults: `switched-off display-dead left-on-held:held left-on-programme:fade follower-on-line:line second-leader:on wrong-mode:long
			leader-not-leading@wash-1:off switched-off@wash-1 cable-out@cable-1:to cable-dead@cable-1 common-open@cable-1 receiver-dead
			emitter-dead:white lens-covered`,
		// a follower goes dark where nobody leads it; two leaders talk at once
		shows: `
			lit@wash-2: lit; dark: switched-off follower-on-line:line leader-not-leading@wash-1:off switched-off@wash-1 cable-out:to cable-dead receiver-dead lens-covered
			lit@wash-1: lit; dark: switched-off@wash-1
			data-lamp@wash-2: steady; out: switched-off; blinking: leader-not-leading@wash-1:off switched-off@wash-1 cable-out:to cable-dead receiver-dead; flickering: second-leader:on common-open
			panel-lead@wash-1: as-meant; no-display: switched-off@wash-1; other: leader-not-leading@wash-1:off
			panel-lead@wash-2: as-meant; no-display: switched-off display-dead; other: second-leader:on
			leader-change@wash-2+wash-1: follows; dark: switched-off follower-on-line:line leader-not-leading@wash-1:off switched-off@wash-1 cable-out:to cable-dead receiver-dead lens-covered; differs: wrong-mode:long emitter-dead:white; still: left-on-held:held left-on-programme:fade second-leader:on common-open
			panel-work@wash-2: as-meant; no-display: switched-off display-dead; other: left-on-held:held left-on-programme:fade follower-on-line:line second-leader:on`,
	},
	{
		rig: 'two-universes',
		complaint: { kind: 'no-answer', fixture: 'bar-2' },
		faults: `switched-off mains-unplugged mains-unplugged@bar-1 hall-power-off@rig universes-exchanged@rig output-off@a output-off@b wrong-universe@b
			patched-other-universe strobe-left-up shutter-closed wrong-colour-slots loss-set-wrong:hold cable-out@cable-2:from cable-dead@cable-1
			terminator-missing@bar-2:out levels-down`,
		// a bar fed from another's link goes out with it; loss of data is set dark on these
		shows: `
			lit@bar-2: lit; dark: switched-off mains-unplugged mains-unplugged@bar-1 hall-power-off output-off@a patched-other-universe shutter-closed cable-out:from cable-dead levels-down
			power-lamp@bar-2: lit; out: switched-off mains-unplugged mains-unplugged@bar-1 hall-power-off
			mains-plug@bar-2: in; out: mains-unplugged
			mains-plug@bar-1: in; out: mains-unplugged@bar-1
			data-lamp@bar-1: steady; out: mains-unplugged@bar-1 hall-power-off; blinking: output-off@a cable-dead
			terminator@bar-2: in; missing: terminator-missing
			flashing@bar-2: steady; flashing: strobe-left-up
			socket-out@bar-1: plugged; empty: cable-out:from
			cable-place@cable-1: as-meant; elsewhere: universes-exchanged
			cable-place@cable-3: as-meant; elsewhere: universes-exchanged
			desk-output@a: on; off: hall-power-off output-off@a
			desk-output@b: on; off: hall-power-off output-off@b
			desk-universe@a: as-meant
			desk-universe@b: as-meant; other: wrong-universe
			desk-patch@bar-2: as-meant; other: patched-other-universe
			desk-functions@bar-2: as-meant; other: strobe-left-up shutter-closed
			desk-colour-strips@bar-2: as-meant; other: wrong-colour-slots
			desk-restart@bar-2: as-meant; other: loss-set-wrong:hold`,
	},
	{
		rig: 'mixed-panels',
		complaint: { kind: 'no-answer', fixture: 'old-1' },
		faults: `switched-off one-switch-wrong:1 one-switch-wrong:7 tenth-switch-up slide-wrong:0 slide-wrong:2 one-switch-wrong@old-2:4 mains-unplugged
			strobe-left-up`,
		shows: `
			switches@old-1: as-meant; other: one-switch-wrong:1 one-switch-wrong:7 tenth-switch-up
			switches@old-2: as-meant; other: one-switch-wrong@old-2:4
			slides@old-1: as-meant; other: slide-wrong:0 slide-wrong:2
			mains-plug@old-1: in; out: mains-unplugged
			power-lamp@old-2: lit; out: mains-unplugged
			flashing@old-1: steady; flashing: strobe-left-up
			neighbour-strips@old-1+old-2: still; answers: slide-wrong:2`,
	},
	{
		rig: 'one-wash',
		complaint: { kind: 'strobing', fixture: 'wash-1' },
		faults: `switched-off battery-flat battery-worn charger-dead mains-unplugged hall-power-off@rig display-dead level-down:out level-down:low wrong-held:white
			strobe-left-on:strobe strobe-programme:strobe left-on-sound:sound lens-covered`,
		// on the wall's mains it lights whatever its battery holds, and charges meanwhile
		shows: `
			lit@wash-1: lit; dark: switched-off level-down:out lens-covered
			power-lamp@wash-1: lit
			battery-lamp@wash-1: good; charging: battery-flat; low: battery-worn
			flashing@wash-1: steady; flashing: strobe-left-on:strobe strobe-programme:strobe
			panel-held@wash-1: as-meant; no-display: switched-off display-dead; other: wrong-held:white
			panel-level@wash-1: as-meant; no-display: switched-off display-dead; other: level-down:out level-down:low
			panel-strobe@wash-1: as-meant; no-display: switched-off display-dead; other: strobe-left-on:strobe
			panel-work@wash-1: as-meant; no-display: switched-off display-dead; other: strobe-programme:strobe left-on-sound:sound
			brightness@wash-1: as-meant; dark: switched-off level-down:out lens-covered; dimmer: level-down:low
			charger@wash-1: charges; not: charger-dead hall-power-off
			mains-plug@wash-1: in; out: mains-unplugged
			hall-power@rig: on; off: hall-power-off`,
	},
	{
		rig: 'boxed',
		complaint: { kind: 'dark', fixture: 'wash-1' },
		faults: `splitter-off@fan splitter-output-dead@fan:1 splitter-output-dead@fan:2 desk-blind@desk desk-frozen@desk start-code-wrong@a
			patched-other-mode:short patched-other-mode:long sensor-covered breaker-off@rig:left breaker-off@rig:right`,
		// a dead splitter takes both lines, one output only its own; a desk that is blind goes on sending what stood; twelve channels run into the bar's
		shows: `
			lit@wash-1: lit; dark: splitter-off splitter-output-dead@fan:1 start-code-wrong patched-other-mode:short
			lit@bar-1: lit; dark: splitter-off splitter-output-dead@fan:2 start-code-wrong patched-other-mode:long breaker-off@rig:right
			data-lamp@wash-1: steady; blinking: splitter-off splitter-output-dead@fan:1 start-code-wrong
			box-lamp@fan: lit; out: splitter-off
			desk-live@desk: live; blind: desk-blind; frozen: desk-frozen
			desk-sends@a: as-meant; other: start-code-wrong
			desk-patch@wash-1: as-meant; other: patched-other-mode:short patched-other-mode:long
			desk-strips@wash-1: answers; still: splitter-off splitter-output-dead@fan:1 desk-blind desk-frozen start-code-wrong
			sensor-window@wash-1: clear; covered: sensor-covered
			remote-close@wash-1: answers; still: sensor-covered
			breakers@rig: on; off: breaker-off@rig:left breaker-off@rig:right`,
	},
	{
		rig: 'boxed',
		complaint: { kind: 'dark', fixture: 'old-2' },
		faults: `fuse-blown fuse-blown@old-1 supply-dead lead-dead lead-dead@old-1 socket-dead@old-1 breaker-off@rig:left breaker-off@rig:right
			function-switch-wrong:1 function-switch-wrong:9 function-switch-wrong@old-1:9 function-switch-wrong@old-1:1 tenth-switch-down tenth-switch-down@old-1`,
		// the link passes on what its own fuse stops; with no leader a follower goes dark, and one set to a sound programme waits for sound
		shows: `
			power-lamp@old-2: lit; out: fuse-blown supply-dead lead-dead lead-dead@old-1 socket-dead@old-1 breaker-off@rig:left
			power-lamp@old-1: lit; out: fuse-blown@old-1 lead-dead@old-1 socket-dead@old-1 breaker-off@rig:left
			mains-plug@old-1: in
			socket-live@old-1: live; dead: socket-dead@old-1 breaker-off@rig:left
			breakers@rig: on; off: breaker-off@rig:left breaker-off@rig:right
			switches@old-2: as-meant; other: function-switch-wrong:1 function-switch-wrong:9 tenth-switch-down
			switches@old-1: as-meant; other: function-switch-wrong@old-1:9 function-switch-wrong@old-1:1 tenth-switch-down@old-1
			lit@old-1: lit; dark: fuse-blown@old-1 lead-dead@old-1 socket-dead@old-1 breaker-off@rig:left tenth-switch-down@old-1
			lit@old-2: lit; dark: fuse-blown supply-dead lead-dead lead-dead@old-1 socket-dead@old-1 breaker-off@rig:left fuse-blown@old-1 function-switch-wrong@old-1:9 function-switch-wrong:1 tenth-switch-down@old-1 tenth-switch-down`,
	},
];

/** `fault@place:detail`, the fixture's own place left out. */
function faultIn(text: string, fixture: string): PlacedFault {
	const [, fault = '', at, rest] = /^([a-z-]+)(?:@(wash-4:out|bar-2:out|[^:]+))?(?::(.+))?$/.exec(text) ?? [];
	const placed = { fault, place: at ?? fixture };
	return rest === undefined ? placed : { ...placed, detail: rest };
}

/** Short for a fault in a row: its place may be left out where no other of the scene is called so. */
function named(short: string, faults: readonly string[]): string {
	if (faults.includes(short)) return short;
	const all = faults.filter((fault) => fault.replace(/@(?:wash-4:out|bar-2:out|[^:]+)/, '') === short);
	if (all.length !== 1) throw new Error(`'${short}' is ${all.length} of the scene's faults`);
	return all[0] ?? '';
}

const words = (text: string): string[] => text.split(/\s+/).filter(Boolean);

describe.each(SCENES)('on $rig', ({ rig, complaint, faults: list, shows }) => {
	const sheet = rig === 'boxed' ? boxed : bundledRig(rig);
	const bench = openOutcomes(sheet, complaint);
	const faults = words(list);
	const broken = new Map(
		faults.map((text) => [text, faultyWitness(bench.meant, [faultIn(text, complaint.fixture)])] as const),
	);

	test.each(
		shows
			.trim()
			.split('\n')
			.map((row) => row.trim().split(': '))
			.map(([id = '', ...rest]) => [id, rest.join(': ')] as const),
	)('%s shows %s', (id, row) => {
		const check = offeredBy(bench).find((each) => each.id === id);
		if (!check) throw new Error(`no check ${id} here`);
		const [healthy = '', ...others] = row.split('; ');
		const expected = new Map(faults.map((fault) => [fault, healthy]));
		for (const other of others) {
			const [outcome = '', under = ''] = other.split(': ');
			for (const short of words(under)) expected.set(named(short, faults), outcome);
		}
		expect(check.read(bench.meant), 'with nothing wrong').toBe(healthy);
		expect(Object.fromEntries([...broken].map(([fault, w]) => [fault, check.read(w)]))).toEqual(
			Object.fromEntries(expected),
		);
	});
});
