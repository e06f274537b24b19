import { InputError, type NotPlain, shown } from '../error/index.ts';

/** Names that reach into what every object has. */
const BARRED: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/** What a paper or answers may be at most: how deep, how many values in all, how long a text. */
const LIMITS = { depth: 24, values: 400_000, text: 20_000 } as const;

/** Codes of what is held to plain JSON. */
type PlainCode = 'paper.recipe' | 'paper.shape' | 'paper.answers';

/**
 * Holds what came from outside to plain, bounded JSON before a schema looks at it.
 * @throws InputError with that code: too deep, too much, too long a text, a number that is not finite, or a barred name
 */
export function requirePlain(input: unknown, code: PlainCode): void {
	let values = 0;
	const refuse = (path: string, facts: NotPlain): never => {
		throw new InputError(code, path, facts);
	};
	const walk = (value: unknown, path: string, depth: number): void => {
		values++;
		if (values > LIMITS.values) refuse(path, { trouble: 'too-many-values', limit: LIMITS.values });
		if (depth > LIMITS.depth) refuse(path, { trouble: 'too-deep', limit: LIMITS.depth });
		if (typeof value === 'string' && value.length > LIMITS.text)
			refuse(path, { trouble: 'text-too-long', length: value.length });
		if (typeof value === 'number' && !Number.isFinite(value))
			refuse(path, { trouble: 'not-finite', found: shown(value) });
		if (value === null || typeof value !== 'object') return;
		if (Array.isArray(value)) for (const [i, held] of value.entries()) walk(held, `${path}[${i}]`, depth + 1);
		else walkNames(value, path, depth);
	};
	const walkNames = (value: object, path: string, depth: number): void => {
		for (const [key, held] of Object.entries(value)) {
			if (BARRED.has(key)) refuse(path, { trouble: 'barred-name', found: shown(key) });
			walk(held, path === '' ? key.slice(0, 40) : `${path}.${key.slice(0, 40)}`, depth + 1);
		}
	};
	walk(input, '', 0);
}
