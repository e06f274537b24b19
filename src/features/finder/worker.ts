import { isInputError } from '../../../shared/error/index.ts';
import { NotFetched } from '../../asking/index.ts';
import { errorText } from '../../wording/index.ts';
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
		if (isInputError(error)) say({ id, refused: { code: error.code, sentence: errorText(error) } });
		else say({ id, broke: String(error), isUnfetched: error instanceof NotFetched });
	}
}

/** The number of the last question. */
let last = 0;

/** Works ahead until something is asked. */
async function goAhead(mine: number): Promise<void> {
	for (const act of work.ahead()) {
		// lets what was asked meanwhile come in
		await new Promise((resolve) => setTimeout(resolve));
		if (mine !== last) return;
		act();
	}
}

let before: Promise<void> = Promise.resolve();
addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
	const mine = ++last;
	// a bug met ahead is told when it is come to
	before = before
		.then(() => answer(data))
		.then(() => goAhead(mine))
		.catch(() => undefined);
});
