import type { InputError } from '../../shared/error/index.ts';

/**
 * As `errorText`, for a page: the words of errors are fetched with the first one, since most visits meet none. Where they cannot be
 * fetched it is the error's own message.
 */
export const errorTextLater = (error: InputError): Promise<string> =>
	import('./error.ts').then(
		({ errorText }) => errorText(error),
		() => error.message,
	);
