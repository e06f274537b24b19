import { middleOf, TOP_LEVEL } from '../../../shared/dmx/index.ts';
import { GOOD_WIRES, type Port, type SheetCable, splitPort } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../event/index.ts';
import type { Rig } from '../../rig/index.ts';
import { keptLevels, levelOf } from '../check.ts';
import type { Range, Task } from '../types.ts';
import { isFit, isGoodJoin, isInside, type Join } from '../wish.ts';

/** Metres of a cable laid by a way, unless the join wants it shorter. */
const LAID_METRES = 10;

/**
 * Cables and terminators to be moved. Fewest, by two bounds that are met at once: each join still to be made takes one press
 * that makes it (a cable laid, or a loose end plugged), and no press makes two; and whatever stands in its sockets must go
 * first, one press a cable however many sockets it frees, and none makes a join by going. A cable that already has one end
 * in the right socket and the other loose need not go: it is plugged. Sockets of different joins are different sockets.
 */
export function lineWay(drill: Task, rig: Rig): RigEvent[] {
	const joins = drill.goal.filter((it) => it.is === 'joined');
	const ended = drill.goal.find((it) => it.is === 'terminators')?.ports ?? [];
	if (joins.length === 0 && !drill.goal.some((it) => it.is === 'terminators')) return [];
	const { cables, terminators } = rig.gear;
	const touching = (ports: readonly Port[]) =>
		cables.filter(({ from, to }) => ports.some((port) => port === from || port === to));

	const removed = new Set<string>();
	const away: RigEvent[] = [];
	const makes: RigEvent[] = [];
	const clear = (cable: SheetCable): void => {
		if (removed.has(cable.id)) return;
		removed.add(cable.id);
		away.push({ type: 'cable.lift', cable: cable.id });
	};
	const known = new Set(cables.map(({ id }) => id));
	for (const join of joins) {
		const inWay = touching([join.a, join.b]);
		const made = inWay.length === 1 && inWay.every((cable) => isGoodJoin(join, cable));
		if (made) continue;
		const half = inWay.find((cable) => isHalf(join, cable));
		for (const cable of inWay) if (cable !== half) clear(cable);
		makes.push(half ? plugOther(join, half) : { type: 'cable.lay', cable: newCable(join, known) });
	}
	for (const port of terminators) if (!ended.includes(port)) away.push({ type: 'terminator.remove', port });
	for (const port of ended) {
		if (terminators.includes(port)) continue;
		for (const cable of touching([port])) clear(cable);
		makes.push({ type: 'terminator.fit', port });
	}
	return [...away, ...makes];
}

/** One end in a socket of the join, the other loose, and fit for it. */
function isHalf(join: Join, cable: SheetCable): boolean {
	const { from, to } = cable;
	const isEnd = (port: Port | null): boolean => port === join.a || port === join.b;
	return isFit(join, cable) && ((from === null && isEnd(to)) || (to === null && isEnd(from)));
}

function plugOther(join: Join, cable: SheetCable): RigEvent {
	const stands = cable.from ?? cable.to;
	const port = stands === join.a ? join.b : join.a;
	return { type: 'cable.plug', cable: cable.id, end: cable.from === null ? 'from' : 'to', port };
}

/** A cable with an id of its own, such as `new-wash-1-out`. */
function newCable(join: Join, known: Set<string>): SheetCable {
	const { device, socket } = splitPort(join.a);
	let id = `new-${device}-${socket}`.slice(0, 36);
	for (let n = 2; known.has(id); n++) id = `${id.replace(/-\d+$/, '')}-${n}`;
	known.add(id);
	const length = Math.min(LAID_METRES, join.metres);
	return { id, kind: 'data', length, from: join.a, to: join.b, ...GOOD_WIRES };
}

/**
 * The desk's entries: each slot, the master and each output stands for itself, so one entry for each that is wrong is
 * fewest. A slot is brought to the middle of the nearest range, the safest value there.
 */
export function deskWay(drill: Task, rig: Rig): RigEvent[] {
	return drill.goal.flatMap((condition): RigEvent[] => {
		switch (condition.is) {
			case 'slot': {
				const { universe, slot, within } = condition;
				const level = levelOf(rig, universe, slot);
				return isInside(within, level) ? [] : [{ type: 'desk.level', universe, slot, level: nearest(within, level) }];
			}
			case 'levels-kept': {
				const { universe, except } = condition;
				const kept = keptLevels(drill.sheet, universe);
				return Array.from({ length: 512 }, (_, i) => i + 1).flatMap((slot): RigEvent[] => {
					const level = kept.get(slot) ?? 0;
					const stands = except.includes(slot) || levelOf(rig, universe, slot) === level;
					return stands ? [] : [{ type: 'desk.level', universe, slot, level }];
				});
			}
			case 'master':
				return rig.gear.desk?.master === condition.level ? [] : [{ type: 'desk.master', level: condition.level }];
			case 'output': {
				const { output, universe } = condition;
				const stands = rig.gear.desk?.outputs.find(({ id }) => id === output);
				return [
					...(stands?.universe === universe ? [] : [{ type: 'desk.universe', output, universe } as const]),
					...(stands?.on === true ? [] : [{ type: 'desk.output', output, on: true } as const]),
				];
			}
			default:
				return [];
		}
	});
}

/** What somebody would type: out and full as such, all else from the middle of where it may lie. */
function typed(range: Range): number {
	if (range.from === 0) return 0;
	return range.to === TOP_LEVEL ? TOP_LEVEL : middleOf(range);
}

function nearest(within: readonly Range[], level: number): number {
	const middles = within.map(typed);
	return middles.reduce((a, b) => (Math.abs(b - level) < Math.abs(a - level) ? b : a));
}
