import { isInputError } from '../../../shared/error/index.ts';
import type { Random } from '../../../shared/random/index.ts';
import { portsOf } from '../../../shared/sheet/index.ts';
import { type Drill, isInHand } from '../../../sim/drill/index.ts';
import type { RemoteButton, RigEvent } from '../../../sim/event/index.ts';
import { openRig, type Rig } from '../../../sim/rig/index.ts';
import { TREE_KEYS } from '../keys.ts';

/** Something a learner might do next, sensible or not; some of it fits nothing and is refused. */
export function anyEvent(random: Random, drill: Drill, rig: Rig): RigEvent {
	const { gear } = rig;
	const units = [...gear.units.values()];
	const unit = random.pick(units);
	const fixture = unit.placed.id;
	const port = () => random.pick(portsOf(drill.sheet));
	const cable = () => random.pick([...gear.cables.map(({ id }) => id), 'mine-1']);
	const output = () => random.pick(gear.desk?.outputs.map(({ id }) => id) ?? ['a']);
	const universe = () => random.pick(gear.desk?.outputs.map((each) => each.universe) ?? [1]);
	const end = () => random.pick(['from', 'to'] as const);
	const sound = { common: 'sound', minus: 'sound', plus: 'sound', swapped: false } as const;
	const buttons: RemoteButton[] = [
		'light',
		'dark',
		'brighter',
		'dimmer',
		'faster',
		'slower',
		'held:amber',
		'held:blue',
	];
	const makers: (() => RigEvent)[] = [
		() => ({ type: 'clock.wait', ms: random.pick([100, 700, 2500, 16_000, 61_000, 700_000]) }),
	];
	const hands = new Set(drill.hands);
	if (hands.has('panel') && unit.profile.panel.kind !== 'dip') {
		const key = () => random.pick([...TREE_KEYS, 'set', 'down'] as const);
		const tap = (): RigEvent => ({ type: 'key.tap', fixture, key: key() });
		const down = (): RigEvent => ({ type: 'key.down', fixture, key: key() });
		const up = (): RigEvent => ({ type: 'key.up', fixture, key: unit.state.context.held?.key ?? key() });
		makers.push(tap, tap, tap, tap, down, unit.state.context.held ? up : tap);
	}
	if (hands.has('panel') && unit.profile.panel.kind === 'dip') {
		const { slides } = unit.profile.panel;
		const flip = (): RigEvent => ({ type: 'switch.flip', fixture, switch: random.int(1, 10), up: random.chance(0.5) });
		makers.push(flip, flip, () => ({
			type: 'slide.move',
			fixture,
			slide: random.pick(slides).id,
			to: random.int(0, 2),
		}));
	}
	if (hands.has('power') && random.chance(0.3))
		makers.push(() => ({ type: 'power.switch', fixture, on: random.chance(0.5) }));
	if (hands.has('desk'))
		makers.push(
			() => ({ type: 'desk.level', universe: universe(), slot: random.int(1, 512), level: random.int(0, 255) }),
			() => ({ type: 'desk.master', level: random.pick([0, 128, 255]) }),
			() => ({ type: 'desk.output', output: output(), on: random.chance(0.5) }),
			() => ({ type: 'desk.universe', output: output(), universe: random.int(1, 9) }),
		);
	if (hands.has('line'))
		makers.push(
			() => ({
				type: 'cable.lay',
				cable: {
					id: cable(),
					kind: random.pick(['data', 'data', 'microphone'] as const),
					length: random.pick([5, 10, 80]),
					from: random.chance(0.7) ? port() : null,
					to: random.chance(0.7) ? port() : null,
					...sound,
				},
			}),
			() => ({ type: 'cable.lift', cable: cable() }),
			() => ({ type: 'cable.plug', cable: cable(), end: end(), port: port() }),
			() => ({ type: 'cable.unplug', cable: cable(), end: end() }),
			() => ({ type: 'terminator.fit', port: port() }),
			() => ({ type: 'terminator.remove', port: random.pick([...gear.terminators, port()]) }),
		);
	if (hands.has('mains'))
		makers.push(() => ({
			type: 'mains.plug',
			fixture,
			into: random.pick(['wall', 'none', ...units.map(({ placed }) => placed.id)]),
		}));
	if (hands.has('remote')) makers.push(() => ({ type: 'remote.press', button: random.pick(buttons) }));
	return random.pick(makers)();
}

/** Plays an event; false where it fits nothing and changes nothing. */
export function play(rig: Rig, event: RigEvent): boolean {
	try {
		if (event.type === 'clock.wait') rig.wait(event.ms);
		else rig.send(event);
		return true;
	} catch (error) {
		if (isInputError(error)) return false;
		throw error;
	}
}

/** A rig somebody has been at for so many events, all of them in hand. */
export function wandered(random: Random, drill: Drill, steps: number): Rig {
	const rig = openRig(drill.sheet);
	for (let n = 0; n < steps; n++) {
		const event = anyEvent(random, drill, rig);
		if (!isInHand(drill, event)) throw new Error(`${event.type} is not in hand in ${drill.kind}`);
		play(rig, event);
	}
	return rig;
}
