import type { RigSheet } from '../../shared/sheet/index.ts';
import type { PlacedFault } from '../event/index.ts';
import { faultEvents, faultOf, placedFaults, type RepairId } from '../fault/index.ts';
import { reachOf } from './bystanders.ts';
import { type Check, checksOf } from './checks/index.ts';
import { COMPLAINTS, type Complaint } from './complaints.ts';
import { isRepair, repairAtText } from './tried.ts';
import { type Came, meantWitness, type Witness, witnessesAt } from './witness.ts';

/** Share of a fault's weight by when it came: while the rig ran, as likely as before (common practice, no source). */
const SHARES: Readonly<Record<Came, number>> = { either: 1, cold: 0.5, warm: 0.5 };

/**
 * One thing that may be wrong, as the rig testifies it can show this complaint. Where it matters to the rig whether it came while the
 * rig ran, there is one for each.
 */
export interface Candidate {
	readonly faults: readonly PlacedFault[];
	readonly came: Came;
	readonly weight: number;
	/** What repairs it, and where: `id@place`, joined by `+` where there are two. */
	readonly repair: string;
	readonly witness: Witness;
}

/** A candidate's weight as its fault's own, whenever that came. */
export const weightApart = ({ weight, came }: Candidate): number => weight / SHARES[came];

/** Which check shows what under which candidate. */
export interface RigOutcomes {
	readonly sheet: RigSheet;
	readonly complaint: Complaint;
	readonly meant: Witness;
	readonly candidates: readonly Candidate[];
	readonly checks: readonly Check[];
	/** `outcomes[check][candidate]`. */
	readonly outcomes: readonly (readonly string[])[];
}

/** The repair of a placed fault: which, and where it is done. */
export function repairFor(sheet: RigSheet, placed: PlacedFault): { readonly id: RepairId; readonly place: string } {
	const fault = faultOf(placed.fault);
	return { id: fault.repair, place: fault.repairAt?.(sheet, placed) ?? placed.place };
}

/** A placed fault's repair and its place, as a text: `id@place`. */
export const repairText = (sheet: RigSheet, placed: PlacedFault): string => repairAtText(repairFor(sheet, placed));

/** The fixtures on which it hangs whether a complaint holds. */
const decidersOf = (meant: Witness, { kind, fixture }: Complaint): readonly string[] => [
	fixture,
	...(COMPLAINTS[kind].others?.(meant, fixture) ?? []),
];

/** Tells whether a rig shows a complaint; of rigs that are alike in all that decides it, one is asked. */
export function showingOf(meant: Witness, complaint: Complaint): (w: Witness) => boolean {
	const decides = decidersOf(meant, complaint);
	const known = new Map<string, boolean>();
	return (w) => {
		const text = decides.map((id) => w.signature(id)).join();
		let holds = known.get(text);
		if (holds === undefined) {
			holds = COMPLAINTS[complaint.kind].holds(w, meant, complaint.fixture);
			known.set(text, holds);
		}
		return holds;
	};
}

/**
 * Every placed fault under which the rig shows the complaint, twice where the rig shows it and is another by when the fault came.
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
	const decides = decidersOf(meant, complaint);
	const shows = showingOf(meant, complaint);
	const reaches = reachOf(meant.rig.gear, decides);
	const near = all.filter(({ placed }) => reaches(faultEvents(meant.rig.sheet, placed)));
	return near.flatMap(({ placed, weight }) =>
		witnessesAt(meant, [placed], decides)
			.filter(({ witness }) => shows(witness))
			.map(({ came, witness }) => ({
				faults: [placed],
				came,
				weight: weigh(placed, weight) * SHARES[came],
				repair: repairText(sheet, placed),
				witness,
			})),
	);
}

/** Reads every check off a rig, in their order. Checks with one and the same key are looked up together, and read once for each text of it. */
function readerOf(checks: readonly Check[]): (candidate: Candidate) => string[] {
	const groups = new Map<Check['key'], { readonly at: number[]; readonly known: Map<string, readonly string[]> }>();
	for (const [at, { key }] of checks.entries()) {
		const group = groups.get(key);
		if (group) group.at.push(at);
		else groups.set(key, { at: [at], known: new Map() });
	}
	return ({ witness: w }) => {
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
		w.forget();
		return column;
	};
}

