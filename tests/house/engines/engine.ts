import type { ChildProcess } from 'node:child_process';

/** A browser as these tests drive it: by scripts in the page, which every way of driving one can do. */
export interface Engine {
	/** What it is, with its version. */
	readonly name: string;
	/** Opens an address, and waits until it is loaded. */
	open(address: string): Promise<void>;
	/** Runs the body of an async function in the page, and gives back what it returns, as JSON carries it. */
	run(body: string): Promise<unknown>;
	close(): Promise<void>;
}

/** A page's script as one that both protocols can send: what it returns or throws comes back as text. */
export const wrapped = (body: string): string =>
	`(async () => { ${body} })().then((value) => JSON.stringify({ value }), (error) => JSON.stringify({ error: String(error) }))`;

/**
 * What came back of such a script.
 * @throws Error with what the page threw
 */
export function unwrapped(text: unknown): unknown {
	const { value, error } = JSON.parse(String(text)) as { value?: unknown; error?: string };
	if (error !== undefined) throw new Error(`In the page: ${error}`);
	return value;
}

/** Waits until a program says something that fits, on either of its outputs; gives back the match. */
export function said(program: ChildProcess, pattern: RegExp, withinMs = 60_000): Promise<RegExpExecArray> {
	return new Promise((resolve, reject) => {
		let all = '';
		const timer = setTimeout(() => reject(new Error(`It never said ${pattern}: ${all}`)), withinMs);
		const hear = (chunk: Buffer) => {
			all += chunk;
			const match = pattern.exec(all);
			if (!match) return;
			clearTimeout(timer);
			resolve(match);
		};
		program.stdout?.on('data', hear);
		program.stderr?.on('data', hear);
		program.once('exit', (code) => {
			clearTimeout(timer);
			reject(new Error(`It ended with ${code}: ${all}`));
		});
	});
}

/** Ends a program and what it started: it was started as the head of a group of its own. */
export function end(program: ChildProcess): Promise<void> {
	return new Promise((resolve) => {
		if (program.exitCode !== null || program.pid === undefined) return resolve();
		program.once('exit', () => resolve());
		try {
			process.kill(-program.pid, 'SIGKILL');
		} catch {
			resolve();
		}
	});
}
