import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { root } from '../house/tree.ts';
import type { Reply } from './bench.ts';
import { folderOf } from './draw.ts';
import type { Graph } from './graph.ts';
import { type Mutant, withMutant } from './sites.ts';
import type { Late, Warm } from './warm.ts';

export interface Outcome {
	/** `unnoticed`: by the tests of shared/ and sim/; those of words and site are asked later. `undecided`: late, but so is the tree as it stands. */
	readonly end: 'killed' | 'hung' | 'survived' | 'undecided' | 'unnoticed';
	/** The test that noticed, or that hung. */
	readonly by: string | null;
}

export interface Trial {
	/** Tries each mutant, and says how it came out as soon as that is known. */
	run(mutants: readonly Mutant[], report: (mutant: Mutant, outcome: Outcome) => void): Promise<void>;
	/** Tests that fail with nothing changed: whatever they say is no news. */
	readonly red: ReadonlySet<string>;
}

const TIMES = path.join(root, 'tests/.out/mutate-times.json');

/** Milliseconds a test file is taken to need that was never seen. */
const UNKNOWN = 5000;

/**
 * So many times slower than the tree as it stands, and so many milliseconds more, is taken for a change that hangs: one that fails a
 * property looks long for its least case. What is late is first held against the same tests run in the same minute, the machine may be busy.
 */
const SLOWER = 5;
const MORE = 20_000;
const TRIES = 3;

/** Tests asked at once usually take so many milliseconds at first, and so many times more each time nothing is noticed. */
const FIRST = 10_000;
const GROWS = 3;

/** Milliseconds each test file took when it was last seen. */
function timesKept(): Record<string, number> {
	try {
		return JSON.parse(readFileSync(TIMES, 'utf8')) as Record<string, number>;
	} catch {
		return {};
	}
}

function keepTimes(times: Readonly<Record<string, number>>): void {
	mkdirSync(path.dirname(TIMES), { recursive: true });
	writeFileSync(TIMES, JSON.stringify(times));
}

/**
 * Each mutant meets the tests of `shared/`, `sim/` and the outside world that import its file, its own folder's first and the quick before the
 * slow, until one fails. Those left meet the tests of words and site together, and are told apart only where one of these fails.
 * @param within milliseconds that a test file may usually take, to be asked
 * @param ownOnly whether only tests of the mutant's own folder are asked, and those of its floor and of the outside world
 */
