import { INVENT_LEVELS, type Law } from '../../../shared/invent/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { complaintsOf, faultyWitness, meantWitness, openOutcomes } from '../../../sim/finder/index.ts';
import { sheetFor } from '../../../src/features/hidden-faults/rigs.ts';
import { lawIn } from '../../shared/invent/kit.ts';
import { textOf, walkGig } from './gig.ts';

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
	const meant = meantWitness(sheet);
	const missed: string[] = [];
	let complaints = 0;
	let faults = 0;
	let seconds = 0;
	for (const complaint of makeRandom(seed).shuffle(complaintsOf(meant, sheet)).slice(0, most)) {
		const bench = openOutcomes(sheet, complaint);
		if (bench.candidates.length === 0) continue;
		complaints++;
		for (const { faults: placed, came } of bench.candidates) {
			const name = textOf(placed);
			const walked = walkGig(bench, faultyWitness(meant, placed, came === 'warm' ? 'warm' : 'cold'));
			faults++;
			seconds += walked.spent;
			if (!walked.cleared || !walked.verdict?.suspects.some(({ id }) => id === name))
				missed.push(`${seed} ${complaint.kind} ${complaint.fixture}: ${name}`);
		}
	}
	return {
		rig: sheet.name,
		law: lawIn(profile),
		complaints,
		faults,
		found: faults - missed.length,
		seconds: faults > 0 ? Math.round(seconds / faults) : 0,
		missed,
	};
}
