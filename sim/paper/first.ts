import type { RigSheet } from '../../shared/sheet/index.ts';
import {
	type Bench,
	type Check,
	type Complaint,
	complaintsOf,
	finderOn,
	meantWitness,
	openBench,
} from '../finder/index.ts';

/** A check that could come first, and the seconds expected from here to the cause if it does. */
export interface First {
	readonly check: Check;
	readonly expected: number;
}

/** What the finder asks first, and other checks of the same walk that are worse. */
export interface Opening {
	readonly complaint: Complaint;
	readonly best: First;
	/** Worst last. Each is worse than the best by `LEAST_GAP` and `LEAST_SECONDS` at least. */
	readonly others: readonly First[];
}

/**
 * Least share by which a check must be worse than the best to be called so. Ours: at 0.2 one of 1,551 walked to their end on changed
 * rigs was no worse, at 0.25 none.
 */
const LEAST_GAP = 0.25;
/** Most seconds that are expected from the best check on. Ours: past it what the finder expects is off by more than the gap. */
const MOST_SECONDS = 80;
/** The same in seconds: below, nobody would feel it. */
const LEAST_SECONDS = 2;
/** Checks that are played to the end to see how much worse they are: the least worth asking is of no interest. */
const MOST_PLAYED = 9;
/** Worse ones after which no more are looked for: a question takes three. */
const ENOUGH = 5;

const known = new WeakMap<RigSheet, Map<string, Opening | null>>();
const fitting = new WeakMap<RigSheet, readonly Complaint[]>();

/** What can be complained of on this rig, as the finder has it; looked up once a sheet. */
export function complaintsOn(sheet: RigSheet): readonly Complaint[] {
	let all = fitting.get(sheet);
	if (!all) {
		all = complaintsOf(meantWitness(sheet), sheet);
		fitting.set(sheet, all);
	}
	return all;
}

/** How the finder would open on this complaint; null where there is nothing to choose between. Worked out once. */
export function openingOf(sheet: RigSheet, complaint: Complaint): Opening | null {
	const kept = known.get(sheet) ?? new Map<string, Opening | null>();
	known.set(sheet, kept);
	const key = `${complaint.kind}@${complaint.fixture}`;
	let opening = kept.get(key);
	if (opening === undefined) {
		opening = workOut(openBench(sheet, complaint), complaint);
		kept.set(key, opening);
	}
	return opening;
}

function workOut(bench: Bench, complaint: Complaint): Opening | null {
	const next = finderOn(bench).next();
	const best = next?.check;
	const expected = best ? expectedFrom(bench, best) : null;
	if (!best || expected === null) return null;
	// the dearer of two reckonings, this look trusted and doubted: what is close by either is not offered
	const dearer = Math.max(expected, next.expected ?? 0);
	if (dearer > MOST_SECONDS) return null;
	const worse = Math.max(dearer * (1 + LEAST_GAP), dearer + LEAST_SECONDS);
	const seen = new Set([placeOf(best)]);
	const others: First[] = [];
	let played = 0;
	// quick ones first: what takes long is seldom a temptation
	for (const check of [...bench.checks].sort((a, b) => a.seconds - b.seconds || (a.id < b.id ? -1 : 1))) {
		if (others.length >= ENOUGH || played >= MOST_PLAYED) break;
		const outcomes = new Set(bench.outcomes[bench.checks.indexOf(check)]);
		if (seen.has(placeOf(check)) || outcomes.size < 2) continue;
		seen.add(placeOf(check));
		played++;
		const seconds = expectedFrom(bench, check);
		if (seconds !== null && seconds >= worse) others.push({ check, expected: seconds });
	}
	others.sort((a, b) => a.expected - b.expected);
	return others.length >= 2 ? { complaint, best: { check: best, expected }, others } : null;
}

/** What reads alike: a kind of check at a place, whatever else it is about. */
const placeOf = ({ kind, place }: Check): string => `${kind}@${place}`;

/** Seconds from the start to the cause if this check comes first and the finder goes on after it; null where it cannot say. */
function expectedFrom(bench: Bench, check: Check): number | null {
	const chances = chancesOf(bench, check);
	let seconds = 0;
	for (const [outcome, chance] of chances) {
		const finder = finderOn(bench);
		finder.answer(check.id, outcome);
		if (seconds === 0) seconds += finder.spent;
		const verdict = finder.verdict();
		// a mend that clears it was to be done in any case: the finder counts what is spent on finding alone
		if (verdict?.confirmed) seconds -= chance * check.seconds;
		if (verdict) continue;
		const next = finder.next();
		if (!next || next.expected === null) return null;
		seconds += chance * next.expected;
	}
	return seconds;
}

/** How likely each outcome of a check is, by the weights of those who would show it. */
function chancesOf(bench: Bench, check: Check): Map<string, number> {
	const row = bench.outcomes[bench.checks.indexOf(check)] ?? [];
	const total = bench.candidates.reduce((sum, { weight }) => sum + weight, 0);
	const chances = new Map<string, number>();
	for (const [i, { weight }] of bench.candidates.entries()) {
		const outcome = row[i] ?? '';
		chances.set(outcome, (chances.get(outcome) ?? 0) + weight / total);
	}
	return chances;
}
