import type { AsksOf, FromWorker, GivesOf, ToWorker, Work } from './types.ts';

/** What the worker refuses as nonsense, with its sentence. */
export class Refused extends Error {
	override readonly name = 'Refused';
}

/** The worker, or a part of it, could not be fetched or run at all. */
export class NoWorker extends Error {
	override readonly name = 'NoWorker';
}

export type Ask<W extends Work> = <N extends keyof W & string>(ask: N, asks: AsksOf<W, N>) => Promise<GivesOf<W, N>>;

type Port = Pick<Worker, 'postMessage' | 'addEventListener'>;

interface Waiting {
	give(gives: unknown): void;
	fail(error: Error): void;
}

/**
 * Asks a worker, which is started with the first question; one that fails to start is tried again with the next.
 * What it hands out rejects with `Refused`, `NoWorker`, or an `Error` where the worker broke down.
 */
export function askWorker<W extends Work>(start: () => Port): Ask<W> {
	let port: Port | null = null;
	let last = 0;
	const waiting = new Map<number, Waiting>();
	const hear = ({ data }: MessageEvent<FromWorker>): void => {
		const asked = waiting.get(data.id);
		waiting.delete(data.id);
		if ('gives' in data) asked?.give(data.gives);
		else if ('refused' in data) asked?.fail(new Refused(data.refused));
		else asked?.fail(data.isUnfetched ? new NoWorker() : new Error(data.broke));
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
	return (ask, asks) =>
		new Promise((resolve, reject) => {
			const id = ++last;
			waiting.set(id, { give: resolve as (gives: unknown) => void, fail: reject });
			try {
				port ??= open();
				const message: ToWorker = { id, ask, asks };
				port.postMessage(message);
			} catch {
				waiting.delete(id);
				reject(new NoWorker());
			}
		});
}
