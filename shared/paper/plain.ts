import { InputError, shown } from '../error/index.ts';

/** Names that reach into what every object has. */
const BARRED: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/** What a paper or answers may be at most: how deep, how many values in all, how long a text. */
const LIMITS = { depth: 24, values: 400_000, text: 20_000 } as const;

/**
 * Holds what came from outside to plain, bounded JSON before a schema looks at it.
 * @throws InputError with that code: too deep, too much, too long a text, a number that is not finite, or a barred name
 */
export function requirePlain(input: unknown, code: string, what: string): void {
	let values = 0;
	const refuse = (path: string, found: string): never => {
		throw new InputError(
			code,
			path,
			`${what} is plain JSON of modest size; found ${found}. Ask for the file or link again.`,
		);
	};
	const walk = (value: unknown, path: string, depth: number): void => {
		values++;
		if (values > LIMITS.values) refuse(path, `more than ${LIMITS.values} values`);
		if (depth > LIMITS.depth) refuse(path, `things ${LIMITS.depth} deep within each other`);
		if (typeof value === 'string' && value.length > LIMITS.text) refuse(path, `a text of ${value.length} characters`);
		if (typeof value === 'number' && !Number.isFinite(value)) refuse(path, shown(value));
		if (value === null || typeof value !== 'object') return;
		if (Array.isArray(value)) for (const [i, held] of value.entries()) walk(held, `${path}[${i}]`, depth + 1);
		else walkNames(value, path, depth);
	};
	const walkNames = (value: object, path: string, depth: number): void => {
		for (const [key, held] of Object.entries(value)) {
			if (BARRED.has(key)) refuse(path, `the name ${shown(key)}`);
			walk(held, path === '' ? key.slice(0, 40) : `${path}.${key.slice(0, 40)}`, depth + 1);
		}
	};
	walk(input, '', 0);
}
