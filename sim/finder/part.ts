import type { RigSheet } from '../../shared/sheet/index.ts';
import { placedFaults } from '../fault/index.ts';
import type { Check } from './checks/index.ts';
import { type Complaint, canComplain } from './complaints.ts';
import { weighBy } from './learn.ts';
import { type Bench, candidatesFor, tableFor } from './table.ts';
import type { FinderOptions } from './types.ts';
import { meantWitness, type Witness } from './witness.ts';

/** Placed faults from which a rig is too large for its table to be there at once. */
const LARGE = 500;

/** Faults at least so heavy stand for the rest of their place. */
const COMMON = 4;

/** Checks for which a rig takes longest to answer. */
const SLOW = new Set(['line-ended', 'line-straight', 'neighbour-strips', 'desk-restart', 'leader-change']);

/**
 * Part of a large rig's table, there in a moment, to choose the first check on: the common faults everywhere, by all checks but the
 * slow ones. All that it holds the whole table holds too, check for check and outcome for outcome, so what is answered on it
 * stays good.
 * @returns null for a rig whose whole table is there as soon
 */
export function openPart(
	sheet: RigSheet,
	complaint: Complaint,
	{ learnt = {}, standIn = false }: Pick<FinderOptions, 'learnt' | 'standIn'> = {},
	meant: Witness = meantWitness(sheet),
): Bench | null {
	const all = placedFaults(sheet);
	if (all.length < LARGE || !canComplain(meant, complaint)) return null;
	const few = all.filter(
		({ placed: { place }, weight }) => weight >= COMMON || place.split(':')[0] === complaint.fixture,
	);
	const candidates = candidatesFor(sheet, meant, complaint, weighBy(learnt), few);
	const wanted = ({ kind, place }: Check): boolean =>
		!SLOW.has(kind) && (kind !== 'desk-strips' || place === complaint.fixture);
	return tableFor(sheet, complaint, { meant, candidates, wanted, standIn });
}
