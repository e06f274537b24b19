import path from 'node:path';
import type { FullResult, Reporter, Suite, TestError } from '@playwright/test/reporter';
import { writeCounts } from './counts.ts';
import { root } from './tree.ts';

/** Leaves Playwright's counts for tests/run.ts. An error outside any test (a spec that failed to load) counts as one failure. */
export default class PlaywrightCounts implements Reporter {
	#suite: Suite | undefined;
	#outside = 0;

	onBegin(_config: unknown, suite: Suite): void {
		this.#suite = suite;
	}

	onError(_error: TestError): void {
		this.#outside++;
	}

	onEnd(result: FullResult): void {
		const tests = this.#suite?.allTests() ?? [];
		const passed = tests.filter((test) => test.outcome() === 'expected').length;
		const skipped = tests.filter((test) => test.outcome() === 'skipped').length;
		// a flaky test is a failing test that was lucky once
		const failed = tests.length - passed - skipped + this.#outside;
		const took: Record<string, number> = {};
		for (const { location, results } of tests) {
			const file = path.relative(root, location.file).split(path.sep).join('/');
			took[file] = results.reduce((sum, { duration }) => sum + duration, took[file] ?? 0);
		}
		const bad = failed === 0 && result.status !== 'passed' ? 1 : failed;
		writeCounts('playwright', { passed, failed: bad, skipped, took });
	}

	printsToStdio(): boolean {
		return false;
	}
}
