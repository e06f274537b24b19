import type { CautionId } from '#words/cautions/index.ts';
import { hasMains, powerOf } from '../../../sim/fixture/index.ts';
import type { Rig, Sight } from '../../../sim/rig/index.ts';

/** Cautions for what lamps give off now: ultraviolet, flashing. */
export function lightCautions(sights: readonly Sight[]): CautionId[] {
	return [
		...(sights.some(({ light }) => light.whole.ultraviolet > 0) ? (['ultraviolet'] as const) : []),
		...(sights.some(({ light }) => light.flashes > 0) ? (['flashing'] as const) : []),
	];
}

/** Cautions for hands at one fixture: hung overhead, its battery on charge, its mains. */
export function handCautions(rig: Rig, fixture: string): CautionId[] {
	const unit = rig.gear.units.get(fixture);
	if (!unit) return [];
	const { placed, plug, profile, state } = unit;
	const charges = powerOf(state) === 'charging' || (profile.power.battery !== null && hasMains(state));
	return [
		...(placed.place.overhead ? (['hanging'] as const) : []),
		...(charges ? (['batteries'] as const) : []),
		...(plug !== 'none' || profile.power.battery === null ? (['mains'] as const) : []),
	];
}
