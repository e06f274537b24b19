import { hintSteps } from '#words/drills/index.ts';
import type { Finding } from '../../sim/drill/index.ts';
import { type Rig, why } from '../../sim/rig/index.ts';
import { fill } from './fill.ts';
import { reasonText } from './reason.ts';

/** Why a finding matters, as the rig itself says: the first link of its fixture's trail that stops or cuts the light; nothing where none does. */
export function reasonOf(rig: Rig, { place }: Finding): string[] {
	if (!rig.gear.units.has(place)) return [];
	const stop = why(rig, place).find(({ effect }) => effect === 'stops' || effect === 'cuts');
	return stop ? [fill(hintSteps.because, { reason: reasonText(rig, place, stop) })] : [];
}
