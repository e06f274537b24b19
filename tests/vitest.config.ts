import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * Three ways to run, by `--mode`:
 * - `test` (the default): every `*.test.ts` under tests/.
 * - `soak`: the same with far more property runs (tests/runs.ts), and `*.soak.ts` besides.
 * - `speed`: only tests/speed, one file at a time so that nothing shares the core being measured.
 */
export default defineConfig(({ mode }) => {
	const soak = mode === 'soak';
	const speed = mode === 'speed';
	const minute = 60_000;
	const files = speed
		? ['tests/speed/**/*.speed.ts']
		: ['tests/**/*.test.{ts,tsx}', ...(soak ? ['tests/**/*.soak.ts'] : [])];
	// Modules of the floors that keep no state are read once a process, not once a file: that was half of the time. The site's own
	// hold stores, clocks and words, so each of its files has them to itself.
	const projects = [
		{ extends: true as const, test: { name: 'pure', include: files, exclude: ['tests/src/**'], isolate: false } },
		{
			extends: true as const,
			test: { name: 'site', include: files.map((each) => each.replace('tests/', 'tests/src/')) },
		},
	];
	return {
		root,
		// what is measured is what ships
		define: speed ? { SHIPPED: 'true' } : {},
		test: {
			...(speed ? { include: files } : { projects }),
			env: { PREP_BAY_SOAK: soak ? '1' : '' },
			setupFiles: [fileURLToPath(new URL('./house/seed.ts', import.meta.url))],
			testTimeout: soak ? 60 * minute : speed ? 10 * minute : minute,
			hookTimeout: minute,
			fileParallelism: !speed,
			passWithNoTests: speed || soak,
			reporters: ['default', fileURLToPath(new URL('./house/vitest-counts.ts', import.meta.url))],
			coverage: { provider: 'v8', include: ['shared/**', 'sim/**'], reportsDirectory: 'tests/.out/coverage' },
		},
	};
});
