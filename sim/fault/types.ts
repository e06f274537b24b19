import type { RigSheet } from '../../shared/sheet/index.ts';
import type { PlacedFault, RigEvent } from '../event/index.ts';

export type FaultFamily = 'power' | 'panel' | 'remote' | 'line' | 'desk' | 'fixture' | 'light';

/** Where one fault can sit: a fixture, a cable, a socket, a desk output, or the rig as a whole (`rig`). */
export interface FaultSpot {
	readonly place: string;
	/** Which of the kind, where a place can have it in more than one way. */
	readonly detail?: string;
	/** Weight of this way against others at the same place; 1 where left out. */
	readonly share?: number;
}

/** One kind of fault: a small change to a rig. Words for it are content's, by id. */
export interface Fault {
	/** Permanent. */
	readonly id: string;
	readonly family: FaultFamily;
	/** How common it is against the others, at one place: `common practice, no source`. */
	readonly weight: number;
	/** What repairs it: an id of the repairs, done at the fault's place (or where `mendAt` says). */
	readonly repair: RepairId;
	/** Ids of the cautions that go with looking for it or repairing it. */
	readonly cautions: readonly string[];
	/** Where it can sit on this rig, in the order of the sheet. */
	spots(sheet: RigSheet): FaultSpot[];
	/** What changes in a rig that is as its sheet says. */
	events(sheet: RigSheet, spot: FaultSpot): RigEvent[];
	/** The edition of the catalogue it came with, 1 where left out: what was drawn from an older one is drawn from it for good. */
	readonly since?: number;
	/** Where its repair is done, if not at its own place. */
	repairAt?(sheet: RigSheet, spot: FaultSpot): string;
}

/** What a check or a repair may need beyond two hands. */
export type Need =
	| 'ladder'
	| 'spare-cable'
	| 'spare-fixture'
	| 'spare-battery'
	| 'second-person'
	| 'desk'
	| 'terminator';

export const REPAIR_IDS = Object.freeze([
	'switch-on',
	'fresh-battery',
	'plug-mains',
	'restore-hall',
	'set-panel',
	'set-switches',
	'open-sensor',
	'clear-sight',
	'remote-battery',
	'remote-code',
	'plug-cable',
	'replace-cable',
	'fit-terminator',
	'right-way-round',
	'output-on',
	'raise-master',
	'set-universe',
	'set-patch',
	'set-levels',
	'let-cool',
	'clear-lens',
	'swap-fixture',
	'other-socket',
	'replace-lead',
	'ask-breaker',
	'box-on',
	'other-output',
	'lift-stray',
	'leave-blind',
	'restart-desk',
	'set-start-code',
	'clear-sensor',
] as const);
export type RepairId = (typeof REPAIR_IDS)[number];

/** How a rig stands where a repair may not take it for what the sheet says: a repair puts one thing right and no other. */
export interface RigStanding {
	/** Which says where the desk's strips send. */
	readonly patch: DeskPatch | undefined;
	readonly remote: RigSheet['remote'];
	/** Which says what lies there that the sheet does not have. */
	readonly cables: readonly RigSheet['cables'][number][];
}

/** A way to put something right. Doing it changes the rig to what its sheet says at that place. */
export interface Repair {
	readonly id: RepairId;
	/** `common practice, no source`. */
	readonly seconds: number;
	readonly needs: readonly Need[];
	readonly cautions: readonly string[];
	/** Whether doing it darkens or disturbs a running show. */
	readonly disturbs: boolean;
	/** @param now what stands that the sheet does not say; left out, all is as the sheet has it */
	events(sheet: RigSheet, place: string, now?: RigStanding): RigEvent[];
}

export type DeskPatch = readonly {
	readonly fixture: string;
	readonly universe: number;
	readonly address: number;
	readonly mode: string;
}[];

export type { PlacedFault };
