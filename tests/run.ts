/**
 * `npm test`: format and lint, layers, dead code, types, the build, then every test of both runners, the slowest of them, and a last
 * line that counts them all together. `npm run check` stops before the build (a minute saved while at work).
 * Each step before the tests counts as one check.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { type Counts, clearCounts, readCounts, slowest } from './house/counts.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const quick = process.argv.includes('quick');
const tally = { passed: 0, failed: 0, skipped: 0 };
const broken: string[] = [];
const ran: Counts[] = [];

function run(command: string): boolean {
	console.log(`\n> ${command}`);
	const [program = '', ...args] = command.split(' ');
	const done = spawnSync(program, args, {
		cwd: root,
		stdio: ['ignore', 'inherit', 'inherit'],
		shell: process.platform === 'win32',
		env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
	});
	if (done.error) console.error(done.error.message);
	return done.status === 0;
}

function step(name: string, command: string): boolean {
	const good = run(command);
	if (good) tally.passed++;
	else {
		tally.failed++;
		broken.push(name);
	}
	return good;
}

function tests(runner: 'vitest' | 'playwright', command: string): void {
	clearCounts(runner);
	const good = run(command);
	const counts = readCounts(runner) ?? { passed: 0, failed: 1, skipped: 0, took: {} };
	ran.push(counts);
	// a runner that says it failed is believed over its count
	if (!good && counts.failed === 0) counts.failed = 1;
	tally.passed += counts.passed;
	tally.failed += counts.failed;
	tally.skipped += counts.skipped;
	if (counts.failed > 0) broken.push(runner);
}

// biome colours a file and a pipe too, unless it is told
step('format and lint', `biome ci --error-on-warnings${process.stdout.isTTY ? '' : ' --colors=off'} .`);
step('layers', 'depcruise --config tests/house/dependency-cruiser.config.mjs shared sim content src');
step('dead code', 'knip --no-progress');
step('astro types', 'astro check --minimumFailingSeverity hint');
step('types', 'tsc --noEmit');
step('types, with no page and no machine', 'tsc --noEmit -p tests/tsconfig.pure.json');
if (!quick) {
	const built = step('build', 'astro build');
	tests('vitest', 'vitest run --config tests/vitest.config.ts');
	if (built) tests('playwright', 'playwright test --config tests/playwright.config.ts');
	else {
		console.log('\nNo build, so no browser tests.');
		tally.failed++;
		broken.push('playwright');
	}
}

if (ran.length > 0) console.log(`\nThe ten slowest test files:\n${slowest(ran, 10).join('\n')}`);
if (broken.length > 0) console.log(`\nFailed: ${broken.join(', ')}`);
if (tally.skipped > 0) console.log(`\n${tally.skipped} skipped`);
console.log(`\n${tally.passed} passed, ${tally.failed} failed`);
process.exitCode = tally.failed === 0 ? 0 : 1;
