import { expect, test } from 'vitest';
import { fetched, InputError } from '../../../shared/error/index.ts';
import { type AskRoute, CannotRun, Ended, openEngine, Refused, troubleText } from '../../../src/engine/index.ts';
import { type EnginePort, type Feature, type FromWorker, serve, type ToWorker } from '../../../src/engine/serve.ts';
import { errorText } from '../../../src/wording/index.ts';

/** An engine whose workers run here: everything that crosses is cloned, as a real port does it. */
function engineOn(features: Readonly<Record<string, () => Promise<Feature>>>) {
	const workers: { isEnded: boolean; breakDown(): void }[] = [];
	const { ask, end } = openEngine(() => {
		const heard: Record<'there' | 'here' | 'error', ((event: never) => void)[]> = { there: [], here: [], error: [] };
		const worker = { isEnded: false, breakDown: () => tell('error', {}) };
		const tell = (to: keyof typeof heard, data: unknown): void => {
			const event = { data: structuredClone(data) };
			queueMicrotask(() => {
				if (!worker.isEnded) for (const hear of heard[to]) hear(event as never);
			});
		};
		workers.push(worker);
		const there: EnginePort = {
			postMessage: (message: FromWorker) => tell('here', message),
			addEventListener: (_, hear) => heard.there.push(hear as never),
		};
		serve(there, features);
		return {
			postMessage: (message: ToWorker) => tell('there', message),
			addEventListener: (type: string, hear: unknown) => heard[type === 'error' ? 'error' : 'here'].push(hear as never),
			terminate() {
				worker.isEnded = true;
			},
		} as Pick<Worker, 'postMessage' | 'addEventListener' | 'terminate'>;
	});
	// routes of this test's own
	return {
		ask: ask as (route: string, asks: unknown, how?: Parameters<AskRoute>[2]) => Promise<unknown>,
		end,
		workers,
	};
}

const never = new Promise<never>(() => undefined);
const turn = (ms = 20) => new Promise((resolve) => setTimeout(resolve, ms));
const sums = (routes: object, ahead?: Feature['ahead']) => ({
	sums: async (): Promise<Feature> => ({ routes, ...(ahead ? { ahead } : {}) }),
});
const double = ({ n }: { n: number }) => ({ n: 2 * n });

test('a question tells its stages and ends in its result; they are answered in the order asked', async () => {
	const order: string[] = [];
	const { ask, workers } = engineOn(
		sums({
			async slow(asks: { n: number }, tell: (stage: string) => void) {
				tell('adding');
				await turn();
				order.push('slow');
				return double(asks);
			},
			quick(asks: { n: number }) {
				order.push('quick');
				return double(asks);
			},
		}),
	);
	const stages: string[] = [];
	const both = [ask('sums.slow', { n: 2 }, { onStage: (stage) => stages.push(stage) }), ask('sums.quick', { n: 3 })];
	expect(await Promise.all(both)).toEqual([{ n: 4 }, { n: 6 }]);
	expect(stages).toEqual(['fetching', 'adding']);
	expect(order).toEqual(['slow', 'quick']);
	expect(workers).toHaveLength(1);
});

const words = { noWorker: 'Check the network.', broke: 'Load the page again.' };

test('nonsense comes back with its code and sentence, a bug as broken; the worker goes on', async () => {
	const { ask, workers } = engineOn(
		sums({
			double,
			odd() {
				throw new InputError('sheet.text', '', { trouble: 'empty' });
			},
			bug() {
				throw new TypeError('no such thing');
			},
		}),
	);
	const refused = await ask('sums.odd', {}).catch((error: unknown) => error);
	expect(refused).toBeInstanceOf(Refused);
	expect(refused).toMatchObject({ code: 'sheet.text' });
	expect(troubleText(refused, words)).toBe(errorText(new InputError('sheet.text', '', { trouble: 'empty' })));
	const broken = await ask('sums.bug', {}).catch((error: unknown) => error);
	expect(troubleText(broken, words)).toBe('Load the page again.');
	await expect(ask('nothing.here', {})).rejects.toThrow(/no route/);
	expect(await ask('sums.double', { n: 2 })).toEqual({ n: 4 });
	expect(workers).toHaveLength(1);
});

// symptom: a finder opened with no network stayed dead once the network was back.
// cause: a browser need not fetch again in the same worker what failed there once
test('what could not be fetched is said, and asked again it is fetched by a fresh worker', async () => {
	let isUp = false;
	const come = () => (isUp ? Promise.resolve() : Promise.reject(new TypeError('no network')));
	const { ask, workers } = engineOn({
		async sums() {
			await come();
			return { routes: { double } };
		},
		async parts() {
			return { routes: { late: () => fetched(come()), early: () => 'early' } };
		},
	});
	for (const route of ['sums.double', 'parts.late']) {
		isUp = false;
		const [failed, other] = await Promise.allSettled([ask(route, { n: 2 }), ask('parts.early', {})]);
		expect(failed).toMatchObject({ status: 'rejected', reason: expect.any(CannotRun) });
		expect(troubleText((failed as PromiseRejectedResult).reason, words)).toBe('Check the network.');
		// what waited behind it is asked of the fresh worker
		expect(other).toEqual({ status: 'fulfilled', value: 'early' });
		isUp = true;
		await ask(route, { n: 2 });
	}
	expect(workers.map(({ isEnded }) => isEnded)).toEqual([true, true, false]);
});

