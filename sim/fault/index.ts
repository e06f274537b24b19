/**
 * The fault catalogue: each kind of fault is a small change to a rig that is as its sheet says, with where it can sit, how
 * common it is (a weight; common practice, no source), what repairs it, how long that takes and what caution goes with it.
 * A repair puts one place back to what the sheet says. Nothing here says what a fault looks like: the rig does.
 *
 * Modelled: what a crew meets at a gig, one change each. Left out: faults inside a desk's software, of the network before it,
 * and those that come and go by themselves; a wire that breaks now and then is treated as broken.
 */

import { InputError } from '../../shared/error/index.ts';
import { onceUnder } from '../../shared/memo/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { PlacedFault, RigEvent } from '../event/index.ts';
import { DESK } from './desk.ts';
import { DESK_STATE } from './desk-state.ts';
import { LAMP } from './light.ts';
import { LINE } from './line.ts';
import { PANEL } from './panel.ts';
import { POWER } from './power.ts';
import { REMOTE } from './remote.ts';
import type { Fault, FaultSpot } from './types.ts';

export { MENDS } from './repairs.ts';
export {
	type Fault,
	type FaultFamily,
	type FaultSpot,
	type Need,
	REPAIR_IDS,
	type Repair,
	type RepairId,
} from './types.ts';

/** Every kind of fault, by family. */
export const FAULTS: readonly Fault[] = Object.freeze([
	...POWER,
	...PANEL,
	...REMOTE,
	...LINE,
	...DESK,
	...DESK_STATE,
	...LAMP,
]);

/** The fault of that id. @throws InputError `fault.unknown`. */
export function faultOf(id: string): Fault {
	const fault = FAULTS.find((each) => each.id === id);
	if (!fault) throw new InputError('fault.unknown', 'fault', { trouble: 'no-such-fault', id });
	return fault;
}

const spots = onceUnder<RigSheet, Fault, readonly FaultSpot[]>();

/** Where a fault can sit on a sheet. Worked out once a sheet: a finder asks of a thousand placed faults. */
const spotsOf = (sheet: RigSheet, fault: Fault): readonly FaultSpot[] => spots(sheet, fault, () => fault.spots(sheet));

/**
 * Every fault in every place it can sit on this rig, with its weight there.
 * @param edition of the catalogue: faults that came with a later one are left out; left out, none is
 */
export function placedFaults(
	sheet: RigSheet,
	edition = Number.POSITIVE_INFINITY,
): { readonly placed: PlacedFault; readonly weight: number }[] {
	return FAULTS.filter(({ since = 1 }) => since <= edition).flatMap((fault) =>
		spotsOf(sheet, fault).map(({ place, detail, share }) => ({
			placed: detail === undefined ? { fault: fault.id, place } : { fault: fault.id, place, detail },
			weight: fault.weight * (share ?? 1),
		})),
	);
}

/**
 * What a fault changes in a rig that is as its sheet says.
 * @throws InputError `fault.unknown`, or `fault.place` where it cannot sit there on this rig
 */
export function faultEvents(sheet: RigSheet, placed: PlacedFault): RigEvent[] {
	const fault = faultOf(placed.fault);
	const spot = spotsOf(sheet, fault).find(({ place, detail }) => place === placed.place && detail === placed.detail);
	if (!spot)
		throw new InputError('fault.place', 'place', {
			trouble: 'cannot-sit-there',
			fault: placed.fault,
			place: placed.place,
			detail: placed.detail ?? '',
		});
	return fault.events(sheet, spot);
}
