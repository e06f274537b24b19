import { TOP_LEVEL } from '../../shared/dmx/index.ts';
import { planAt } from './plan.ts';
import { unitOf } from './step.ts';
import type { Rig } from './types.ts';

/** What rounding of numbers may add to a level. */
const NOTHING = 0.001;

/**
 * The level a fixture's light was asked for, 0 to 255: its intensity over the strongest of its colours, as the desk or a leader
 * sent it or as its own panel holds it, before dim curve, limit and all that may be wrong inside.
 * @returns null where nothing is asked for, or where it changes by itself and no one level is
 */
export function askedOf({ gear }: Pick<Rig, 'gear'>, fixture: string): number | null {
	const unit = unitOf(gear, fixture);
	const { levels, intensity, moving } = planAt(gear, unit, gear.now, true);
	if (moving) return null;
	const emitters = unit.profile.emitters.length;
	let most = 0;
	for (const [i, level] of levels.entries()) most = Math.max(most, level * (intensity[Math.floor(i / emitters)] ?? 0));
	// rounded up: a level of two slots whose fine one stands at 0 is a little less, and still that level
	const asked = Math.ceil(most * TOP_LEVEL - NOTHING);
	return asked === 0 ? null : asked;
}
