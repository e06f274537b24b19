import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Engine, end, unwrapped, wrapped } from './engine.ts';

/** Asks a WebDriver (W3C): what it answers, or throws what it complains of. */
async function ask<T>(address: string, body?: object, method = body ? 'POST' : 'GET'): Promise<T> {
	const answer = await fetch(address, { method, ...(body && { body: JSON.stringify(body) }) });
	const { value } = (await answer.json()) as { value: T & { error?: string; message?: string } };
	if (!answer.ok) throw new Error(`${value.error}: ${value.message}`);
	return value;
}

/** Waits until the driver takes questions. */
async function untilReady(driver: string, tries = 120): Promise<void> {
	const isReady = await ask<{ ready: boolean }>(`${driver}/status`).then(
		({ ready }) => ready,
		() => false,
	);
	if (isReady) return;
	if (tries === 0) throw new Error(`No WebKit driver at ${driver}`);
	await new Promise((resolve) => setTimeout(resolve, 250));
	return untilReady(driver, tries - 1);
}

/**
 * The machine's own WebKit: its small browser, in a display of its own that nobody sees.
 * @param browser the small browser's program
 * @param port a free one, for its driver
 */
export async function openWebKit(browser: string, port: number): Promise<Engine> {
	const home = mkdtempSync(path.join(tmpdir(), 'prep-bay-webkit-'));
	const program = spawn('xvfb-run', ['--auto-servernum', 'WebKitWebDriver', `--port=${port}`], {
		detached: true,
		stdio: 'ignore',
		// what it keeps of one run is not for the next
		env: { ...process.env, HOME: home, XDG_DATA_HOME: home, XDG_CACHE_HOME: home, XDG_RUNTIME_DIR: home },
	});
	const driver = `http://127.0.0.1:${port}`;
	await untilReady(driver);
	const { sessionId, capabilities } = await ask<{ sessionId: string; capabilities: { browserVersion: string } }>(
		`${driver}/session`,
		{
			capabilities: {
				alwaysMatch: {
					'webkitgtk:browserOptions': { binary: browser, args: ['--automation'] },
					timeouts: { script: 120_000, pageLoad: 120_000 },
				},
			},
		},
	);
	const session = `${driver}/session/${sessionId}`;
	return {
		name: `WebKit ${capabilities.browserVersion}`,
		open: (url) => ask(`${session}/url`, { url }),
		run: async (body) =>
			unwrapped(await ask(`${session}/execute/async`, { script: `${wrapped(body)}.then(arguments[0])`, args: [] })),
		close: async () => {
			await ask(session, undefined, 'DELETE').catch(() => undefined);
			await end(program);
			rmSync(home, { recursive: true, force: true });
		},
	};
}
