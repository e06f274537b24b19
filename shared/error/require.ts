import { InputError } from './input-error.ts';

/** How a found thing is shown in a sentence: text in quotes, cut after 24 characters; numbers as they are. */
export function shown(found: unknown): string {
	if (typeof found === 'string') {
		return found.length > 24 ? `"${found.slice(0, 24)}…"` : `"${found}"`;
	}
	if (typeof found === 'number' || typeof found === 'boolean' || found === null || found === undefined) {
		return String(found);
	}
	return Array.isArray(found) ? 'a list' : `something of type ${typeof found}`;
}

/** What `requireWhole` and `requireNumber` hold a number to. Both limits are allowed values. */
export type Limits = {
	readonly lo: number;
	readonly hi: number;
	/** The error's code, e.g. `level.range`. */
	readonly code: string;
	/** The error's path into the input. */
	readonly path: string;
	/** The sentence's subject, e.g. `A level`. */
	readonly what: string;
};

/**
 * Hands a whole number back if it lies in `lo` to `hi`, both included.
 * @throws InputError with the limits' code and path, naming what was expected and what was found.
 */
export function requireWhole(found: number, limits: Limits): number {
	if (!Number.isSafeInteger(found) || found < limits.lo || found > limits.hi) {
		throw new InputError(
			limits.code,
			limits.path,
			`${limits.what} is a whole number from ${limits.lo} to ${limits.hi}; found ${shown(found)}.`,
		);
	}
	return found;
}

/**
 * Hands a number, whole or not, back if it lies in `lo` to `hi`, both included.
 * @throws InputError with the limits' code and path, naming what was expected and what was found.
 */
export function requireNumber(found: number, limits: Limits): number {
	if (!(typeof found === 'number' && found >= limits.lo && found <= limits.hi)) {
		throw new InputError(
			limits.code,
			limits.path,
			`${limits.what} is a number from ${limits.lo} to ${limits.hi}; found ${shown(found)}.`,
		);
	}
	return found;
}
