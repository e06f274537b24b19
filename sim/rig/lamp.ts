import type { RigEvent } from '../event/index.ts';
import { receptions } from '../line/index.ts';
import { lampFor } from './look.ts';
import { hasData, isLit, wiringOf } from './settle.ts';
import { unitOf } from './step.ts';
import type { Rig, Sight } from './types.ts';
import { isLineEvent, lineEvent } from './wiring.ts';

/**
 * What a fixture's data lamp would do if plugs were moved so. Only the line is worked out anew and no fixture told of it: for
 * those who ask of many rigs. The rig stays as it is.
 * @param events of cables and terminators alone; others are passed over
 * @throws InputError as `send` does
 */
export function dataLampAfter(rig: Rig, fixture: string, events: readonly RigEvent[]): Sight['lamps']['data'] {
	const gear = { ...rig.gear };
	const unit = unitOf(gear, fixture);
	if (!isLit(unit)) return 'out';
	for (const event of events) if (isLineEvent(event)) lineEvent(gear, event);
	const reception = receptions(wiringOf(gear), [fixture]).get(fixture);
	return lampFor(unit, hasData(gear, reception), reception?.quality === 'marginal' ? reception.rate : 0);
}
