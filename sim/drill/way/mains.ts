import type { RigEvent } from '../../event/index.ts';
import type { Rig } from '../../rig/index.ts';
import { unitOf } from '../check.ts';
import type { Task } from '../types.ts';

/**
 * The plugs to move: one press each, and none twice, since taken from the wall outwards no move ever closes a circle: what
 * a plug goes into has by then a way to the wall of its own.
 */
export function mainsWay(drill: Task, rig: Rig): RigEvent[] {
	const from = new Map(drill.goal.flatMap((it) => (it.is === 'fed' ? [[it.fixture, it.from] as const] : [])));
	const hops = (fixture: string): number => {
		let count = 0;
		for (let at = from.get(fixture); at !== undefined && at !== 'wall' && count <= from.size; at = from.get(at))
			count++;
		return count;
	};
	return [...from]
		.filter(([fixture, into]) => unitOf(rig, fixture).plug !== into)
		.sort(([a], [b]) => hops(a) - hops(b))
		.map(([fixture, into]): RigEvent => ({ type: 'mains.plug', fixture, into }));
}
