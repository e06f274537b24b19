import { describe, expect, test } from 'vitest';
import { bundledRig, type RIG_IDS } from '../../../shared/sheet/index.ts';
import type { PlacedFault } from '../../../sim/event/index.ts';
import { placedFaults } from '../../../sim/fault/index.ts';
import { COMPLAINT_KINDS, COMPLAINTS, type ComplaintKind, canComplain } from '../../../sim/finder/complaints.ts';
import { faultyWitness } from '../../../sim/finder/index.ts';
import { candidatesFor } from '../../../sim/finder/table.ts';
import { meantWitness } from '../../../sim/finder/witness.ts';

// Symptom: with what counts as 'the wrong colour' turned round, every test stayed green: whoever made the complaint also said which faults
// show it. So which faults show which complaint stands here, each seen by eye: what a person beside the rig would say of it. A fault is named
// with its detail, and where it does not sit at the fixture complained of, with where: any cable or socket is as good as the next.

interface Scene {
	readonly rig: (typeof RIG_IDS)[number];
	readonly fixture: string;
	readonly shows: string;
}

const SCENES: readonly Scene[] = [
	{
		rig: 'four-in-line',
		fixture: 'wash-3',
		shows: `
			dark: switched-off battery-flat hall-power-off@rig wrong-address:one-up cable-out:from@cable cable-out:to@cable cable-dead@cable wires-swapped@cable bad-socket-in@wash bad-socket-in bad-socket-out@wash output-off@a master-down:out@desk wrong-universe@a patched-elsewhere levels-down patched-other-mode:long@wash patched-other-mode:short start-code-wrong@a receiver-dead lens-covered ultraviolet-alone
			no-answer: switched-off battery-flat hall-power-off@rig wrong-address:one-up wrong-address:default left-on-held:held left-on-programme:fade left-on-sound:sound follower-under-desk:follow leader-under-desk:on@wash leader-under-desk:on strobe-programme:strobe back-at-defaults:defaults cable-out:from@cable cable-out:to@cable cable-dead@cable minus-open@cable plus-open@cable common-open@cable wires-swapped@cable cable-too-long@cable bad-socket-in@wash bad-socket-in bad-socket-out@wash too-many-loads@wash too-many-loads split-without-splitter@cable output-off@a master-down:out@desk wrong-universe@a patched-elsewhere desk-blind@desk desk-frozen@desk start-code-wrong@a receiver-dead lens-covered
			wrong-colour: wrong-mode:short wrong-mode:long wrong-address:default left-on-held:held follower-under-desk:follow strobe-programme:strobe curve-wrong:square back-at-defaults:defaults wrong-colour-slots emitter-dead:red emitter-dead:blue
			colour-missing: emitter-dead:red emitter-dead:green emitter-dead:blue emitter-dead:white emitter-dead:amber emitter-dead:ultraviolet
			flicker: leader-under-desk:on@wash minus-open@cable plus-open@cable common-open@cable cable-too-long@cable too-many-loads@wash too-many-loads split-without-splitter@cable
			dead-beyond: cable-out:from@cable cable-out:to@cable cable-dead@cable minus-open@cable plus-open@cable common-open@cable wires-swapped@cable cable-too-long@cable bad-socket-in@wash bad-socket-in bad-socket-out@wash
			answers-anothers: wrong-mode:long wrong-address:default follower-under-desk:follow patched-elsewhere@wash
			two-move: wrong-mode:long@wash
			own-show: left-on-programme:fade left-on-sound:sound leader-under-desk:on patched-elsewhere@wash function-left-up patched-other-mode:long
			strobing: strobe-programme:strobe
			ignores-remote: sensor-shut out-of-sight remote-battery-flat@remote remote-other-code@remote fixture-other-code sensor-dead sensor-covered
			dim: limit-low:low master-down:low@desk folded-back
			goes-out: battery-low battery-worn
			strange-after-restart: loss-set-wrong:dark loss-set-wrong:programme
			does-not-charge: hall-power-off@rig`,
	},
	{
		rig: 'leader-and-three',
		fixture: 'wash-2',
		shows: `
			dark: switched-off@wash switched-off battery-flat@wash battery-flat follower-on-line:line leader-not-leading:off@wash level-down:out@wash back-at-defaults:defaults@wash cable-out:from@cable cable-out:to@cable cable-dead@cable wires-swapped@cable bad-socket-in bad-socket-out@wash receiver-dead lens-covered
			follower-silent: switched-off@wash switched-off battery-flat@wash battery-flat left-on-held:held left-on-programme:fade left-on-sound:sound follower-on-line:line leader-not-leading:off@wash second-leader:on second-leader:on@wash strobe-programme:strobe back-at-defaults:defaults@wash back-at-defaults:defaults cable-out:from@cable cable-out:to@cable cable-dead@cable minus-open@cable plus-open@cable common-open@cable wires-swapped@cable cable-too-long@cable bad-socket-in bad-socket-out@wash too-many-loads too-many-loads@wash split-without-splitter@cable receiver-dead lens-covered
			follower-differs: wrong-mode:long emitter-dead:white@wash emitter-dead:white lens-covered@wash
			wrong-colour: wrong-mode:short wrong-mode:long left-on-held:held second-leader:on strobe-programme:strobe@wash strobe-programme:strobe wrong-held:candle@wash wrong-held:white@wash curve-wrong:square back-at-defaults:defaults emitter-dead:red emitter-dead:blue emitter-dead:white
			flicker: second-leader:on@wash minus-open@cable plus-open@cable common-open@cable cable-too-long@cable too-many-loads too-many-loads@wash split-without-splitter@cable
			dead-beyond: cable-out:from@cable cable-out:to@cable cable-dead@cable minus-open@cable plus-open@cable common-open@cable wires-swapped@cable cable-too-long@cable bad-socket-in bad-socket-out@wash
			own-show: left-on-programme:fade left-on-sound:sound@wash left-on-sound:sound
			strobing: strobe-left-on:strobe@wash strobe-programme:strobe@wash strobe-programme:strobe
			ignores-remote: remote-battery-flat@remote remote-other-code@remote
			dim: limit-low:low level-down:low@wash folded-back
			goes-out: battery-low battery-worn
			does-not-charge:`,
	},
	{
		rig: 'mixed-panels',
		fixture: 'old-1',
		shows: `
			dark: switched-off mains-unplugged hall-power-off@rig fuse-blown supply-dead socket-dead lead-dead breaker-off:right@rig one-switch-wrong:1 one-switch-wrong:4 one-switch-wrong:7 slide-wrong:2 cable-out:from@cable cable-out:to@cable cable-dead@cable wires-swapped@cable bad-socket-in@wash bad-socket-in@bar bad-socket-in bad-socket-out@wash bad-socket-out@bar output-off@a master-down:out@desk wrong-universe@a patched-elsewhere levels-down patched-other-mode:cells@bar patched-other-mode:three start-code-wrong@a receiver-dead lens-covered
			no-answer: switched-off mains-unplugged hall-power-off@rig fuse-blown supply-dead socket-dead lead-dead breaker-off:right@rig leader-under-desk:on@wash leader-under-desk:on@bar one-switch-wrong:4 one-switch-wrong:7 tenth-switch-up slide-wrong:2 cable-out:from@cable cable-out:to@cable cable-dead@cable minus-open@cable plus-open@cable wires-swapped@cable cable-too-long@cable bad-socket-in@wash bad-socket-in@bar bad-socket-in bad-socket-out@wash bad-socket-out@bar too-many-loads@wash too-many-loads@bar too-many-loads too-many-loads@old split-without-splitter@cable output-off@a master-down:out@desk wrong-universe@a patched-elsewhere patched-other-mode:three patched-other-mode:seven desk-blind@desk desk-frozen@desk start-code-wrong@a receiver-dead lens-covered
			wrong-colour: tenth-switch-up slide-wrong:0 patched-elsewhere@bar wrong-colour-slots patched-other-mode:seven emitter-dead:green emitter-dead:blue
			colour-missing: emitter-dead:red emitter-dead:green emitter-dead:blue
			flicker: leader-under-desk:on@wash leader-under-desk:on@bar minus-open@cable plus-open@cable cable-too-long@cable too-many-loads@wash too-many-loads@bar too-many-loads too-many-loads@old split-without-splitter@cable
			dead-beyond: mains-unplugged socket-dead lead-dead breaker-off:right@rig cable-out:from@cable cable-out:to@cable cable-dead@cable minus-open@cable plus-open@cable wires-swapped@cable cable-too-long@cable bad-socket-in@bar bad-socket-in bad-socket-out@wash bad-socket-out@bar
			answers-anothers: slide-wrong:2
			two-move: wrong-mode:cells@bar
			own-show: function-left-up
			strobing: patched-elsewhere@bar strobe-left-up
			dim: master-down:low@desk folded-back
			goes-out:
			strange-after-restart:`,
	},
];

