import type { ErrorCode, ErrorFacts, OutOfLimits } from './codes.ts';
import { InputError } from './input-error.ts';

/**
 * How a found thing stands among an error's facts, as one short text: text in quotes, cut after 24 characters; numbers as they are;
 * `[…]` for a list, `{…}` for an object, and the type of anything else.
 */
export function shown(found: unknown): string {
	if (typeof found === 'string') {
		return found.length > 24 ? `"${found.slice(0, 24)}…"` : `"${found}"`;
	}
	if (typeof found === 'number' || typeof found === 'boolean' || found === null || found === undefined) {
		return String(found);
	}
	if (Array.isArray(found)) return '[…]';
	return typeof found === 'object' ? '{…}' : typeof found;
}

/** Codes of a number out of its limits. */
type SpanCode = { [Code in ErrorCode]: Extract<ErrorFacts[Code], OutOfLimits> extends never ? never : Code }[ErrorCode];

/** What `requireWhole` and `requireNumber` hold a number to. Both limits are allowed values. */
export type Limits<Code extends SpanCode = SpanCode> = {
	readonly lo: number;
	readonly hi: number;
	/** The error's code, e.g. `level.range`. */
	readonly code: Code;
	/** The error's path into the input. */
	readonly path: string;
	/** Which number it is, as an id, e.g. `level`. */
	readonly of: Extract<ErrorFacts[Code], OutOfLimits>['of'];
};

/**
 * Hands a whole number back if it lies in `lo` to `hi`, both included.
 * @throws InputError with the limits' code and path, telling what was expected and what was found.
 */
export function requireWhole<Code extends SpanCode>(found: number, limits: Limits<Code>): number {
	if (!Number.isSafeInteger(found) || found < limits.lo || found > limits.hi) throw outside(found, 'whole', limits);
	return found;
}

/**
 * Hands a number, whole or not, back if it lies in `lo` to `hi`, both included.
 * @throws InputError with the limits' code and path, telling what was expected and what was found.
 */
export function requireNumber<Code extends SpanCode>(found: number, limits: Limits<Code>): number {
	if (!(typeof found === 'number' && found >= limits.lo && found <= limits.hi)) throw outside(found, 'number', limits);
	return found;
}

function outside(
	found: number,
	expected: OutOfLimits['expected'],
	{ code, path, of, lo, hi }: Limits,
): InputError<SpanCode> {
	return new InputError<SpanCode>(code, path, { expected, of, lo, hi, found: shown(found) } as ErrorFacts[SpanCode]);
}

/** Set by the build that ships (a plain `define` in astro.config.mjs) and by nothing else. */
declare const SHIPPED: true | undefined;

/** Whether invariants are looked after: under Node, in tests and on a development server. In what ships it is false, and what stands under it goes. */
export const CHECKED: boolean = typeof SHIPPED === 'undefined';

/**
 * Holds a thing to what must always be so, whatever anybody does: not for what comes from outside, which gets an `InputError`.
 * Called under `if (CHECKED)`, so that a build that ships need not even work out whether it holds.
 * @param what what would then be, such as `a level past 255`
 * @param found what is looked at, to be shown
 * @throws Error naming what does not hold: a bug of this house, and of nobody's doing
 */
export function assert(holds: boolean, what: string, found?: unknown): asserts holds {
	if (!holds) throw new Error(`This can never be: ${what}${found === undefined ? '' : ` (${shown(found)})`}.`);
}
