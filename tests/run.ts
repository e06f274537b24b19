/**
 * `npm test`: format and lint, layers, dead code, types, the build, then every test of both runners, the slowest of them, and a last
 * line that counts them all together. `npm run check` stops before the build (a minute saved while at work).
 * Each step before the tests counts as one check; they go side by side where neither needs the other.
 */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { type Counts, clearCounts, readCounts, slowest } from './house/counts.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const quick = process.argv.includes('quick');
const tally = { passed: 0, failed: 0, skipped: 0 };
const broken: string[] = [];
const ran: Counts[] = [];

/** Runs a command. Held back, what it says comes in one piece when it has ended: another says something at the same time. */
function run(command: string, isHeldBack: boolean): Promise<boolean> {
	const [program = '', ...args] = command.split(' ');
	return new Promise((resolve) => {
		if (!isHeldBack) console.log(`\n> ${command}`);
		const child = spawn(program, args, {
			cwd: root,
			stdio: ['ignore', isHeldBack ? 'pipe' : 'inherit', isHeldBack ? 'pipe' : 'inherit'],
			shell: process.platform === 'win32',
			env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
		});
		const said: Buffer[] = [];
		child.stdout?.on('data', (chunk) => said.push(chunk));
		child.stderr?.on('data', (chunk) => said.push(chunk));
		child.once('error', (error) => {
			console.error(error.message);
			resolve(false);
		});
		child.once('close', (status) => {
			if (isHeldBack) console.log(`\n> ${command}\n${Buffer.concat(said)}`);
			resolve(status === 0);
		});
	});
}

async function step(name: string, command: string): Promise<boolean> {
	const good = await run(command, true);
	if (good) tally.passed++;
	else {
		tally.failed++;
		broken.push(name);
	}
	return good;
}

async function tests(runner: 'vitest' | 'playwright', command: string): Promise<void> {
	clearCounts(runner);
	const good = await run(command, false);
	const counts = readCounts(runner) ?? { passed: 0, failed: 1, skipped: 0, took: {} };
	ran.push(counts);
	// a runner that says it failed is believed over its count
	if (!good && counts.failed === 0) counts.failed = 1;
	tally.passed += counts.passed;
	tally.failed += counts.failed;
	tally.skipped += counts.skipped;
	if (counts.failed > 0) broken.push(runner);
}

// none of these steps keeps two cores busy: two rows of them, of about the same length, side by side
async function lint(): Promise<void> {
	// biome colours a file and a pipe too, unless it is told
	await step('format and lint', 'biome ci --error-on-warnings --colors=off .');
	await step('layers', 'depcruise --config tests/house/dependency-cruiser.config.mjs shared sim content src');
	await step('dead code', 'knip --no-progress');
	await step('types, with no page and no machine', 'tsc --noEmit -p tests/tsconfig.pure.json');
}
async function build(): Promise<boolean> {
	await step('astro types', 'astro check --minimumFailingSeverity hint');
	return quick || step('build', 'astro build');
}
const [built] = await Promise.all([build(), lint()]);
// it reads types that both of Astro's steps write
const types = step('types', 'tsc --noEmit');
if (!quick) {
	await tests('vitest', 'vitest run --config tests/vitest.config.ts');
	if (built) await tests('playwright', 'playwright test --config tests/playwright.config.ts');
	else {
		console.log('\nNo build, so no browser tests.');
		tally.failed++;
		broken.push('playwright');
	}
}
await types;

if (ran.length > 0) console.log(`\nThe ten slowest test files:\n${slowest(ran, 10).join('\n')}`);
if (broken.length > 0) console.log(`\nFailed: ${broken.join(', ')}`);
if (tally.skipped > 0) console.log(`\n${tally.skipped} skipped`);
console.log(`\n${tally.passed} passed, ${tally.failed} failed`);
process.exitCode = tally.failed === 0 ? 0 : 1;