export function makeTrial(warm: Warm, graph: Graph, within = Number.POSITIVE_INFINITY, ownOnly = false): Trial {
	const times = timesKept();
	const red = new Set<string>();
	const green = new Set<string>();
	const isFar = (test: string): boolean => /^tests\/(src|site|content)\//.test(test);

	function testsFor(file: string, far: boolean): string[] {
		const own = folderOf(file);
		const isOwn = (test: string): boolean =>
			test.startsWith(`tests/${own}/`) || ['tests/shared', 'tests/sim'].includes(path.posix.dirname(test));
		const reaching = graph.reaching(file);
		const cost = (test: string): number => usual(test) / (isOwn(test) ? 20 : 1);
		return warm.tests
			.filter(
				(test) =>
					reaching.has(test) && isFar(test) === far && (isOwn(test) || test.startsWith('tests/published/') || !ownOnly),
			)
			.filter((test) => !red.has(test) && (times[test] ?? 0) <= within)
			.sort((a, b) => cost(a) - cost(b));
	}

	const usual = (test = ''): number => times[test] ?? UNKNOWN;
	const most = (test: string): number => SLOWER * usual(test) + MORE;

	async function ask(mutants: readonly Mutant[], tests: readonly string[]): Promise<Reply | Late> {
		const back: Record<string, string> = {};
		const put: Record<string, string> = {};
		for (const mutant of mutants) {
			back[mutant.file] = mutant.text;
			put[mutant.file] = withMutant(mutant);
		}
		const reply = await warm.ask({ put, tests, back }, mutants.length > 0 ? most : () => 10 * SLOWER * MORE);
		if ('took' in reply) {
			// those that passed with a change in would pass without, and take about as long
			for (const [test, took] of Object.entries(reply.took)) {
				green.add(test);
				times[test] = mutants.length === 0 ? took : Math.min(times[test] ?? took, took);
			}
			keepTimes(times);
		}
		return reply;
	}

	/** Whether a test file passes with nothing changed. */
	async function isGreen(test: string): Promise<boolean> {
		const reply = await ask([], [test]);
		const passes = 'took' in reply && reply.failed === null;
		if (!passes) red.add(test);
		return passes;
	}

	/** Tests a few at a time: what runs on after one has failed is lost. */
	async function outcomeOf(mutants: readonly Mutant[], tests: readonly string[]): Promise<Outcome> {
		for (let from = 0, most = FIRST; from < tests.length; most *= GROWS) {
			let to = from + 1;
			for (let sum = usual(tests[from]); to < tests.length; to++) {
				sum += usual(tests[to]);
				if (sum > most) break;
			}
			const outcome = await outcomeOfFew(mutants, tests.slice(from, to));
			if (outcome.end !== 'survived') return outcome;
			from = to;
		}
		return { end: 'survived', by: null };
	}

	async function outcomeOfFew(mutants: readonly Mutant[], tests: readonly string[], tries = TRIES): Promise<Outcome> {
		const left = tests.filter((test) => !red.has(test));
		if (left.length === 0) return { end: 'survived', by: null };
		const limits = new Map(left.map((test) => [test, most(test)]));
		const reply = await ask(mutants, left);
		if ('late' in reply) {
			const { late } = reply;
			if (late === null || !left.includes(late))
				return tries > 0 ? outcomeOfFew(mutants, left, tries - 1) : { end: 'undecided', by: null };
			const passes = await isGreen(late);
			if (passes && (limits.get(late) ?? 0) >= most(late)) return { end: 'hung', by: late };
			return tries > 0 ? outcomeOfFew(mutants, left, tries - 1) : { end: 'undecided', by: late };
		}
		if (reply.failed === null) return { end: 'survived', by: null };
		const test = reply.failed.split(': ')[0] ?? '';
		if (left.includes(test) && !green.has(test) && !(await isGreen(test))) return outcomeOfFew(mutants, left, tries);
		return { end: 'killed', by: reply.failed };
	}

	/** Mutants in different files met together; halved while some test fails. */
	async function together(
		mutants: readonly Mutant[],
		report: (mutant: Mutant, outcome: Outcome) => void,
	): Promise<void> {
		const [first] = mutants;
		if (!first) return;
		const tests = [...new Set(mutants.flatMap(({ file }) => testsFor(file, true)))];
		const outcome = await outcomeOf(mutants, tests);
		if (outcome.end === 'survived' || mutants.length === 1) {
			for (const mutant of mutants) report(mutant, outcome);
			return;
		}
		const half = Math.ceil(mutants.length / 2);
		await together(mutants.slice(0, half), report);
		await together(mutants.slice(half), report);
	}

	return {
		red,
		async run(mutants, report) {
			const left: Mutant[] = [];
			for (const mutant of mutants) {
				const outcome = await outcomeOf([mutant], testsFor(mutant.file, false));
				const isLeft = outcome.end === 'survived';
				if (isLeft) left.push(mutant);
				report(mutant, isLeft ? { end: 'unnoticed', by: null } : outcome);
			}
			for (const group of apart(left)) await together(group, report);
		},
	};
}

/** Groups of mutants, no two of a group in one file: the first group takes one of each file, the next one more. */
function apart(mutants: readonly Mutant[]): Mutant[][] {
	const groups: Mutant[][] = [];
	for (const mutant of mutants) {
		const group = groups.find((each) => each.every(({ file }) => file !== mutant.file));
		if (group) group.push(mutant);
		else groups.push([mutant]);
	}
	return groups;
}
