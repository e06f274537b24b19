import { type ChildProcess, fork } from 'node:child_process';
import { cpSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { root } from '../house/tree.ts';
import type { Ask, Message, Reply } from './bench.ts';

/** A test that says nothing for so long hangs, milliseconds: a test of ours may take one minute. */
const SILENCE = 100_000;

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

/** Tests held ready on a copy of the tree: nothing is ever written in the tree itself. */
export interface Warm {
	/** Every test file there is. */
	readonly tests: readonly string[];
	/** Tries the tests on a change; null where they hung, or took longer than `most` milliseconds, and had to be killed. */
	ask(ask: Ask, most: number): Promise<Reply | null>;
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
			if (!reply) {
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

function asked(child: ChildProcess, ask: Ask, most: number): Promise<Reply | null> {
	return new Promise((resolve) => {
		const end = (reply: Reply | null): void => {
			clearTimeout(timer);
			clearTimeout(whole);
			child.off('message', hear).off('exit', gone);
			resolve(reply);
		};
		const late = () => end(null);
		const gone = () => end(null);
		const whole = setTimeout(late, most);
		let timer = setTimeout(late, SILENCE);
		const hear = (message: Message): void => {
			clearTimeout(timer);
			if ('reply' in message) end(message.reply);
			else timer = setTimeout(late, SILENCE);
		};
		child.on('message', hear).on('exit', gone);
		child.send(ask);
	});
}
