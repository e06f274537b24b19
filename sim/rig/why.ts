import { driveOf, powerOf } from '../fixture/index.ts';
import { isByLine } from './plan.ts';
import type { Reason } from './reason.ts';
import { unitOf } from './step.ts';
import type { Rig } from './types.ts';
import { whyDrive, whyPower } from './whyDrive.ts';
import { whyLamp } from './whyLamp.ts';
import { whyLine } from './whyLine.ts';

/** Stages between a source and a fixture. What is wrong there can be wrong several times over, and all of it must be put right. */
const WAY = ['source', 'line', 'signal'];

/**
 * Why a fixture looks as it does: from what feeds it, through what decides its light and how that reaches it, to the lamp.
 * The trail ends at the first link that stops the light; where that is on the way from a source, with what else is wrong there,
 * and with what the fixture does without data.
 * @param id of a fixture of the rig
 * @throws InputError `event.fixture` for a fixture that the rig has not
 */
export function why({ gear }: Pick<Rig, 'gear'>, id: string): Reason[] {
	const unit = unitOf(gear, id);
	const trail: Reason[] = [...whyPower(gear, unit)];
	if (driveOf(unit.state) !== 'unpowered' && powerOf(unit.state) !== 'flat') {
		trail.push(...whyDrive(gear, unit));
		if (isByLine(driveOf(unit.state))) trail.push(...whyLine(gear, unit));
		trail.push(...whyLamp(gear, unit));
	}
	const stop = trail.findIndex((reason) => reason.effect === 'stops');
	if (stop < 0) return trail;
	const isOnWay = ({ id }: Reason) => WAY.includes(id.slice(0, id.indexOf('.')));
	const more = trail.slice(stop + 1).filter((each) => isOnWay(each) && each.effect !== 'passes');
	return [...trail.slice(0, stop + 1), ...more];
}
