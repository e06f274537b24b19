/**
 * The door for those who read what they bring before they come: the site, whose sheets, links and logs pass the schemas where they
 * come in, and the other folders of `sim`, whose events are their own making. A rig opened here takes what it is handed as it is,
 * and needs no schema library. Scripts go through `index.ts`, which holds everything to the schemas.
 */
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import { faultEvents } from '../fault/index.ts';
import type { OpenOptions, Rig } from './gear.ts';
import { played, rigFrom } from './rig.ts';

const asItIs = (): void => undefined;

/**
 * As `openRig` of the checked door.
 * @param sheet as `readSheet` gives it
 * @throws InputError `fault.*` for a fault that does not fit this rig
 */
export function openRig(sheet: RigSheet, { faults = [] }: OpenOptions = {}): Rig {
	return rigFrom(
		sheet,
		faults.flatMap((fault) => faultEvents(sheet, fault)),
		asItIs,
	);
}

/** As `openRig`, with nothing wrong in it: a page that opens rigs so need not carry the fault catalogue. */
export function openUnharmed(sheet: RigSheet): Rig {
	return rigFrom(sheet, [], asItIs);
}

/** As `replay` of the checked door, with nothing wrong in the rig but what the log does to it. @throws InputError as `Rig.send` */
export function replayUnharmed(sheet: RigSheet, log: readonly RigEvent[]): Rig {
	return played(openUnharmed(sheet), log);
}
