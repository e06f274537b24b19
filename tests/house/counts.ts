import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** What one runner did: numbers of tests, and how long they took. */
export interface Counts {
	passed: number;
	failed: number;
	skipped: number;
	/** Milliseconds each test file took, by its path from the root. */
	took: Readonly<Record<string, number>>;
}

/** Where the runs leave what they made; ignored by git. */
const outFolder = fileURLToPath(new URL('../.out/', import.meta.url));

const file = (runner: string) => `${outFolder}${runner}-counts.json`;

/** Leaves a runner's counts for `readCounts`. */
export function writeCounts(runner: string, counts: Counts): void {
	mkdirSync(outFolder, { recursive: true });
	writeFileSync(file(runner), JSON.stringify(counts));
}

/** Forgets a runner's last counts, so that a crash is not taken for the run before it. */
export function clearCounts(runner: string): void {
	rmSync(file(runner), { force: true });
}

/** The counts a runner left, or null where it left none (it crashed). */
export function readCounts(runner: string): Counts | null {
	try {
		return JSON.parse(readFileSync(file(runner), 'utf8')) as Counts;
	} catch {
		return null;
	}
}

/** The slowest test files of all runners, a line each: seconds, then the file. */
export function slowest(runs: readonly Pick<Counts, 'took'>[], most: number): string[] {
	return runs
		.flatMap(({ took }) => Object.entries(took))
		.sort(([, a], [, b]) => b - a)
		.slice(0, most)
		.map(([file, ms]) => `${(ms / 1000).toFixed(1).padStart(7)} s  ${file}`);
}
