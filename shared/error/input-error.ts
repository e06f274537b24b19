import type { ErrorCode, ErrorFacts } from './codes.ts';
import { messageOf } from './message.ts';

/**
 * What a door throws when it is given nonsense.
 *
 * - `code`: permanent, lower case, words joined by dots and hyphens, e.g. `level.range`; programs and tests branch on it.
 * - `path`: where in the input the trouble is, dots and brackets, e.g. `fixtures[2].start`; empty for the whole input.
 * - `facts`: what was expected, what was found, and whatever else the words for it need: plain, and safe in JSON (`ErrorFacts`).
 * - `message`: these in one general sentence, for programs and logs. What a person reads is `errorText` of `src/wording`.
 */
export class InputError<Code extends ErrorCode = ErrorCode> extends Error {
	override readonly name = 'InputError';
	readonly code: Code;
	readonly path: string;
	readonly facts: ErrorFacts[Code];

	constructor(code: Code, path: string, facts: ErrorFacts[Code]) {
		super(messageOf(code, path, facts));
		this.code = code;
		this.path = path;
		this.facts = facts;
	}

	/** The same trouble seen from further out: `place` is where, in the larger input, what was refused stands. */
	within(place: string): InputError {
		const dot = place && this.path && !this.path.startsWith('[') ? '.' : '';
		return new InputError<ErrorCode>(this.code, `${place}${dot}${this.path}`, this.facts);
	}
}

/** Tells an `InputError` from any other thrown thing, so that a real bug is never shown as the user's mistake. */
export function isInputError(thrown: unknown): thrown is InputError {
	return thrown instanceof InputError;
}
