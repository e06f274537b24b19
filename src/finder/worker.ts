import { isInputError } from '../../shared/error/index.ts';
import type { FromWorker, Stage, ToWorker } from './protocol.ts';
import { makeWork } from './work.ts';

/** The worker's own end: one question at a time, in the order they came. */
const work = makeWork();
const say = (message: FromWorker): void => postMessage(message);

async function answer({ id, ask, with: asks }: ToWorker): Promise<void> {
	const tell = (stage: Stage): void => say({ id, stage });
	try {
		const act = work[ask] as (asks: unknown, tell: (stage: Stage) => void) => Promise<unknown>;
		say({ id, gives: await act(asks, tell) });
	} catch (error) {
		if (isInputError(error)) say({ id, refused: { code: error.code, sentence: error.message } });
		else say({ id, broke: String(error) });
	}
}

let before: Promise<void> = Promise.resolve();
addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
	before = before.then(() => answer(data));
});
