import { writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { createVitest, type Reporter, type TestCase, type TestModule, type TestSpecification } from 'vitest/node';

// Runs in a process of its own, in the copy: holds the tests ready, and tries them on one change after another. What hangs is killed with it.

/** What is asked: files to write, the tests to run in that order, and files to write back. */
export interface Ask {
	readonly put: Readonly<Record<string, string>>;
	readonly tests: readonly string[];
	readonly back: Readonly<Record<string, string>>;
}

export interface Reply {
	/** The first test that failed, or null where all passed. */
	readonly failed: string | null;
	/** Milliseconds each test file took, of those that ran to the end. */
	readonly took: Readonly<Record<string, number>>;
}

/** What this process says: which tests there are, once; that a file of tests has begun or ended; how an ask came out. */
export type Message =
	| { readonly tests: string[] }
	| { readonly begun: string }
	| { readonly ended: string }
	| { readonly reply: Reply };

const folder = process.cwd();

class Listener implements Reporter {
	failed: string | null = null;
	took: Record<string, number> = {};
	readonly #begun = new Map<string, number>();
	stop: () => void = () => {};

	#fail(what: string): void {
		if (this.failed !== null) return;
		this.failed = what;
		this.stop();
	}

	onTestModuleQueued(module: TestModule): void {
		const test = relative(module.moduleId);
		this.#begun.set(test, performance.now());
		// those after one that failed are only looked through
		if (this.failed !== null) return;
		process.send?.({ begun: test } satisfies Message);
	}

	onTestCaseResult(test: TestCase): void {
		if (test.result().state === 'failed') this.#fail(`${relative(test.module.moduleId)}: ${test.fullName}`);
	}

	onTestModuleEnd(module: TestModule): void {
		const test = relative(module.moduleId);
		process.send?.({ ended: test } satisfies Message);
		const broken = [...module.errors(), ...[...module.children.allSuites()].flatMap((suite) => suite.errors())];
		if (broken.length > 0) this.#fail(test);
		// what it imports included
		if (module.state() === 'passed') this.took[test] = performance.now() - (this.#begun.get(test) ?? 0);
	}

	onTestRunEnd(_: unknown, errors: readonly unknown[]): void {
		if (errors.length > 0) this.#fail('an error outside any test');
	}
}

const relative = (file: string): string => path.relative(folder, file).split(path.sep).join('/');

/** Test files as they were asked for: the nearest and quickest first. */
class InOrder {
	sort(specifications: readonly TestSpecification[]): readonly TestSpecification[] {
		return specifications;
	}

	shard(specifications: readonly TestSpecification[]): readonly TestSpecification[] {
		return specifications;
	}
}

const listener = new Listener();
const vitest = await createVitest(
	{
		root: folder,
		config: path.join(folder, 'tests/vitest.config.ts'),
		watch: false,
		reporters: [listener],
		// threads die with this process, whatever they are at; one after another, as they were asked for
		pool: 'threads',
		isolate: false,
		maxWorkers: Number(process.env['PREP_BAY_MUTATE_WORKERS'] ?? 2),
		sequence: { sequencer: InOrder as never },
	},
	{ cacheDir: path.join(folder, '.cache/vite'), server: { watch: null } },
);
listener.stop = () => void vitest.cancelCurrentRun('test-failure');

const all = new Map((await vitest.globTestSpecifications()).map((each) => [relative(each.moduleId), each]));

function write(files: Readonly<Record<string, string>>): void {
	for (const [file, text] of Object.entries(files)) {
		writeFileSync(path.join(folder, file), text);
		vitest.invalidateFile(path.join(folder, file));
	}
}

async function answer({ put, tests, back }: Ask): Promise<Reply> {
	listener.failed = null;
	listener.took = {};
	write(put);
	try {
		await vitest.runTestSpecifications(tests.flatMap((test) => all.get(test) ?? []));
	} finally {
		write(back);
	}
	return { failed: listener.failed, took: listener.took };
}

process.on('message', (ask: Ask) => {
	answer(ask).then(
		(reply) => process.send?.({ reply } satisfies Message),
		(error: unknown) => {
			console.error(error);
			process.exit(1);
		},
	);
});
process.on('disconnect', () => process.exit(0));
process.send?.({ tests: [...all.keys()] } satisfies Message);
