/**
 * `npm run mutate`: puts small slips into `shared/` and `sim/`, one at a time and in a copy of the tree, and tells which of them no test
 * notices. What it prints as survived is either a hole in the tests, or a change that means the same.
 *
 * - `npm run mutate`: about 20 on the lines changed since `origin/main` (or the last commit); `npm run mutate -- main` since another commit.
 * - `npm run mutate -- --all 200 --seed 7`: so many over everything; `--in sim/fault` in files whose path begins so.
 * - `--within 5`: only by test files that usually take at most five seconds, on a busy machine; what survives them may yet die in the others.
 */
import { execFileSync } from 'node:child_process';
import { parseArgs } from 'node:util';
import { makeRandom } from '../../shared/random/index.ts';
import { root } from '../house/tree.ts';
import { changedSince, draw, folderOf, mutantsUnder } from './draw.ts';
import { importGraph } from './graph.ts';
import type { Mutant } from './sites.ts';
import { makeTrial } from './trial.ts';
import { typeChecker } from './types.ts';
import { openWarm } from './warm.ts';

const ON_CHANGES = 20;

const { values, positionals } = parseArgs({
	allowPositionals: true,
	options: { all: { type: 'string' }, seed: { type: 'string' }, in: { type: 'string' }, within: { type: 'string' } },
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

// copied before anything is read: what changes in the tree meanwhile changes nothing here
const warm = await openWarm();
const all = candidates();
const graph = importGraph();
console.log(`seed ${seed}; ${all.length} places and ways to slip`);
const drawn = draw(all, Number(values.all ?? ON_CHANGES), makeRandom(seed), typeChecker(graph.straight));
console.log(`${drawn.mutants.length} drawn; ${drawn.refused} more refused by the compiler, and not counted`);

const said = ({ file, line, before, after }: Mutant): string => {
	const short = (text: string): string => text.replace(/\s+/g, ' ').slice(0, 70);
	return `${file}:${line}  ${short(before)}  ->  ${short(after)}`;
};

const trial = makeTrial(warm, graph, values.within === undefined ? undefined : 1000 * Number(values.within));
const survivors: Mutant[] = [];
const rows = new Map<string, { drawn: number; killed: number; hung: number; survived: number }>();
const rowOf = (folder: string) => {
	const row = rows.get(folder) ?? { drawn: 0, killed: 0, hung: 0, survived: 0 };
	rows.set(folder, row);
	return row;
};

await trial.run(drawn.mutants, (mutant, { end, by }) => {
	const row = rowOf(folderOf(mutant.file));
	row.drawn++;
	row[end]++;
	if (end === 'survived') survivors.push(mutant);
	console.log(`${end.padEnd(8)}  ${said(mutant)}${by ? `  (${by})` : ''}`);
});
warm.close();

console.log('\nfolder              drawn  killed  hung  survived   died');
const line = (name: string, { drawn: count, killed, hung, survived }: ReturnType<typeof rowOf>): string =>
	`${name.padEnd(18)}${[count, killed, hung, survived].map((n, i) => `${n}`.padStart([7, 8, 6, 10][i] ?? 0)).join('')}${`${Math.round((100 * (killed + hung)) / count)} %`.padStart(8)}`;
const whole = { drawn: 0, killed: 0, hung: 0, survived: 0 };
for (const [folder, row] of [...rows].sort(([a], [b]) => (a < b ? -1 : 1))) {
	console.log(line(folder, row));
	for (const key of ['drawn', 'killed', 'hung', 'survived'] as const) whole[key] += row[key];
}
if (whole.drawn > 0) console.log(line('all', whole));
if (survivors.length > 0) console.log(`\nSurvived, each a hole in the tests or a change that means the same:`);
for (const mutant of survivors) console.log(`  ${said(mutant)}`);
if (trial.red.size > 0) {
	console.log(`\nRed with nothing changed, so left out:\n${[...trial.red].map((test) => `  ${test}`).join('\n')}`);
	process.exitCode = 1;
}
