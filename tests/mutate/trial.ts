import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { root } from '../house/tree.ts';
import type { Reply } from './bench.ts';
import type { Graph } from './graph.ts';
import { type Mutant, withMutant } from './sites.ts';
import type { Warm } from './warm.ts';

export interface Outcome {
	readonly end: 'killed' | 'hung' | 'survived';
	/** The test that noticed. */
	readonly by: string | null;
}

export interface Trial {
	/** Tries each mutant, and says how it came out as soon as that is known. */
	run(mutants: readonly Mutant[], report: (mutant: Mutant, outcome: Outcome) => void): Promise<void>;
	/** Tests that fail with nothing changed: whatever they say is no news. */
	readonly red: ReadonlySet<string>;
}

const TIMES = path.join(root, 'tests/.out/mutate-times.json');

/** Milliseconds a test file is taken to need that was never seen, and what a run needs before its first test. */
const UNKNOWN = 5000;
const AT_START = 60_000;

/** So many times slower than usual is taken for a change that hangs: one that fails a property looks long for its least case. */
const SLOWER = 5;

/** Milliseconds each test file took when it was last seen. */
function timesKept(): Record<string, number> {
	try {
		return JSON.parse(readFileSync(TIMES, 'utf8')) as Record<string, number>;
	} catch {
		return {};
	}
}

/**
 * Each mutant meets the tests of `shared/`, `sim/` and the outside world that import its file, its own folder's first and the quick before the
 * slow, until one fails. Those left meet the tests of words and site together, and are told apart only where one of these fails.
 * @param within milliseconds that a test file may usually take, to be asked
 */
export function makeTrial(warm: Warm, graph: Graph, within = Number.POSITIVE_INFINITY): Trial {
	const times = timesKept();
	const red = new Set<string>();
	const green = new Set<string>();
	const isFar = (test: string): boolean => /^tests\/(src|site|content)\//.test(test);

	function testsFor(file: string, far: boolean): string[] {
		const own = `tests/${path.posix.dirname(file).split('/').slice(0, 2).join('/')}/`;
		const reaching = graph.reaching(file);
		const cost = (test: string): number => (times[test] ?? UNKNOWN) / (test.startsWith(own) ? 20 : 1);
		return warm.tests
			.filter((test) => reaching.has(test) && isFar(test) === far && !red.has(test) && (times[test] ?? 0) <= within)
			.sort((a, b) => cost(a) - cost(b));
	}

	async function ask(mutants: readonly Mutant[], tests: readonly string[]): Promise<Reply | null> {
		const back: Record<string, string> = {};
		const put: Record<string, string> = {};
		for (const mutant of mutants) {
			back[mutant.file] = mutant.text;
			put[mutant.file] = withMutant(mutant);
		}
		const usual = tests.reduce((sum, test) => sum + (times[test] ?? UNKNOWN), 0);
		const reply = await warm.ask({ put, tests, back }, AT_START + SLOWER * usual);
		if (mutants.length === 0 && reply) Object.assign(times, reply.took);
		return reply;
	}

	/** Whether a test that failed passes with nothing changed; asked once. */
	async function isGreen(test: string): Promise<boolean> {
		if (!green.has(test) && !red.has(test)) {
			const reply = await ask([], [test]);
			(reply?.failed === null ? green : red).add(test);
		}
		return green.has(test);
	}

	async function outcomeOf(mutants: readonly Mutant[], tests: readonly string[]): Promise<Outcome> {
		const left = tests.filter((test) => !red.has(test));
		const reply = await ask(mutants, left);
		if (!reply) return { end: 'hung', by: null };
		if (reply.failed === null) {
			Object.assign(times, reply.took);
			return { end: 'survived', by: null };
		}
		const test = reply.failed.split(': ')[0] ?? '';
		if (left.includes(test) && !(await isGreen(test))) return outcomeOf(mutants, left);
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
		const outcome: Outcome = tests.length > 0 ? await outcomeOf(mutants, tests) : { end: 'survived', by: null };
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
				if (outcome.end === 'survived') left.push(mutant);
				else report(mutant, outcome);
			}
			for (const group of apart(left)) await together(group, report);
			mkdirSync(path.dirname(TIMES), { recursive: true });
			writeFileSync(TIMES, JSON.stringify(times));
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
