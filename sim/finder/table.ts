import type { RigSheet } from '../../shared/sheet/index.ts';
import type { PlacedFault } from '../event/index.ts';
import { faultOf, type MendId, placedFaults } from '../fault/index.ts';
import { type Check, checksOf } from './checks/index.ts';
import { COMPLAINTS, type Complaint } from './complaints.ts';
import { meantWitness, type Witness, witnessAt } from './witness.ts';

/** One thing that may be wrong, as the rig testifies it can show this complaint. */
export interface Candidate {
	readonly faults: readonly PlacedFault[];
	readonly weight: number;
	/** What mends it, and where: `id@place`, joined by `+` where there are two. */
	readonly mend: string;
	readonly witness: Witness;
}

/** Which check shows what under which candidate. */
export interface Bench {
	readonly sheet: RigSheet;
	readonly complaint: Complaint;
	readonly meant: Witness;
	readonly candidates: readonly Candidate[];
	readonly checks: readonly Check[];
	/** `outcomes[check][candidate]`. */
	readonly outcomes: readonly (readonly string[])[];
}

/** The mend of a placed fault: which, and where it is done. */
export function mendFor(sheet: RigSheet, placed: PlacedFault): { readonly id: MendId; readonly place: string } {
	const fault = faultOf(placed.fault);
	return { id: fault.mend, place: fault.mendAt?.(sheet, placed) ?? placed.place };
}

/** A placed fault's mend and its place, as a text: `id@place`. */
export const mendText = (sheet: RigSheet, placed: PlacedFault): string => {
	const { id, place } = mendFor(sheet, placed);
	return `${id}@${place}`;
};

/** Asks of each kept text once. */
function remembering(read: (w: Witness) => string, key: (w: Witness) => string | null): (w: Witness) => string {
	const known = new Map<string, string>();
	return (w) => {
		const text = key(w);
		if (text === null) return read(w);
		let answer = known.get(text);
		if (answer === undefined) {
			answer = read(w);
			known.set(text, answer);
		}
		return answer;
	};
}

/**
 * Every placed fault under which the rig shows the complaint.
 * @param weigh turns a fault's weight into the one that this device has learnt
 * @param all those to try; left out, every fault in every place
 */
export function candidatesFor(
	sheet: RigSheet,
	meant: Witness,
	complaint: Complaint,
	weigh: (placed: PlacedFault, weight: number) => number = (_, weight) => weight,
	all: ReturnType<typeof placedFaults> = placedFaults(sheet),
): Candidate[] {
	const showing = COMPLAINTS[complaint.kind];
	const decides = [complaint.fixture, ...(showing.others?.(meant, complaint.fixture) ?? [])];
	const shows = remembering(
		(w) => `${showing.holds(w, meant, complaint.fixture)}`,
		(w) => decides.map((id) => w.signature(id)).join(),
	);
	return all.flatMap(({ placed, weight }) => {
		const w = witnessAt(meant, [placed], decides);
		return w && shows(w) === 'true'
			? [{ faults: [placed], weight: weigh(placed, weight), mend: mendText(sheet, placed), witness: w }]
			: [];
	});
}

/** Reads every check off a rig, in their order. Checks with one and the same key are looked up together, and read once for each text of it. */
function readerOf(checks: readonly Check[]): (w: Witness) => string[] {
	const groups = new Map<Check['key'], { readonly at: number[]; readonly known: Map<string, readonly string[]> }>();
	for (const [at, { key }] of checks.entries()) {
		const group = groups.get(key);
		if (group) group.at.push(at);
		else groups.set(key, { at: [at], known: new Map() });
	}
	return (w) => {
		const column = new Array<string>(checks.length);
		for (const [key, { at, known }] of groups) {
			const text = key(w);
			let answers = text === null ? undefined : known.get(text);
			if (!answers) {
				answers = at.map((each) => checks[each]?.read(w) ?? '');
				if (text !== null) known.set(text, answers);
			}
			for (const [i, each] of at.entries()) column[each] = answers[i] ?? '';
		}
		return column;
	};
}

/** The outcome table of a complaint: each check read off each candidate's rig. @param wanted which checks; left out, all */
export function tableFor(
	sheet: RigSheet,
	complaint: Complaint,
	meant: Witness = meantWitness(sheet),
	candidates: readonly Candidate[] = candidatesFor(sheet, meant, complaint),
	wanted: (check: Check) => boolean = () => true,
): Bench {
	const mends = new Map<string, { readonly id: MendId; readonly place: string }>();
	for (const { faults } of candidates)
		for (const fault of faults) mends.set(mendText(sheet, fault), mendFor(sheet, fault));
	const all = checksOf(sheet, meant, complaint, [...mends.values()]).filter(wanted);
	const read = readerOf(all);
	const columns = candidates.map(({ witness }) => {
		const column = read(witness);
		witness.forget();
		return column;
	});
	const kept: Check[] = [];
	const outcomes: string[][] = [];
	for (const [at, check] of all.entries()) {
		const row = columns.map((column) => column[at] ?? '');
		// a check that shows one thing whatever is wrong tells nothing; a mend is kept, for the end of the walk
		if (row.every((outcome) => outcome === row[0]) && !check.kind.startsWith('mend-')) continue;
		kept.push(check);
		outcomes.push(row);
	}
	return { sheet, complaint, meant, candidates, checks: kept, outcomes };
}
