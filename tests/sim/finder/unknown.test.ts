import { describe, expect, test } from 'vitest';
import { bundledRig } from '../../../shared/sheet/index.ts';
import type { RepairId } from '../../../sim/fault/index.ts';
import { COMPLAINTS } from '../../../sim/finder/complaints.ts';
import { type Complaint, complaintsOf, ELSE, finderOn, meantWitness, openOutcomes } from '../../../sim/finder/index.ts';
import { repaired, UNKNOWN_FAULTS, type UnknownFault, unknownRig } from './unknown.ts';

/** Most answers before a walk counts as one that does not end. */
const MOST = 80;

interface Ended {
	readonly complaint: string;
	readonly because: string;
	readonly asked: number;
	readonly seconds: number;
	readonly repairs: readonly string[];
	/** A cause named at the end whose repair was seen to fail. */
	readonly failedCause: string | null;
	/** Anything on the way that said two things at once. */
	readonly torn: readonly string[];
}

/** Always what the finder asks, answered as the rig shows; each repair it asks for is made, and the fault is there again. */
function walkUnknown(fault: UnknownFault, complaint: Complaint): Ended {
	const bench = openOutcomes(bundledRig(fault.rig), complaint);
	const finder = finderOn(bench);
	let w = unknownRig(fault);
	const repairs: string[] = [];
	const torn: string[] = [];
	let asked = 0;
	const repair = (check: string): void => {
		const [id, ...place] = check.slice('mend-'.length).split('@');
		repairs.push(check);
		w = repaired(w, fault, id as RepairId, place.join('@'));
		finder.answer(check, COMPLAINTS[complaint.kind].holds(w, bench.meant, complaint.fixture) ? 'still' : 'cleared');
	};
	while (asked++ < MOST) {
		const verdict = finder.verdict();
		const next = finder.next();
		if (verdict && next) torn.push('a verdict, and a check to do');
		if (verdict?.because === 'unknown') {
			if (verdict.suspects.some(({ id }) => id !== 'unknown')) torn.push('nothing fits, and a cause beside it');
			if (verdict.repairs.length > 0) torn.push('nothing fits, and a repair beside it');
		} else if (verdict && verdict.because !== 'mended') {
			if (verdict.suspects.some(({ id }) => id === 'unknown')) torn.push('a cause, and something not known beside it');
			if (verdict.suspects.every(({ against }) => against.length > 0))
				torn.push('causes with something against them all');
		}
		if (next?.check.id.startsWith('mend-')) repair(next.check.id);
		else if (next) {
			const seen = next.check.read(w);
			finder.answer(next.check.id, next.outcomes.some(({ id }) => id === seen) ? seen : ELSE);
		} else if (verdict && !verdict.confirmed && verdict.repairs[0]) repair(verdict.repairs[0].check);
		else break;
	}
	const verdict = finder.verdict();
	const failed = new Set(repairs);
	const isFailed = (repairs: readonly { readonly id: string; readonly place: string }[]) =>
		repairs.length > 0 && repairs.every(({ id, place }) => failed.has(`mend-${id}@${place}`));
	const cause = verdict?.confirmed ? undefined : verdict?.suspects.find(({ repairs }) => isFailed(repairs));
	return {
		complaint: complaint.kind,
		because: verdict?.because ?? 'no verdict',
		asked: finder.steps.length,
		seconds: Math.round(finder.spent),
		repairs,
		failedCause: cause?.id ?? null,
		torn: [...new Set(torn)],
	};
}

/** What can be complained of with such a rig. */
function complaintsWith(fault: UnknownFault): Complaint[] {
	const sheet = bundledRig(fault.rig);
	const meant = meantWitness(sheet);
	const w = unknownRig(fault);
	return complaintsOf(meant, { ...sheet, fixtures: sheet.fixtures.filter(({ id }) => id === fault.fixture) }).filter(
		({ kind, fixture }) => COMPLAINTS[kind].holds(w, meant, fixture),
	);
}

const rows: Record<string, string | number>[] = [];

/**
 * The symptom: with a fault it does not know, the finder ended in a cause at 96 to 98 % whose repair had just failed. The cause: what
 * it did not know lost half its weight at each answer, so that no failed repair could bring it back, and a failed repair only made
 * its suspect lighter.
 */
describe.each(UNKNOWN_FAULTS.map((fault) => [fault.id, fault] as const))('%s', (id, fault) => {
	test('is complained of, and is never called what its own repair has ruled out', () => {
		const complaints = complaintsWith(fault);
		expect(complaints.length).toBeGreaterThan(0);
		for (const complaint of complaints) {
			const ended = walkUnknown(fault, complaint);
			rows.push({
				fault: id,
				complaint: ended.complaint,
				end: ended.because,
				answers: ended.asked,
				repairs: ended.repairs.length,
				seconds: ended.seconds,
			});
			const what = `${id}, ${complaint.kind}: ${JSON.stringify(ended)}`;
			expect.soft(ended.failedCause, what).toBeNull();
			expect.soft(ended.torn, what).toEqual([]);
			expect.soft(ended.asked, what).toBeLessThan(MOST);
			// a repair may hide what is wrong; else it is said that nothing fits
			expect.soft(['unknown', 'mended'], what).toContain(ended.because);
		}
	});
});

test('most of them end in nothing that it knows', () => {
	console.table(rows);
	const unknown = rows.filter(({ end }) => end === 'unknown').length;
	expect(unknown / rows.length).toBeGreaterThan(0.9);
	expect(new Set(UNKNOWN_FAULTS.map(({ id }) => id)).size).toBeGreaterThanOrEqual(15);
});
