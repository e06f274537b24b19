import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';

/** Flags under which each of the browsers below runs as root, in a container, and sends nothing of its own accord. */
export const browserFlags: readonly string[] = [
	'--no-sandbox',
	'--disable-gpu',
	'--disable-dev-shm-usage',
	'--disable-quic',
	'--no-first-run',
	'--disable-background-networking',
	'--disable-component-update',
	'--disable-sync',
];

const systemBrowsers: readonly string[] = [
	'/usr/bin/chromium',
	'/usr/bin/chromium-browser',
	'/usr/bin/google-chrome',
	'/Applications/Chromium.app/Contents/MacOS/Chromium',
	'/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
	'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/**
 * A path to a Chromium to test with: the one named by PREP_BAY_BROWSER, else Playwright's own, else the machine's,
 * else the packaged one, unpacked on first use. PREP_BAY_BROWSER=packaged asks for that last one.
 */
export async function findBrowser(): Promise<string> {
	const asked = process.env['PREP_BAY_BROWSER'];
	if (asked === 'packaged') return packagedBrowser();
	if (asked) return asked;
	for (const at of [chromium.executablePath(), ...systemBrowsers]) if (existsSync(at)) return at;
	return packagedBrowser();
}

async function packagedBrowser(): Promise<string> {
	// it reuses whatever it finds unpacked, whichever version that is: so a folder for each version
	const about = new URL('../../node_modules/@sparticuz/chromium/package.json', import.meta.url);
	const { version } = JSON.parse(readFileSync(fileURLToPath(about), 'utf8')) as { version: string };
	const folder = path.join(tmpdir(), `prep-bay-chromium-${version}`);
	mkdirSync(folder, { recursive: true });
	const before = process.env['TMPDIR'];
	process.env['TMPDIR'] = folder;
	// without this it looks for the machine's own security libraries, which a bare machine lacks
	process.env['AWS_EXECUTION_ENV'] ??= 'AWS_Lambda_nodejs24.x';
	process.env['FONTCONFIG_FILE'] ??= fontsIn(folder);
	try {
		const { default: packaged } = await import('@sparticuz/chromium');
		return await packaged.executablePath();
	} finally {
		if (before === undefined) delete process.env['TMPDIR'];
		else process.env['TMPDIR'] = before;
	}
}

/**
 * Where its typeface is, for the packaged browser: its own list of folders takes it for unpacked in /tmp itself, and with no typeface at all it
 * dies at the first file box.
 */
function fontsIn(folder: string): string {
	const file = path.join(folder, 'fonts.conf');
	const dirs = [path.join(folder, 'fonts'), '/usr/share/fonts'].map((dir) => `<dir>${dir}</dir>`).join('');
	writeFileSync(
		file,
		`<?xml version="1.0"?><fontconfig>${dirs}<cachedir>${folder}/fonts-cache</cachedir></fontconfig>\n`,
	);
	return file;
}
