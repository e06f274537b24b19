import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { browserFlags, findBrowser } from './house/browser.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const port = Number(process.env['PREP_BAY_PORT'] ?? 4331);

// the workers read this file again: they must all find the same browser
process.env['PREP_BAY_BROWSER'] = await findBrowser();

export default defineConfig({
	testDir: fileURLToPath(new URL('.', import.meta.url)),
	testMatch: '**/*.spec.ts',
	globalSetup: fileURLToPath(new URL('./site/versions.ts', import.meta.url)),
	outputDir: fileURLToPath(new URL('.out/playwright/', import.meta.url)),
	fullyParallel: true,
	forbidOnly: true,
	retries: 0,
	workers: 2,
	timeout: 90_000,
	expect: { timeout: 15_000 },
	reporter: [['list'], [fileURLToPath(new URL('./house/playwright-counts.ts', import.meta.url))]],
	use: {
		baseURL: `http://127.0.0.1:${port}`,
		launchOptions: { executablePath: process.env['PREP_BAY_BROWSER'], args: [...browserFlags] },
		// to record every test costs more than many of them do: run the one that failed again with `--trace on`
		trace: 'off',
		screenshot: 'only-on-failure',
	},
	webServer: {
		command: `node src/site/server/start.ts dist ${port}`,
		cwd: root,
		url: `http://127.0.0.1:${port}/`,
		reuseExistingServer: false,
	},
});
