import { fetched, isInputError, NotFetched } from '../../shared/error/index.ts';
import { errorTextLater } from '../wording/index.ts';

/** The worker's end of its port: what `self` is there. */
export interface EnginePort {
	postMessage(message: FromWorker): void;
	addEventListener(type: 'message', hear: (event: { readonly data: ToWorker }) => void): void;
}

type Act = (asks: unknown, tell: (stage: string) => void) => unknown;

/**
 * Answers what comes to a port: one question at a time, in the order they came, and in between what can be worked out ahead.
 * @param features by name, each fetched with the first question to it
 */
export function serve(port: EnginePort, features: Readonly<Record<string, () => Promise<Feature>>>): void {
	const cancelled = new Set<number>();
	/** The number of the last question. */
	let last = 0;

	async function answer(id: number, route: string, asks: unknown): Promise<Feature | null> {
		try {
			const [name = '', act = ''] = route.split('.');
			const fetchFeature = features[name];
			if (!fetchFeature) throw new Error(`there is no route '${route}'`);
			const feature = await fetched(fetchFeature());
			const tell = (stage: string): void => port.postMessage({ id, stage });
			port.postMessage({ id, result: await (feature.routes as Record<string, Act>)[act]?.(asks, tell) });
			return feature;
		} catch (error) {
			if (isInputError(error))
				port.postMessage({ id, refused: { code: error.code, sentence: await errorTextLater(error) } });
			else port.postMessage({ id, broke: String(error), isUnfetched: error instanceof NotFetched });
			return null;
		}
	}

	/** Works ahead until something is asked. */
	async function goAhead(id: number, { ahead }: Feature): Promise<void> {
		for (const act of ahead?.() ?? []) {
			// lets what was asked meanwhile come in
			await new Promise((resolve) => setTimeout(resolve));
			if (id !== last) return;
			act();
		}
	}

	let before: Promise<void> = Promise.resolve();
	port.addEventListener('message', ({ data }) => {
		if ('cancelled' in data) {
			cancelled.add(data.id);
			return;
		}
		const { id, route, asks } = data;
		last = id;
		before = before.then(async () => {
			// lets a word that it is not wanted any more come in
			await new Promise((resolve) => setTimeout(resolve));
			if (cancelled.delete(id)) return;
			const feature = await answer(id, route, asks);
			// a bug met ahead is told when it is come to
			if (feature) await goAhead(id, feature).catch(() => undefined);
		});
	});
}

/** What goes to the worker. Questions are answered in the order they come. */
export type ToWorker =
	| { readonly id: number; readonly route: string; readonly asks: unknown }
	/** A question that need not be answered any more. One that is at work goes on: to stop it, the worker is ended. */
	| { readonly id: number; readonly cancelled: true };

/** What comes back, by the question's number: any number of stages, then one of the others. */
export type FromWorker =
	| { readonly id: number; readonly stage: string }
	| { readonly id: number; readonly result: unknown }
	/** Nonsense came in: a code, and a sentence for the person. */
	| { readonly id: number; readonly refused: { readonly code: string; readonly sentence: string } }
	/** A bug, or a part of the worker that could not be fetched. */
	| { readonly id: number; readonly broke: string; readonly isUnfetched: boolean };

/** What a feature does in the worker. */
export interface Feature {
	/** Functions from plain data to plain data; the second argument tells the stage it is at. */
	readonly routes: object;
	/** What can be worked out while nothing is asked, piece by piece; handed out once, after each answer. */
	readonly ahead?: () => readonly (() => void)[];
}
