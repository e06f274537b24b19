import type { RigSheet } from '../../../shared/sheet/index.ts';
import type { Bench, Complaint } from '../../../sim/finder/index.ts';
import type { Rig } from '../../../sim/rig/index.ts';

/** What words about a walk are worked out from. */
export interface Ground {
	readonly sheet: RigSheet;
	/** The rig as its sheet has it. */
	readonly meant: Rig;
	readonly complaint: Complaint;
	/** Made from three answers: its values are stand-ins. */
	readonly isQuick: boolean;
}

export const groundOf = ({ sheet, meant, complaint }: Bench, isQuick: boolean): Ground => ({
	sheet,
	meant: meant.rig,
	complaint,
	isQuick,
});
