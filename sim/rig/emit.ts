import { outputOf, wattsOf } from '../light/index.ts';
import type { Gear, Unit } from './gear.ts';
import type { Plan } from './own.ts';
import { planAt } from './plan.ts';

/**
 * Emitter outputs 0..1 by cell, then emitter, after dim curve, limit and the lamp's own wrongs.
 * @param strobe 1 for the lit part of a flash, `mean` for the average over it
 */
export function outputsOf(unit: Unit, plan: Plan, strobe: 1 | 'mean' = 1): Float32Array {
	const { curve, limit } = unit.state.context.settings;
	const { profile, condition } = unit;
	const { levels, intensity } = plan;
	return outputOf(
		{ profile, levels, intensity, curve, limit, condition, strobe: plan.strobe > 0 ? strobe : 1 },
		new Float32Array(levels.length),
	);
}

/** What a fixture draws on the average while nothing changes, watts. */
export function meanWatts(gear: Gear, unit: Unit): number {
	return wattsOf(unit.profile, outputsOf(unit, planAt(gear, unit, 'mean'), 'mean'));
}
