import { hintSteps } from '#words/drills/index.ts';
import type { Finding, Task } from '../../sim/drill/index.ts';
import { afterRepair } from '../../sim/drill/trusted.ts';
import { type Rig, why } from '../../sim/rig/index.ts';
import { fill } from './fill.ts';
import { reasonText } from './reason.ts';

/**
 * What a finding does to its fixture now, as the rig itself says: the first link of the fixture's trail that stops or cuts something,
 * and stands there no more once this finding alone is put right. Nothing where there is no such link: what stops the light is
 * something else then.
 */
export function reasonOf(drill: Task, rig: Rig, aim: Finding): string[] {
	const { place } = aim;
	if (!rig.gear.units.has(place)) return [];
	const after = new Set(haltsOf(afterRepair(drill, rig, [aim]), place).map(({ id }) => id));
	const halt = haltsOf(rig, place).find(({ id }) => !after.has(id));
	return halt ? [fill(hintSteps[halt.effect], { reason: reasonText(rig, place, halt) })] : [];
}

const haltsOf = (rig: Rig, fixture: string) =>
	why(rig, fixture).flatMap(({ effect, ...rest }) =>
		effect === 'stops' || effect === 'cuts' ? [{ ...rest, effect }] : [],
	);
