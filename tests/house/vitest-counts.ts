import path from 'node:path';
import type { Reporter, SerializedError, TestModule } from 'vitest/node';
import { writeCounts } from './counts.ts';
import { root } from './tree.ts';

/** Leaves vitest's counts for tests/run.ts. A file that failed to load, and an error outside any test, each count as one failure. */
export default class VitestCounts implements Reporter {
	onTestRunEnd(modules: readonly TestModule[], unhandled: readonly SerializedError[]): void {
		let passed = 0;
		let failed = unhandled.length;
		let skipped = 0;
		const took: Record<string, number> = {};
		for (const module of modules) {
			let here = 0;
			took[path.relative(root, module.moduleId).split(path.sep).join('/')] =
				module.diagnostic().collectDuration + module.diagnostic().duration;
			for (const test of module.children.allTests()) {
				here++;
				const { state } = test.result();
				if (state === 'passed') passed++;
				else if (state === 'skipped') skipped++;
				else failed++;
			}
			const broken =
				module.errors().length + [...module.children.allSuites()].flatMap((suite) => suite.errors()).length;
			if (broken > 0 || (here === 0 && module.state() === 'failed')) failed++;
		}
		writeCounts('vitest', { passed, failed, skipped, took });
	}
}
