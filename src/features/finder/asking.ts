import type { AskName, Asks, FromWorker, Stage, ToWorker } from './protocol.ts';

/** What the worker refuses as nonsense, with its sentence. */
export class Refused extends Error {
	override readonly name = 'Refused';
	readonly code: string;

	constructor(code: string, sentence: string) {
		super(sentence);
		this.code = code;
	}
}

/** The worker, or a part of it, could not be fetched or run at all. */
export class NoWorker extends Error {
	override readonly name = 'NoWorker';
}

/** Asks, and hears on the way what the other end is at. */
export type Ask = <N extends AskName>(
	ask: N,
	asks: Asks[N]['asks'],
	onStage?: (stage: Stage) => void,
) => Promise<Asks[N]['gives']>;

type Port = Pick<Worker, 'postMessage' | 'addEventListener'>;

/** Questions to a worker, which is started with the first of them. */
export function askWorker(start: () => Port): Ask {
	let port: Port | null = null;
	let last = 0;
	const waiting = new Map<
		number,
		{ onStage: ((stage: Stage) => void) | undefined; give(gives: unknown): void; fail(error: Error): void }
	>();
	const hear = ({ data }: MessageEvent<FromWorker>): void => {
		const asked = waiting.get(data.id);
		if (!asked) return;
		if ('stage' in data) {
			asked.onStage?.(data.stage);
			return;
		}
		waiting.delete(data.id);
		if ('gives' in data) asked.give(data.gives);
		else if ('refused' in data) asked.fail(new Refused(data.refused.code, data.refused.sentence));
		else asked.fail(data.isUnfetched ? new NoWorker() : new Error(data.broke));
	};
	const open = (): Port => {
		const opened = start();
		opened.addEventListener('message', hear as EventListener);
		opened.addEventListener('error', () => {
			port = null;
			for (const { fail } of waiting.values()) fail(new NoWorker());
			waiting.clear();
		});
		return opened;
	};
	return (ask, asks, onStage) =>
		new Promise((resolve, reject) => {
			const id = ++last;
			waiting.set(id, { onStage, give: resolve as (gives: unknown) => void, fail: reject });
			try {
				port ??= open();
				onStage?.('fetching');
				port.postMessage({ id, ask, with: asks } as ToWorker);
			} catch {
				waiting.delete(id);
				reject(new NoWorker());
			}
		});
}
