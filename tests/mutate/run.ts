/**
 * `npm run mutate`: puts small slips into `shared/` and `sim/`, one at a time and in a copy of the tree, and tells which of them no test
 * notices. What it prints as survived is either a hole in the tests, or a change that means the same.
 *
 * - `npm run mutate`: about 20 on the lines changed since `origin/main` (or the last commit); `npm run mutate -- main` since another commit.
 * - `npm run mutate -- --all 200 --seed 7`: so many over everything; `--in sim/fault` in files whose path begins so.
 * - `npm run mutate -- --again`: those no test noticed when it was last run, or did not get to.
 * - `--within 5`: only by test files that usually take at most five seconds, `--own`: only by those of its own folder, on a busy machine;
 *   what survives them may yet die in the others.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { makeRandom } from '../../shared/random/index.ts';
import { root } from '../house/tree.ts';
import { changedSince, draw, folderOf, mutantsUnder } from './draw.ts';
import { isEquivalent } from './equivalents.ts';
import { importGraph } from './graph.ts';
import type { Mutant } from './sites.ts';
import { makeTrial, type Outcome } from './trial.ts';
import { typeChecker } from './types.ts';
import { openWarm } from './warm.ts';

const ON_CHANGES = 20;

/** What no test noticed when it was last run, or did not get to. */
const LEFT = path.join(root, 'tests/.out/mutate-left.json');

const { values, positionals } = parseArgs({
	allowPositionals: true,
	options: {
		all: { type: 'string' },
		seed: { type: 'string' },
		in: { type: 'string' },
		within: { type: 'string' },
		own: { type: 'boolean' },
		again: { type: 'boolean' },
	},
});
const seed = Number(values.seed ?? Math.floor(Math.random() * 1e6));
const start = values.in ?? '';

/** What stands in the tree before the work at hand. */
function refOf(): string {
	for (const ref of [...positionals, 'origin/main']) {
		try {
			return execFileSync('git', ['merge-base', ref, 'HEAD'], { cwd: root, encoding: 'utf8', stdio: 'pipe' }).trim();
		} catch {
			if (ref === positionals[0]) throw new Error(`git knows no '${ref}'.`);
		}
	}
	return 'HEAD~1';
}

function candidates(): Mutant[] {
	if (values.all !== undefined) return mutantsUnder((file) => file.startsWith(start));
	const changed = changedSince(refOf());
	return mutantsUnder((file) => file.startsWith(start) && changed.has(file)).filter(({ file, line }) =>
		changed.get(file)?.has(line),
	);
}

const samePlace = (a: Mutant, b: Mutant): boolean => a.file === b.file && a.start === b.start && a.after === b.after;

/** Those left when it was last run that still stand where they stood. */
function leftLast(): Mutant[] {
	const left = JSON.parse(readFileSync(LEFT, 'utf8')) as Mutant[];
	const files = new Set(left.map(({ file }) => file));
	const all = mutantsUnder((file) => files.has(file));
	return left.flatMap((each) => all.find((mutant) => samePlace(each, mutant)) ?? []);
}

/** What to try: drawn by the seed and let through by the compiler, or those left before. */
function toTry(): readonly Mutant[] {
	if (values.again) return leftLast();
	const all = candidates();
	console.log(`seed ${seed}; ${all.length} places and ways to slip`);
	const drawn = draw(all, Number(values.all ?? ON_CHANGES), makeRandom(seed), typeChecker(graph.straight));
	console.log(`${drawn.mutants.length} drawn; ${drawn.refused} more refused by the compiler, and not counted`);
	return drawn.mutants;
}

// copied before anything is read: what changes in the tree meanwhile changes nothing here
const warm = await openWarm();
const graph = importGraph();
const mutants = toTry();

const said = ({ file, line, before, after }: Mutant): string => {
	const short = (text: string): string => text.replace(/\s+/g, ' ').slice(0, 70);
	return `${file}:${line}  ${short(before)}  ->  ${short(after)}`;
};

const within = values.within === undefined ? undefined : 1000 * Number(values.within);
const trial = makeTrial(warm, graph, within, values.own);
const COLUMNS = ['drawn', 'killed', 'hung', 'survived', 'undecided', 'equivalent'] as const;
type Row = Record<(typeof COLUMNS)[number], number>;
const emptyRow = (): Row => ({ drawn: 0, killed: 0, hung: 0, survived: 0, undecided: 0, equivalent: 0 });
const rows = new Map<string, Row>();
/** Those no test has noticed yet: written down as it goes, so that a run broken off is taken up by `--again`. */
const left = new Set(mutants.filter((mutant) => !isEquivalent(mutant)));

function keepLeft(): void {
	mkdirSync(path.dirname(LEFT), { recursive: true });
	writeFileSync(LEFT, JSON.stringify([...left].map(({ text: _, ...place }) => place)));
}

function record(mutant: Mutant, { end, by }: Outcome | { readonly end: 'equivalent'; readonly by: null }): void {
	console.log(`${end.padEnd(10)}  ${said(mutant)}${by ? `  (${by})` : ''}`);
	if (end === 'killed' || end === 'hung') left.delete(mutant);
	keepLeft();
	if (end === 'unnoticed') return;
	const folder = folderOf(mutant.file);
	const row = rows.get(folder) ?? emptyRow();
	rows.set(folder, row);
	row.drawn++;
	row[end]++;
}

for (const mutant of mutants.filter(isEquivalent)) record(mutant, { end: 'equivalent', by: null });
keepLeft();
await trial.run([...left], record);
warm.close();

/** Those told, of those that can be. */
function line(name: string, row: Row): string {
	const told = row.killed + row.hung;
	const score = told + row.survived > 0 ? `${Math.round((100 * told) / (told + row.survived))} %` : '';
	return `${name.padEnd(18)}${COLUMNS.map((key) => `${row[key]}`.padStart(key.length + 2)).join('')}${score.padStart(8)}`;
}
console.log(`\n${'folder'.padEnd(18)}${COLUMNS.map((key) => `  ${key}`).join('')}    told`);
for (const [floor, name] of [
	['', 'all'],
	['shared/', 'shared'],
	['sim/', 'sim'],
] as const) {
	const whole = emptyRow();
	for (const [folder, row] of [...rows].sort(([a], [b]) => (a < b ? -1 : 1))) {
		if (!folder.startsWith(floor)) continue;
		if (floor === '') console.log(line(folder, row));
		for (const key of COLUMNS) whole[key] += row[key];
	}
	if (whole.drawn > 0) console.log(line(name, whole));
}
if (left.size > 0) console.log(`\nSurvived, each a hole in the tests or a change that means the same:`);
for (const mutant of left) console.log(`  ${said(mutant)}`);
if (trial.red.size > 0) {
	console.log(`\nRed with nothing changed, so left out:\n${[...trial.red].map((test) => `  ${test}`).join('\n')}`);
	process.exitCode = 1;
}