const placeOf = (place: string, fixture: string): string =>
	place.startsWith(fixture)
		? ''
		: `@${place.replace(/cable-\d|wash-\d|bar-\d|old-\d/, (found) => found.split('-')[0] ?? '')}`;

const textOf = ({ fault, place, detail }: PlacedFault, fixture: string): string =>
	`${fault}${detail ? `:${detail}` : ''}${placeOf(place, fixture)}`;

function shown({ rig, fixture }: Scene): Map<ComplaintKind, string[]> {
	const sheet = bundledRig(rig);
	const meant = meantWitness(sheet);
	const witnesses = placedFaults(sheet).map(({ placed }) => ({
		text: textOf(placed, fixture),
		witness: faultyWitness(meant, [placed]),
	}));
	return new Map(
		COMPLAINT_KINDS.filter((kind) => canComplain(meant, { kind, fixture })).map((kind) => {
			const showing = witnesses.filter(({ witness }) => COMPLAINTS[kind].holds(witness, meant, fixture));
			return [kind, [...new Set(showing.map(({ text }) => text))]];
		}),
	);
}

describe.each(SCENES)('$fixture of $rig', (scene) => {
	const found = shown(scene);
	const lines = scene.shows
		.trim()
		.split('\n')
		.map((line): [ComplaintKind, string] => {
			const [kind = '', faults = ''] = line.trim().split(/:(?: |$)/);
			return [kind as ComplaintKind, faults];
		});

	test('can have these complaints and no others', () => {
		expect([...found.keys()]).toEqual(lines.map(([kind]) => kind));
	});

	// the finder asks one of the rigs that are alike in what decides a complaint; here each was asked
	const deciding = ['follower-silent', 'follower-differs', 'dead-beyond', 'answers-anothers', 'two-move'] as const;
	test.each(deciding.filter((kind) => found.has(kind)))('%s: the finder suspects those very ones', (kind) => {
		const sheet = bundledRig(scene.rig);
		const suspects = candidatesFor(sheet, meantWitness(sheet), { kind, fixture: scene.fixture })
			.filter(({ came }) => came !== 'warm')
			.flatMap(({ faults }) => faults.map((placed) => textOf(placed, scene.fixture)));
		expect([...new Set(suspects)]).toEqual(found.get(kind));
	});

	test.each(lines)('%s', (kind, faults) => {
		expect(found.get(kind)?.join(' ')).toBe(faults);
	});
});
