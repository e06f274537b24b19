import { InputError } from '../../shared/error/index.ts';

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
