import type { AsksOf, GivesOf, RouteName, StageOf } from './routes.ts';
import type { FromWorker, ToWorker } from './serve.ts';

/** What the worker refuses as nonsense, with its sentence. */
export class Refused extends Error {
	override readonly name = 'Refused';
	readonly code: string;

	constructor(code: string, sentence: string) {
		super(sentence);
		this.code = code;
	}
}

/** The worker, or a part of it, could not be fetched or run at all. Asked again, it is started anew. */
export class CannotRun extends Error {
	override readonly name = 'CannotRun';
}

/** A question was ended before it was answered: stopped by whoever asked, or over its time. */
export class Ended extends Error {
	override readonly name = 'Ended';
	readonly because: 'stopped' | 'slow';

	constructor(because: Ended['because']) {
		super(because);
		this.because = because;
	}
}

interface How<Stage> {
	/** Told what the other end is at. */
	readonly onStage?: ((stage: Stage | 'fetching') => void) | undefined;
	/** Ends the question. */
	readonly signal?: AbortSignal | undefined;
	/** Milliseconds from now after which it is ended. */
	readonly within?: number;
	/** Things to be handed over rather than copied: such a question is not asked again of a fresh worker. */
	readonly hand?: Transferable[];
}

/** Asks a route. @throws Refused, CannotRun, Ended, or an Error where the worker broke down over it */
export type AskRoute = <R extends RouteName>(route: R, asks: AsksOf<R>, how?: How<StageOf<R>>) => Promise<GivesOf<R>>;

export interface Engine {
	readonly ask: AskRoute;
	/** Ends the worker, whatever it is at. What still waits is told that it was stopped; the next question starts it anew. */
	end(): void;
}

type WorkerPort = Pick<Worker, 'postMessage' | 'addEventListener' | 'terminate'>;

interface Question {
	readonly message: Extract<ToWorker, { readonly route: string }>;
	readonly hand: Transferable[] | undefined;
	stage(stage: string): void;
	give(result: unknown): void;
	fail(error: Error): void;
}

/** What can become of a question. */
interface Fate {
	give(result: unknown): void;
	fail(error: Error): void;
	end(because: Ended['because']): void;
}

/** A question with its clock and its signal, which are let go once something has become of it. */
function questionOf(
	message: Question['message'],
	{ onStage, signal, within, hand }: How<string>,
	{ give, fail, end }: Fate,
): Question {
	const stop = (): void => end('stopped');
	const timer = within === undefined ? undefined : setTimeout(() => end('slow'), within);
	signal?.addEventListener('abort', stop);
	const over = (): void => {
		clearTimeout(timer);
		signal?.removeEventListener('abort', stop);
	};
	return {
		message,
		hand,
		stage: (stage) => onStage?.(stage),
		give(result) {
			over();
			give(result);
		},
		fail(error) {
			over();
			fail(error);
		},
	};
}

const startWorker = (): WorkerPort => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });

const take = (waiting: Map<number, Question>, id: number): Question | undefined => {
	const question = waiting.get(id);
	waiting.delete(id);
	return question;
};

/** Brings what came from the worker to the question it is about. @returns false where the worker could not fetch a part of itself */
function deliver(data: FromWorker, waiting: Map<number, Question>): boolean {
	if ('stage' in data) waiting.get(data.id)?.stage(data.stage);
	else if ('result' in data) take(waiting, data.id)?.give(data.result);
	else if ('refused' in data) take(waiting, data.id)?.fail(new Refused(data.refused.code, data.refused.sentence));
	else take(waiting, data.id)?.fail(data.isUnfetched ? new CannotRun() : new Error(data.broke));
	return !('isUnfetched' in data && data.isUnfetched);
}

/** A worker of a page's own, started with the first question. */
export function openEngine(start: () => WorkerPort = startWorker): Engine {
	let port: WorkerPort | null = null;
	let last = 0;
	/** In the order asked: the first is the one at work. */
	const waiting = new Map<number, Question>();

	const hear = ({ data }: MessageEvent<FromWorker>): void => {
		// a browser may not try again in a worker to fetch what failed there once
		if (!deliver(data, waiting)) beginAnew();
	};
	const close = (): void => {
		port?.terminate();
		port = null;
	};
	const failAll = (error: () => Error): void => {
		close();
		for (const id of [...waiting.keys()]) take(waiting, id)?.fail(error());
	};
	const opened = (): WorkerPort => {
		const fresh = start();
		fresh.addEventListener('message', ((event: MessageEvent<FromWorker>) => {
			if (port === fresh) hear(event);
		}) as EventListener);
		fresh.addEventListener('error', () => {
			if (port === fresh) failAll(() => new CannotRun());
		});
		return fresh;
	};
	const send = ({ message, hand }: Question): void => {
		port ??= opened();
		port.postMessage(message, hand ?? []);
	};
	/** Ends the worker, and asks what still waits of a fresh one. */
	const beginAnew = (): void => {
		close();
		for (const [id, question] of [...waiting]) {
			try {
				if (question.hand) throw new CannotRun();
				send(question);
			} catch {
				take(waiting, id)?.fail(new CannotRun());
			}
		}
	};
	const endOne = (id: number, because: Ended['because']): void => {
		const isAtWork = waiting.keys().next().value === id;
		take(waiting, id)?.fail(new Ended(because));
		// what is at work hears nothing until it is done
		if (isAtWork) beginAnew();
		else port?.postMessage({ id, cancelled: true } satisfies ToWorker);
	};

	const ask: AskRoute = (route, asks, how = {}) =>
		new Promise((resolve, reject) => {
			if (how.signal?.aborted) {
				reject(new Ended('stopped'));
				return;
			}
			const id = ++last;
			const question = questionOf({ id, route, asks }, how as How<string>, {
				give: (result) => resolve(result as Awaited<ReturnType<typeof ask>> as never),
				fail: reject,
				end: (because) => endOne(id, because),
			});
			waiting.set(id, question);
			how.onStage?.('fetching');
			try {
				send(question);
			} catch {
				take(waiting, id)?.fail(new CannotRun());
			}
		});
	return { ask, end: () => failAll(() => new Ended('stopped')) };
}

/** What went wrong with a question, as a sentence to act on: the worker's own where it refused, else one of those handed in. */
export function troubleText(error: unknown, words: { readonly noWorker: string; readonly broke: string }): string {
	if (error instanceof Refused) return error.message;
	return error instanceof CannotRun ? words.noWorker : words.broke;
}