test('one that is cancelled while it waits is never begun; one at work is ended, and the rest asked anew', async () => {
	const begun: string[] = [];
	const { ask, workers } = engineOn(
		sums({
			hang() {
				begun.push('hang');
				return never;
			},
			mark({ as }: { as: string }) {
				begun.push(as);
				return as;
			},
		}),
	);
	const [hanging, unwanted] = [new AbortController(), new AbortController()];
	const asked = Promise.allSettled([
		ask('sums.hang', {}, { signal: hanging.signal }),
		ask('sums.mark', { as: 'unwanted' }, { signal: unwanted.signal }),
		ask('sums.mark', { as: 'wanted' }),
	]);
	await turn();
	unwanted.abort();
	hanging.abort();
	const [one, two, three] = await asked;
	for (const each of [one, two]) {
		expect(each).toMatchObject({ status: 'rejected', reason: expect.any(Ended) });
		expect((each as PromiseRejectedResult).reason).toMatchObject({ because: 'stopped' });
	}
	expect(three).toEqual({ status: 'fulfilled', value: 'wanted' });
	expect(begun).toEqual(['hang', 'wanted']);
	expect(workers.map(({ isEnded }) => isEnded)).toEqual([true, false]);
	await expect(ask('sums.mark', { as: 'late' }, { signal: AbortSignal.abort() })).rejects.toThrow(Ended);
});

test('a cancelled one behind others is passed over by the worker itself', async () => {
	const begun: string[] = [];
	const { ask, workers } = engineOn(
		sums({
			async mark({ as }: { as: string }) {
				begun.push(as);
				await turn();
			},
		}),
	);
	const unwanted = new AbortController();
	const asked = Promise.allSettled([
		ask('sums.mark', { as: 'one' }),
		ask('sums.mark', { as: 'two' }, { signal: unwanted.signal }),
		ask('sums.mark', { as: 'three' }),
	]);
	unwanted.abort();
	await asked;
	expect(begun).toEqual(['one', 'three']);
	expect(workers).toHaveLength(1);
});

test('one over its time is ended as slow', async () => {
	const { ask, workers } = engineOn(sums({ hang: () => never, double }));
	await expect(ask('sums.hang', {}, { within: 30 })).rejects.toMatchObject({ because: 'slow' });
	expect(await ask('sums.double', { n: 1 }, { within: 5000 })).toEqual({ n: 2 });
	expect(workers.map(({ isEnded }) => isEnded)).toEqual([true, false]);
});

test('a worker that breaks down fails all that wait, and the next question starts it again', async () => {
	const { ask, end, workers } = engineOn(sums({ hang: () => never, double }));
	const both = Promise.allSettled([ask('sums.hang', {}), ask('sums.double', { n: 1 })]);
	await turn();
	workers[0]?.breakDown();
	for (const each of await both) expect(each).toMatchObject({ status: 'rejected', reason: expect.any(CannotRun) });
	expect(await ask('sums.double', { n: 4 })).toEqual({ n: 8 });
	const last = ask('sums.hang', {});
	await turn();
	end();
	await expect(last).rejects.toThrow(Ended);
	expect(await ask('sums.double', { n: 4 })).toEqual({ n: 8 });
	expect(workers.map(({ isEnded }) => isEnded)).toEqual([true, true, false]);
});

test('where no worker can be started there is a sentence', async () => {
	const { ask } = openEngine(() => {
		throw new DOMException('no workers here');
	});
	const failed = await ask('papers.removeAll', null).catch((error: unknown) => error);
	expect(troubleText(failed, words)).toBe('Check the network.');
});

test('what can be worked out ahead is, piece by piece, until something is asked', async () => {
	const done: number[] = [];
	let pieces = [1, 2, 3, 4];
	const { ask } = engineOn(
		sums({ double }, () => {
			const handed = pieces;
			pieces = [];
			return handed.map((piece) => () => void done.push(piece));
		}),
	);
	await ask('sums.double', { n: 1 });
	await turn(60);
	expect(done).toEqual([1, 2, 3, 4]);
	pieces = Array.from({ length: 1000 }, (_, i) => i);
	await ask('sums.double', { n: 1 });
	await ask('sums.double', { n: 1 });
	const then = done.length;
	await turn(60);
	expect(then).toBeLessThan(1004);
	expect(done).toHaveLength(then);
});
