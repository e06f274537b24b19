import { type ChildProcess, fork } from 'node:child_process';
import { cpSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { root } from '../house/tree.ts';
import type { Ask, Message, Reply } from './bench.ts';

/** Milliseconds within which the first test file must have begun, and from one to the next. */
const BETWEEN = 120_000;

const COPIED = [
	'shared',
	'sim',
	'content',
	'src',
	'tests',
	'package.json',
	'tsconfig.json',
	'astro.config.mjs',
] as const;

/** Tests that had to be killed: the file that ran too long, or null where none was at work. */
export interface Late {
	readonly late: string | null;
}

/** Tests held ready on a copy of the tree: nothing is ever written in the tree itself. */
export interface Warm {
	/** Every test file there is. */
	readonly tests: readonly string[];
	/**
	 * Tries the tests on a change. Where a test file takes longer than its most, or the process dies, it is killed and started anew.
	 * @param most milliseconds a test file may take
	 */
	ask(ask: Ask, most: (test: string) => number): Promise<Reply | Late>;
	close(): void;
}

/** Copies the tree, and starts the tests' process in the copy. */
export async function openWarm(): Promise<Warm> {
	const folder = realpathSync(mkdtempSync(path.join(tmpdir(), 'prep-bay-mutate-')));
	for (const each of COPIED)
		cpSync(path.join(root, each), path.join(folder, each), {
			recursive: true,
			filter: (from) => !from.includes('.out'),
		});
	symlinkSync(path.join(root, 'node_modules'), path.join(folder, 'node_modules'), 'junction');
	let running = await start(folder);
	const close = (): void => {
		running.child.kill('SIGKILL');
		rmSync(folder, { recursive: true, force: true });
	};
	process.once('exit', close);
	for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => process.exit(1));
	return {
		tests: running.tests,
		async ask(ask, most) {
			const reply = await asked(running.child, ask, most);
			if ('late' in reply) {
				running.child.kill('SIGKILL');
				for (const [file, text] of Object.entries(ask.back)) writeFileSync(path.join(folder, file), text);
				running = await start(folder);
			}
			return reply;
		},
		close,
	};
}

interface Running {
	readonly child: ChildProcess;
	readonly tests: readonly string[];
}

function start(folder: string): Promise<Running> {
	const child = fork(path.join(folder, 'tests/mutate/bench.ts'), {
		cwd: folder,
		stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
	});
	return new Promise((resolve, reject) => {
		child.once('message', (message: Message) => {
			if ('tests' in message) resolve({ child, tests: message.tests });
		});
		child.once('exit', (code) => reject(new Error(`the tests' process ended at its start (${code})`)));
	});
}

function asked(child: ChildProcess, ask: Ask, most: (test: string) => number): Promise<Reply | Late> {
	return new Promise((resolve) => {
		const timers = new Map<string | null, NodeJS.Timeout>();
		const watch = (test: string | null, milliseconds: number): void => {
			timers.set(
				test,
				setTimeout(() => end({ late: test }), milliseconds),
			);
		};
		const unwatch = (test: string | null): void => {
			clearTimeout(timers.get(test));
			timers.delete(test);
		};
		const end = (reply: Reply | Late): void => {
			for (const test of [...timers.keys()]) unwatch(test);
			child.off('message', hear).off('exit', gone);
			resolve(reply);
		};
		const gone = () => end({ late: null });
		const hear = (message: Message): void => {
			unwatch(null);
			if ('reply' in message) {
				end(message.reply);
				return;
			}
			if ('ended' in message) unwatch(message.ended);
			if ('begun' in message) watch(message.begun, most(message.begun));
			if (timers.size === 0) watch(null, BETWEEN);
		};
		child.on('message', hear).on('exit', gone);
		watch(null, BETWEEN);
		child.send(ask);
	});
}
