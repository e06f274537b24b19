import { INVENT_LEVELS, type Law } from '../../../shared/invent/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { complaintsOf, meantWitness } from '../../../sim/finder/index.ts';
import { sheetFor } from '../../../src/features/hidden-faults/rigs.ts';
import { lawIn } from '../../shared/invent/kit.ts';
import { closedLoop } from './closedLoop.ts';

/** Complaints tried on each rig, of all there can be. */
const COMPLAINTS = 4;

/** How the finder went on one rig of fixtures that nobody has seen. */
export interface InventedRow {
	readonly rig: string;
	readonly law: Law;
	readonly complaints: number;
	readonly faults: number;
	readonly found: number;
	/** To the end of the repair, in the mean over faults. */
	readonly seconds: number;
	readonly missed: readonly string[];
}

/** The closed loop on the rig of a seed: each fault that causes some complaint is put in, and the rig answers the finder's checks. */
export async function inventedLoop(seed: number, most = COMPLAINTS): Promise<InventedRow> {
	const sheet = await sheetFor({ rig: 'unseen', seed, count: 1 });
	const [profile] = sheet.profiles;
	if (!profile) throw new Error(`no fixture among ${INVENT_LEVELS}`);
	const asked = makeRandom(seed)
		.shuffle(complaintsOf(meantWitness(sheet), sheet))
		.slice(0, most);
	const { complaints, faults, seconds, missed } = closedLoop(sheet, asked);
	return {
		rig: sheet.name,
		law: lawIn(profile),
		complaints,
		faults,
		found: faults - missed.length,
		seconds: faults > 0 ? Math.round(seconds / faults) : 0,
		missed: missed.map((each) => `${seed} ${each}`),
	};
}
