import { middleOf, TOP_LEVEL } from '../../../shared/dmx/index.ts';
import type { RigEvent } from '../../event/index.ts';
import type { Rig } from '../../rig/index.ts';
import { keptLevels, levelOf } from '../check.ts';
import type { Range, Task } from '../types.ts';
import { isInside } from '../wish.ts';

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
