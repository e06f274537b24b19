import { isInputError } from '../../shared/error/index.ts';
import { errorText } from '../wording/index.ts';
import { NotFetched, withAll } from './late.ts';
import type { FromWorker, ToWorker, Work } from './types.ts';

/** The worker's own end: one question at a time, in the order they came. */
export function serve(work: Work): void {
	const say = (message: FromWorker): void => postMessage(message);
	const answer = async ({ id, ask, asks }: ToWorker): Promise<void> => {
		try {
			const act = (work as Record<string, (asks: unknown) => unknown>)[ask];
			say({ id, gives: await withAll(() => act?.(asks)) });
		} catch (error) {
			if (isInputError(error)) say({ id, refused: errorText(error) });
			else say({ id, broke: String(error), isUnfetched: error instanceof NotFetched });
		}
	};
	let before: Promise<void> = Promise.resolve();
	addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
		before = before.then(() => answer(data));
	});
}
