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
	return {
		root,
		// what is measured is what ships
		define: speed ? { SHIPPED: 'true' } : {},
		test: {
			include: speed
				? ['tests/speed/**/*.speed.ts']
				: ['tests/**/*.test.{ts,tsx}', ...(soak ? ['tests/**/*.soak.ts'] : [])],
			env: { PREP_BAY_SOAK: soak ? '1' : '' },
			setupFiles: [fileURLToPath(new URL('./house/seed.ts', import.meta.url))],
			testTimeout: soak ? 60 * minute : speed ? 10 * minute : minute,
			hookTimeout: minute,
			fileParallelism: !speed,
			// but for figures, modules are read once a process and not once a file: half of the time. A file that puts another in place takes it away after
			isolate: speed,
			passWithNoTests: speed || soak,
			reporters: ['default', fileURLToPath(new URL('./house/vitest-counts.ts', import.meta.url))],
			coverage: { provider: 'v8', include: ['shared/**', 'sim/**'], reportsDirectory: 'tests/.out/coverage' },
		},
	};
});
