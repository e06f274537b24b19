import type { Port } from '../../shared/sheet/index.ts';
import type { LineCause } from './types.ts';
import { along, type Way } from './ways.ts';

/** What is wrong with the conductors along one way, from its source on. Wires go by their name at the source. */
export interface Blame {
	readonly sockets: readonly Port[];
	readonly minus: readonly string[];
	readonly plus: readonly string[];
	readonly common: readonly string[];
	readonly swapped: readonly string[];
	readonly microphone: readonly string[];
	/** Cables with any data wire open, in order. */
	readonly open: readonly string[];
}

/**
 * Follows each conductor along a way. A cable's `minus` is the wire on the minus pin of its `from` end; where the
 * cable is swapped it comes out on the plus pin, and keeps its name: turning a cable round never moves a break to the other wire.
 */
export function blame(way: Way): Blame {
	const found = {
		sockets: [] as Port[],
		minus: [] as string[],
		plus: [] as string[],
		common: [] as string[],
		swapped: [] as string[],
		microphone: [] as string[],
		open: [] as string[],
	};
	let crossed = false;
	for (const { before, leg } of along(way)) {
		if (before === null || leg === null) continue;
		const { cable } = leg;
		if (cable === null) {
			found.sockets.push(leg.fromPort);
			continue;
		}
		const forwards = before.tap === leg.from;
		const flipped = crossed !== (!forwards && cable.swapped);
		const minus = flipped ? cable.plus : cable.minus;
		const plus = flipped ? cable.minus : cable.plus;
		if (minus === 'open') found.minus.push(cable.id);
		if (plus === 'open') found.plus.push(cable.id);
		if (leg.joins.length < 2) found.open.push(cable.id);
		if (cable.common === 'open') found.common.push(cable.id);
		if (cable.swapped) found.swapped.push(cable.id);
		if (cable.kind === 'microphone') found.microphone.push(cable.id);
		crossed = crossed !== cable.swapped;
	}
	return found;
}

/** Why nothing at all comes along a way that some drive stands at the head of. */
export function stops(wrong: Blame): LineCause[] {
	const causes: LineCause[] = wrong.sockets.map((port) => ({ cause: 'bad-socket', port }));
	if (wrong.minus.length > 0 && wrong.plus.length > 0) causes.push({ cause: 'pair-open', cables: wrong.open });
	else if (wrong.minus.length > 0) causes.push({ cause: 'one-wire-open', wire: 'minus', cables: wrong.minus });
	else if (wrong.plus.length > 0) causes.push({ cause: 'one-wire-open', wire: 'plus', cables: wrong.plus });
	if (wrong.swapped.length % 2 === 1) causes.push({ cause: 'swapped', cables: wrong.swapped });
	return causes;
}
