import type { RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import { MENDS, REPAIR_IDS, type RepairId } from '../fault/index.ts';
import type { Rig } from '../rig/index.ts';

/** A repair and where it is done. */
interface RepairAt {
	readonly id: RepairId;
	readonly place: string;
}

const TRIES = 'mend-';

/** Kind of the check that tries a repair. */
export const triesKind = (id: RepairId): string => `${TRIES}${id}`;

/** A repair and its place as a text. */
export const repairAtText = ({ id, place }: RepairAt): string => `${id}@${place}`;

/** Id of the check that tries a repair. */
export const triedBy = (repair: RepairAt): string => `${TRIES}${repairAtText(repair)}`;

/** Whether a check tries a repair. */
export const isRepair = ({ kind }: { readonly kind: string }): boolean => kind.startsWith(TRIES);

/** The repair that a check tries, out of its id; null for one that tries none. The other way round of `triedBy`. */
export function repairTriedBy(check: string): RepairAt | null {
	const at = check.indexOf('@');
	const id = REPAIR_IDS.find((each) => check.slice(0, at) === triesKind(each));
	return id === undefined ? null : { id, place: check.slice(at + 1) };
}

/** The same as its text. */
export function textTriedBy(check: string): string | null {
	const repair = repairTriedBy(check);
	return repair && repairAtText(repair);
}

/** What a repair does on a rig as it stands: one thing is put right, and what else differs from the sheet stays. */
export const repairEvents = (sheet: RigSheet, { gear }: Rig, { id, place }: RepairAt): RigEvent[] =>
	MENDS[id]
		.events(sheet, place, { patch: gear.desk?.patch, remote: gear.remote, cables: gear.cables })
		.filter((event) => event.type !== 'terminator.fit' || !gear.terminators.includes(event.port));
