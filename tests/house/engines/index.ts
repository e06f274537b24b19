import { existsSync, readdirSync } from 'node:fs';
import { type BrowserType, firefox, webkit } from '@playwright/test';
import type { Engine } from './engine.ts';
import { openFirefox } from './firefox.ts';
import { openWebKit } from './webkit.ts';

export type { Engine } from './engine.ts';

/** Engines beside Chromium; `open` is null where the machine has none. */
interface OtherEngine {
	readonly family: 'Firefox' | 'WebKit';
	readonly open: (() => Promise<Engine>) | null;
}

const first = (files: readonly string[]): string | undefined => files.find((file) => existsSync(file));

/** Playwright's own build of an engine. */
async function openOwn(type: BrowserType, family: string): Promise<Engine> {
	const browser = await type.launch();
	const page = await browser.newPage();
	return {
		name: `${family} ${browser.version()} (Playwright’s)`,
		open: async (address) => void (await page.goto(address)),
		run: (body) => page.evaluate(`(async () => { ${body} })()`),
		close: () => browser.close(),
	};
}

const hasOwn = (type: BrowserType): boolean => existsSync(type.executablePath());

function firefoxHere(): OtherEngine['open'] {
	if (hasOwn(firefox)) return () => openOwn(firefox, 'Firefox');
	const program = first([
		'/usr/bin/firefox-esr',
		'/usr/bin/firefox',
		'/Applications/Firefox.app/Contents/MacOS/firefox',
		'C:\\Program Files\\Mozilla Firefox\\firefox.exe',
	]);
	return program === undefined ? null : () => openFirefox(program);
}

function webkitHere(): OtherEngine['open'] {
	if (hasOwn(webkit)) return () => openOwn(webkit, 'WebKit');
	if (!existsSync('/usr/bin/WebKitWebDriver') || !existsSync('/usr/bin/xvfb-run')) return null;
	// Debian keeps the small browser beside the library, by kind of machine
	const libraries = readdirSync('/usr/lib').flatMap((folder) =>
		['webkit2gtk-4.1', 'webkit2gtk-4.0', 'webkitgtk-6.0'].map((kind) => `/usr/lib/${folder}/${kind}/MiniBrowser`),
	);
	const browser = first(libraries);
	return browser === undefined ? null : () => openWebKit(browser, Number(process.env['PREP_BAY_PORT'] ?? 4331) + 100);
}

/** The engines beside Chromium, as far as they are here: Playwright's own, else the machine's. */
export const otherEngines: readonly OtherEngine[] = [
	{ family: 'Firefox', open: firefoxHere() },
	{ family: 'WebKit', open: webkitHere() },
];
