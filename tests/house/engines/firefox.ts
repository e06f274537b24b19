import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Engine, end, said, unwrapped, wrapped } from './engine.ts';

/** Messages to and from a browser, by WebDriver BiDi (W3C): each command has a number that its answer carries. */
async function connect(address: string) {
	const socket = new WebSocket(address);
	await new Promise((resolve, reject) => {
		socket.addEventListener('open', resolve, { once: true });
		socket.addEventListener('error', () => reject(new Error(`No way in at ${address}`)), { once: true });
	});
	const waiting = new Map<number, { resolve(result: unknown): void; reject(error: Error): void }>();
	socket.addEventListener('message', ({ data }) => {
		const { id, type, result, error, message } = JSON.parse(String(data));
		if (type === 'success') waiting.get(id)?.resolve(result);
		if (type === 'error') waiting.get(id)?.reject(new Error(`${error}: ${message}`));
	});
	let last = 0;
	const send = <T>(method: string, params: object): Promise<T> =>
		new Promise((resolve, reject) => {
			waiting.set(++last, { resolve: resolve as (result: unknown) => void, reject });
			socket.send(JSON.stringify({ id: last, method, params }));
		});
	return { send, close: () => socket.close() };
}

/**
 * What Firefox (140) says where an answer to a page got lost. It came once in a full run, and in none of some 260 tries made to bring it
 * about: there a refused answer went to the network, and one that broke off had an error of its own. A person would press Try Again.
 */
const OWN_FAULT = 'NS_ERROR_INTERCEPTION_FAILED';

/** The machine's own Firefox, with no window and a profile of its own. */
export async function openFirefox(program: string): Promise<Engine> {
	const profile = mkdtempSync(path.join(tmpdir(), 'prep-bay-firefox-'));
	const browser = spawn(program, ['--headless', '--no-remote', '--profile', profile, '--remote-debugging-port', '0'], {
		detached: true,
		stdio: ['ignore', 'pipe', 'pipe'],
		// as root it wants a home of root's own
		env: { ...process.env, HOME: profile, MOZ_CRASHREPORTER_DISABLE: '1' },
	});
	const [, address = ''] = await said(browser, /WebDriver BiDi listening on (ws:\S+)/);
	const { send, close } = await connect(`${address}/session`);
	const { capabilities } = await send<{ capabilities: { browserName: string; browserVersion: string } }>(
		'session.new',
		{
			capabilities: {},
		},
	);
	const { contexts } = await send<{ contexts: readonly { context: string }[] }>('browsingContext.getTree', {});
	const context = contexts[0]?.context ?? '';
	return {
		name: `Firefox ${capabilities.browserVersion}`,
		open: async (url) => {
			const go = () => send('browsingContext.navigate', { context, url, wait: 'complete' });
			await go().catch((error: Error) => {
				if (!error.message.includes(OWN_FAULT)) throw error;
				console.log(`engines: Firefox failed by itself to open ${url} (${OWN_FAULT}); tried once more`);
				return go();
			});
		},
		run: async (body) => {
			const { result } = await send<{ result?: { value: unknown } }>('script.evaluate', {
				expression: wrapped(body),
				target: { context },
				awaitPromise: true,
			});
			return unwrapped(result?.value);
		},
		close: async () => {
			close();
			await end(browser);
			rmSync(profile, { recursive: true, force: true });
		},
	};
}
