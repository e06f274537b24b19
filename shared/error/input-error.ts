/**
 * What a door throws when it is given nonsense.
 *
 * - `code`: permanent, lower case, words joined by dots and hyphens, e.g. `level.range`; programs and tests branch on it.
 * - `path`: where in the input the trouble is, dots and brackets, e.g. `fixtures[2].start`; empty for the whole input.
 * - `message` (the sentence): what was expected, what was found, what to do. Ready to be shown to a person.
 */
export class InputError extends Error {
	override readonly name = 'InputError';
	readonly code: string;
	readonly path: string;

	constructor(code: string, path: string, sentence: string) {
		super(sentence);
		this.code = code;
		this.path = path;
	}
}

/** Tells an `InputError` from any other thrown thing, so that a real bug is never shown as the user's mistake. */
export function isInputError(thrown: unknown): thrown is InputError {
	return thrown instanceof InputError;
}
