import { InputError, shown } from '../../shared/error/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import { placedFaults } from '../fault/index.ts';
import type { Check } from './checks/index.ts';
import { COMPLAINT_KINDS, type Complaint, canComplain } from './complaints.ts';
import { Walk } from './path.ts';
import { candidatesFor, type RigOutcomes, tableFor } from './table.ts';
import { type Finder, type FinderOptions, type WalkAnswer, weighBy } from './types.ts';
import { meantWitness, type Witness } from './witness.ts';

/**
 * Opens a finder: from a complaint to the cause in the fewest expected seconds. Every outcome it reckons with is read off a rig
 * with that suspect's fault in it; answers may be wrong, so nothing is ever struck out for good.
 * @param complaint one that the sheet can have
 * @throws InputError `sheet.*` for what is no sheet, `finder.complaint` for what is no complaint or where the sheet cannot have it there
 */
export function openFinder(sheet: RigSheet, complaint: Complaint, options: FinderOptions = {}): Finder {
	return finderOn(openOutcomes(sheet, complaint, options), options);
}

/** What a table is made for. */
type OutcomeOptions = Pick<FinderOptions, 'learnt' | 'standIn'> & {
	/** Of the catalogue: what was set from an older one is worked out from it for good. Left out, the newest. */
	readonly edition?: number;
};

/** The table a finder walks on, which takes a while for a large rig. @param meant the sheet's own rig, where it is open already @throws InputError as {@link openFinder}. */
export function openOutcomes(
	sheet: RigSheet,
	complaint: Complaint,
	{ learnt = {}, standIn = false, edition = Number.POSITIVE_INFINITY }: OutcomeOptions = {},
	meant: Witness = meantWitness(sheet),
): RigOutcomes {
	if (!COMPLAINT_KINDS.includes(complaint?.kind))
		throw new InputError('finder.complaint', 'complaint', {
			expected: 'complaint',
			known: COMPLAINT_KINDS,
			found: shown(complaint?.kind),
		});
	if (!meant.rig.gear.units.has(complaint.fixture) || !canComplain(meant, complaint)) {
		throw new InputError('finder.complaint', 'complaint', {
			trouble: 'not-meant-to',
			fixture: shown(complaint.fixture),
			kind: complaint.kind,
		});
	}
	const candidates = candidatesFor(sheet, meant, complaint, weighBy(learnt), placedFaults(sheet, edition));
	return tableFor(sheet, complaint, { meant, candidates, standIn, edition });
}

/** A finder on a table made beforehand. */
export function finderOn(table: RigOutcomes, options: FinderOptions = {}): Finder {
	const walk = new Walk(table, options);
	const steps: WalkAnswer[] = [];
	const take = (step: WalkAnswer): void => {
		walk.require(step);
		steps.push(step);
		walk.replay(steps);
	};
	return {
		suspects: () => walk.suspects(),
		next: () => walk.next(),
		answer: (check, outcome) => take({ did: 'answer', check, outcome }),
		cannot: (check) => take({ did: 'cannot', check }),
		undo() {
			steps.pop();
			walk.replay(steps);
		},
		verdict: () => walk.verdict(),
		hinge: () => walk.hinge(),
		get steps() {
			return steps;
		},
		get spent() {
			return walk.spent;
		},
		check: (id) => walk.checkOf(id),
	};
}

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
): RigOutcomes | null {
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
