import type { ErrorCode, ErrorFacts } from './codes.ts';

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

/** What an error may carry as a fact: what survives JSON. */
type Fact = string | number | boolean | null | readonly (string | number)[];

/** What was expected, by its id; any id that is not here is read out as words. */
const EXPECTED: Readonly<Record<string, (facts: Readonly<Record<string, Fact>>) => string>> = {
	whole: ({ lo, hi }) => `a whole number from ${lo} to ${hi}`,
	number: ({ lo, hi }) => `a number from ${lo} to ${hi}`,
	'over-0': () => 'a number over 0',
	'from-0': () => 'a number of 0 or more',
	below: ({ limit }) => `less than ${limit}`,
	length: ({ length }) => `a length of ${length}`,
	'one-of': ({ known }) => `one of ${text(known)}`,
	shape: ({ rule, limit, known }) => {
		const bound = Array.isArray(known) && known.length > 0 ? known : limit;
		return `${words(String(rule))}${bound === null ? '' : ` ${text(bound)}`}`;
	},
};

/** Facts that the patterns above, or the sentence itself, have told already. */
const IN_EXPECTATION = ['lo', 'hi', 'limit', 'length', 'known', 'rule'];
const IN_SENTENCE = ['expected', 'found', 'trouble'];

/**
 * An error in one general sentence, for programs and logs: the place, what is wrong, what was expected, what was found, then any
 * other fact with its name. `At start: expected a whole number from 1 to 512, found 513 (of start-address).` What a person reads
 * on a page is in `content/`, by the code.
 */
export function messageOf(code: string, path: string, facts: object): string {
	const known = facts as Readonly<Record<string, Fact>>;
	const { expected, trouble, found } = known;
	const expectation = typeof expected === 'string' ? EXPECTED[expected] : undefined;
	const told = [...IN_SENTENCE, ...(expectation ? IN_EXPECTATION : [])];
	const rest = Object.entries(known).filter(([name]) => !told.includes(name));
	const parts = [
		typeof trouble === 'string' ? words(trouble) : '',
		typeof expected === 'string' ? `expected ${expectation?.(known) ?? words(expected)}` : '',
		found === undefined ? '' : `found ${text(found)}`,
	].filter(Boolean);
	const said = parts.length > 0 ? parts.join(', ') : words(code.replaceAll('.', ': '));
	const more = rest.length > 0 ? ` (${rest.map(([name, fact]) => `${name} ${text(fact)}`).join('; ')})` : '';
	return path === '' ? `${said.charAt(0).toUpperCase()}${said.slice(1)}${more}.` : `At ${path}: ${said}${more}.`;
}

const words = (id: string): string => id.replaceAll(/[-_]/g, ' ');
const text = (fact: Fact | undefined): string => (Array.isArray(fact) ? fact.join(', ') : String(fact));

/** Something that comes late could not be fetched: no network, and not kept on the device yet. Trying again may do. */
export class NotFetched extends Error {
	override readonly name = 'NotFetched';
}

/** What is on its way. @throws NotFetched where it does not come */
export async function fetched<T>(coming: Promise<T>): Promise<T> {
	try {
		return await coming;
	} catch {
		throw new NotFetched();
	}
}
