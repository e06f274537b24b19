import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';
import { serve } from '../../src/site/server/index.ts';
import { browserFlags, findBrowser } from '../house/browser.ts';
import { built, sampled } from '../site/pages.ts';

const run = promisify(execFile);
const asked = ['performance', 'accessibility', 'best-practices', 'seo'] as const;

// Lighthouse's four marks out of 100 for every page of the built site (a sample of the lessons), printed. Performance is the machine's day as much as the page's,
// so it is printed and not held to; the other three are the page's own.
test('the built site, by Lighthouse', { timeout: 20 * 60_000 }, async () => {
	const folder = mkdtempSync(path.join(tmpdir(), 'prep-bay-lighthouse-'));
	const site = await serve(built);
	const table: Record<string, Record<string, number>> = {};
	try {
		for (const page of sampled.filter((it) => it.endsWith('/'))) {
			const report = path.join(folder, 'report.json');
			await run(
				process.execPath,
				[
					createRequire(import.meta.url).resolve('lighthouse/cli/index.js'),
					`${site.origin}${page}`,
					'--quiet',
					'--output=json',
					`--output-path=${report}`,
					`--only-categories=${asked.join(',')}`,
					`--chrome-flags=--headless=new ${browserFlags.join(' ')}`,
				],
				{ env: { ...process.env, CHROME_PATH: await findBrowser() }, cwd: folder },
			);
			const { categories } = JSON.parse(readFileSync(report, 'utf8')) as {
				categories: Record<string, { score: number }>;
			};
			table[page] = Object.fromEntries(asked.map((name) => [name, Math.round((categories[name]?.score ?? 0) * 100)]));
		}
	} finally {
		await site.close();
		rmSync(folder, { recursive: true, force: true });
	}
	console.table(table);
	for (const [page, marks] of Object.entries(table)) {
		for (const name of asked.slice(1)) expect(marks[name], `${name} of ${page}`).toBe(100);
	}
});
