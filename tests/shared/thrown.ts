import { InputError } from '../../shared/error/index.ts';
import { errorText } from '../../src/wording/index.ts';

/** The InputError an act throws. Any other error goes through, and no error at all is an error too. */
export function thrownBy(act: () => unknown): InputError {
	try {
		act();
	} catch (error) {
		if (error instanceof InputError) return error;
		throw error;
	}
	throw new Error('nothing was thrown');
}

/** What a person is told of the InputError an act throws. */
export const saidBy = (act: () => unknown): string => errorText(thrownBy(act));

/** What a person is told of the InputError that a promise is refused with. */
export const saidOf = (promise: Promise<unknown>): Promise<string> =>
	promise.then(
		() => Promise.reject(new Error('nothing was thrown')),
		(error) => (error instanceof InputError ? errorText(error) : Promise.reject(error)),
	);
