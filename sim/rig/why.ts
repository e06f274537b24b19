import { driveOf, powerOf } from '../fixture/index.ts';
import type { Gear } from './gear.ts';
import { isByLine } from './plan.ts';
import type { Reason } from './reason.ts';
import { unitOf } from './step.ts';
import { whyDrive, whyPower } from './whyDrive.ts';
import { whyLamp } from './whyLamp.ts';
import { whyLine } from './whyLine.ts';

/**
 * Why a fixture looks as it does: from what feeds it, through what decides its light and how that reaches it, to the lamp.
 * The trail ends at the first link that stops the light.
 */
export function whyOf(gear: Gear, id: string): Reason[] {
	const unit = unitOf(gear, id);
	const trail: Reason[] = [...whyPower(gear, unit)];
	if (driveOf(unit.state) !== 'unpowered' && powerOf(unit.state) !== 'flat') {
		trail.push(...whyDrive(gear, unit));
		if (isByLine(driveOf(unit.state))) trail.push(...whyLine(gear, unit));
		trail.push(...whyLamp(gear, unit));
	}
	const stop = trail.findIndex((reason) => reason.effect === 'stops');
	return stop < 0 ? trail : trail.slice(0, stop + 1);
}
