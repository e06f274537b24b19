import { expect, test } from 'vitest';
import { makeRandom } from '../../../shared/random/index.ts';
import { bundledRig, RIG_IDS, type RigId } from '../../../shared/sheet/index.ts';
import {
	type Complaint,
	complaintsOf,
	faultyWitness,
	meantWitness,
	openOutcomes,
	type RigOutcomes,
	sequence,
	together,
} from '../../../sim/finder/index.ts';
import { textOf, walkGig } from './gig.ts';

/**
 * The closed loop in full: for each complaint of each bundled rig, each fault in each place that causes it is put into the rig, and
 * the rig answers the finder's checks. Of the long line the ends and the middle stand for all.
 */
const ENDS = new Set(['bar-1', 'bar-12', 'bar-24']);

/** Pairs of faults tried on each complaint, each of which shows it by itself. */
const PAIRS = 6;

interface Row {
	rig: RigId;
	complaints: number;
	faults: number;
	found: number;
	/** Seconds to the end of the repair, in the mean over faults. */
	seconds: number;
	/**
	 * Seconds of looking alone, by the faults' weights; and the least there can be to tell the repairs apart if no answer is ever wrong
	 * and nobody walks: exact where it can be solved, else the entropy of the repairs at the most a check can tell a second.
	 */
	looking: number;
	least: number;
	slipped: number;
	'found, slipped': number;
	'seconds, slipped': number;
	pairs: number;
	'both mended': number;
}

/** Expected seconds of the best tree if no answer is ever wrong: exact, or null where too many suspects are left to solve. */
function leastSeconds(bench: RigOutcomes): number | null {
	const looks = bench.checks.flatMap((check, at) => (check.kind.startsWith('mend-') ? [] : [at]));
	try {
		return sequence(
			{
				weights: bench.candidates.map(({ weight }) => weight),
				costs: looks.map((at) => bench.checks[at]?.seconds ?? 0),
				outcomes: looks.map((at) => bench.outcomes[at] ?? []),
				repairs: bench.candidates.map(({ repair }) => repair),
			},
			'exact',
		).expectedCost;
	} catch {
		return null;
	}
}

/** Seconds below which no order of looks can come: bits of the repairs over the most bits that any one look tells a second. */
function entropySeconds({ candidates, checks, outcomes }: RigOutcomes): number {
	const all = candidates.reduce((sum, { weight }) => sum + weight, 0);
	const bits = (keys: readonly string[]): number => {
		const shares = new Map<string, number>();
		for (const [at, key] of keys.entries())
			shares.set(key, (shares.get(key) ?? 0) + (candidates[at]?.weight ?? 0) / all);
		return [...shares.values()].reduce((sum, share) => sum - share * Math.log2(share), 0);
	};
	let quickest = 0;
	for (const [at, { kind, seconds }] of checks.entries())
		if (!kind.startsWith('mend-')) quickest = Math.max(quickest, bits(outcomes[at] ?? []) / seconds);
	return quickest === 0 ? 0 : bits(candidates.map(({ repair }) => repair)) / quickest;
}

test.each(RIG_IDS)('the closed loop on %s', (id) => {
	const random = makeRandom(11).fork(id);
	const sheet = bundledRig(id);
	const meant = meantWitness(sheet);
	const row: Row = {
		rig: id,
		complaints: 0,
		faults: 0,
		found: 0,
		seconds: 0,
		looking: 0,
		least: 0,
		slipped: 0,
		'found, slipped': 0,
		'seconds, slipped': 0,
		pairs: 0,
		'both mended': 0,
	};
	const missed: string[] = [];
	let solved = 0;
	const complaints = complaintsOf(meant, sheet).filter(
		({ fixture }: Complaint) => id !== 'long-line' || ENDS.has(fixture),
	);
	for (const complaint of complaints) {
		const bench = openOutcomes(sheet, complaint);
		if (bench.candidates.length === 0) continue;
		row.complaints++;
		let weighted = 0;
		let all = 0;
		for (const { faults, weight, came } of bench.candidates) {
			const name = textOf(faults);
			const rig = () => faultyWitness(meant, faults, came === 'warm' ? 'warm' : 'cold');
			const walked = walkGig(bench, rig());
			const found = walked.cleared && walked.verdict?.suspects.some((suspect) => suspect.id === name);
			row.faults++;
			row.seconds += walked.spent;
			if (found) row.found++;
			else missed.push(`${complaint.kind} ${complaint.fixture}: ${name}, mended ${walked.mended.join(', ')}`);
			weighted += weight * walked.looking;
			all += weight;
			const looks = walked.asked - walked.mended.length;
			if (looks <= 0) continue;
			const slip = walkGig(bench, rig(), {}, random.int(0, looks - 1));
			row.slipped++;
			row['seconds, slipped'] += slip.spent;
			if (slip.cleared && slip.verdict?.suspects.some((suspect) => suspect.id === name)) row['found, slipped']++;
		}
		const least = leastSeconds(bench);
		if (least !== null) solved++;
		row.least += least ?? entropySeconds(bench);
		row.looking += weighted / all;
		for (let n = 0; n < PAIRS && bench.candidates.length > 3; n++) {
			const [one, two] = random.shuffle(bench.candidates);
			if (!one || !two || one.repair === two.repair) continue;
			const both = together(meant, [...one.faults, ...two.faults], one.came === 'warm' ? 'warm' : 'cold');
			if (!both) continue;
			row.pairs++;
			if (walkGig(bench, both).cleared) row['both mended']++;
		}
	}
	console.table([
		{
			...row,
			seconds: (row.seconds / row.faults).toFixed(1),
			'seconds, slipped': (row['seconds, slipped'] / row.slipped).toFixed(1),
			looking: (row.looking / row.complaints).toFixed(1),
			least: (row.least / row.complaints).toFixed(1),
			'solved exactly': solved,
		},
	]);
	if (missed.length > 0) console.log(missed.join('\n'));
	expect(missed).toEqual([]);
	expect(row['found, slipped'] / row.slipped).toBeGreaterThanOrEqual(0.95);
	if (row.pairs > 0) expect(row['both mended'] / row.pairs).toBeGreaterThanOrEqual(0.9);
});
