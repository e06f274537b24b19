import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** What one runner did: numbers of tests. */
export interface Counts {
	passed: number;
	failed: number;
	skipped: number;
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