/** What a table may be told besides its complaint. */
interface TableOptions {
	/** The sheet's own rig, where it is open already. */
	readonly meant?: Witness;
	/** Left out: all that can show the complaint. */
	readonly candidates?: readonly Candidate[];
	/** Which checks; left out, all. */
	readonly wanted?: (check: Check) => boolean;
	/** As in `FinderOptions`. */
	readonly standIn?: boolean;
	/** As in `openOutcomes`. */
	readonly edition?: number;
}

/** The outcome table of a complaint: each check read off each candidate's rig. */
export function tableFor(sheet: RigSheet, complaint: Complaint, options: TableOptions = {}): RigOutcomes {
	const { meant = meantWitness(sheet), wanted = () => true } = options;
	const { candidates = candidatesFor(sheet, meant, complaint) } = options;
	const repairs = new Map<string, { readonly id: RepairId; readonly place: string }>();
	for (const { faults } of candidates)
		for (const fault of faults) repairs.set(repairText(sheet, fault), repairFor(sheet, fault));
	const all = checksOf(sheet, meant, complaint, [...repairs.values()], options).filter(wanted);
	const read = readerOf(all);
	return benchOf({ all, read, columns: candidates.map(read) }, { sheet, complaint, meant, candidates });
}

/** What a table was made with, kept so that it can be widened without reading again what was read. */
interface TableSource {
	/** Every check, those that tell nothing among them. */
	readonly all: readonly Check[];
	readonly read: (candidate: Candidate) => string[];
	/** By candidate, what each of `all` shows. */
	readonly columns: readonly (readonly string[])[];
}

const makings = new WeakMap<RigOutcomes, TableSource>();

/** Every check that can be done on a bench's rig, in the order of its places: those too that show the same whatever is wrong. */
export const offeredBy = (table: RigOutcomes): readonly Check[] => makings.get(table)?.all ?? table.checks;

function benchOf(making: TableSource, of: Omit<RigOutcomes, 'checks' | 'outcomes'>): RigOutcomes {
	const { all, columns } = making;
	const kept: Check[] = [];
	const outcomes: string[][] = [];
	for (const [at, check] of all.entries()) {
		const row = columns.map((column) => column[at] ?? '');
		// a check that shows one thing whatever is wrong tells nothing; a repair is kept, for the end of the walk
		if (row.every((outcome) => outcome === row[0]) && !isRepair(check)) continue;
		kept.push(check);
		outcomes.push(row);
	}
	const table = { ...of, checks: kept, outcomes };
	makings.set(table, making);
	return table;
}

/** One more candidate for a bench. */
export interface More extends Candidate {
	/** The candidate of the bench whose look is left once a repair has been done: but for what was asked before, it is taken to look like that. */
	readonly left: Candidate | null;
}

/**
 * A bench with more candidates behind its own.
 * @param more whose repairs are repairs of the bench's own candidates
 * @param asked ids of the checks that were answered so far
 */
export function withMore(table: RigOutcomes, more: readonly More[], asked: ReadonlySet<string>): RigOutcomes {
	const { sheet, complaint, meant } = table;
	const candidates = [...table.candidates, ...more];
	const making = makings.get(table);
	if (!making) return tableFor(sheet, complaint, { meant, candidates });
	const { all, read, columns } = making;
	const own = new Map(table.candidates.map((candidate, at) => [candidate, columns[at] ?? []]));
	const before = [...all.entries()].filter(([, { id }]) => asked.has(id));
	const added = more.map((each) => {
		const left = each.left && own.get(each.left);
		if (!left) return read(each);
		const column = [...left];
		for (const [at, check] of before) column[at] = check.read(each.witness);
		each.witness.forget();
		return column;
	});
	return benchOf({ ...making, columns: [...columns, ...added] }, { sheet, complaint, meant, candidates });
}
