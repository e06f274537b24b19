import { isInputError } from '../../shared/error/index.ts';
import type { FromWorker, ToWorker, Work } from './types.ts';

/** The worker's own end: one question at a time, in the order they came. */
export function serve(work: Work): void {
	const say = (message: FromWorker): void => postMessage(message);
	const answer = async ({ id, ask, asks }: ToWorker): Promise<void> => {
		try {
			const act = (work as Record<string, (asks: unknown) => unknown>)[ask];
			say({ id, gives: await act?.(asks) });
		} catch (error) {
			say(isInputError(error) ? { id, refused: error.message } : { id, broke: String(error) });
		}
	};
	let before: Promise<void> = Promise.resolve();
	addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
		before = before.then(() => answer(data));
	});
}
