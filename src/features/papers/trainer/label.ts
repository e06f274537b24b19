import { learnWords, trainerWords } from '#words/papers/index.ts';
import type { ClassRow } from '../exchange/index.ts';

/** A result by its name, and by whatever tells it from others of that name: which person, which try. */
export function labelOf({ name, person, namesakes, attemptNo }: ClassRow): string {
	const which = [
		...(namesakes > 1 ? [learnWords.whichOf(person, namesakes)] : []),
		...(attemptNo > 1 ? [learnWords.whichTry(attemptNo)] : []),
	];
	const called = name || trainerWords.nameless;
	return which.length > 0 ? learnWords.told(called, which.join(', ')) : called;
}
