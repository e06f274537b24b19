import { InputError, shown } from '../../shared/error/index.ts';
import type { RigEvent, RigEventType } from '../event/index.ts';
import type { HandsOn, Task } from './types.ts';

/** Which hand an event takes; what is not here is nobody's hand, and has no place in a drill. */
const HAND_OF: Readonly<Partial<Record<RigEventType, HandsOn>>> = Object.freeze({
	'key.tap': 'panel',
	'key.down': 'panel',
	'key.up': 'panel',
	'switch.flip': 'panel',
	'slide.move': 'panel',
	'power.switch': 'power',
	'desk.level': 'desk',
	'desk.master': 'desk',
	'desk.output': 'desk',
	'desk.universe': 'desk',
	'cable.lay': 'line',
	'cable.lift': 'line',
	'cable.plug': 'line',
	'cable.unplug': 'line',
	'terminator.fit': 'line',
	'terminator.remove': 'line',
	'mains.plug': 'mains',
	'remote.press': 'remote',
});

/** Whether a drill leaves this event to the learner. Waiting always is. */
export function isInHand(drill: Pick<Task, 'hands'>, event: RigEvent): boolean {
	if (event.type === 'clock.wait') return true;
	const hand = HAND_OF[event.type];
	return hand !== undefined && drill.hands.includes(hand);
}

/** @throws InputError `log.shape` for what is no list of events, `drill.hands` at the first event that is not in hand. */
export function requireInHand(drill: Pick<Task, 'hands'>, log: readonly RigEvent[]): void {
	if (!Array.isArray(log)) throw new InputError('log.shape', '', { expected: 'list', found: shown(log) });
	const none = log.findIndex((event) => typeof event?.type !== 'string');
	if (none >= 0) throw new InputError('event.shape', `[${none}]`, { expected: 'event', found: shown(log[none]) });
	const at = log.findIndex((event) => !isInHand(drill, event));
	if (at < 0) return;
	throw new InputError('drill.hands', `[${at}].type`, {
		trouble: 'not-in-hand',
		hands: drill.hands,
		type: String(log[at]?.type),
	});
}

/**
 * Presses in a log. A tap, a key going down (a hold of any length is one press), a switch, a slide, a desk entry, a plug put
 * in or pulled, a cable laid or lifted, a terminator, a button of the remote and a power switch count one each; letting go of
 * a key and waiting count nothing.
 */
export const pressesOf = (log: readonly RigEvent[]): number => log.filter(isPress).length;

/** Whether an event is a press. */
export const isPress = ({ type }: RigEvent): boolean => type !== 'key.up' && type !== 'clock.wait';
