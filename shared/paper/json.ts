import { InputError, type NotPlain, shown } from '../error/index.ts';
import { murmur3Text } from '../random/index.ts';

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

/** A value as JSON with the keys of every object in order, so that equal things read equal however they travelled. */
export function canonical(value: unknown): string {
	if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
	if (value === null || typeof value !== 'object') return JSON.stringify(value) ?? 'null';
	const entries = Object.entries(value).filter(([, held]) => held !== undefined);
	entries.sort(([a], [b]) => (a < b ? -1 : 1));
	return `{${entries.map(([key, held]) => `${JSON.stringify(key)}:${canonical(held)}`).join(',')}}`;
}

/** Whether two values are the same JSON, whatever the order of keys. */
export function sameJson(a: unknown, b: unknown): boolean {
	if (a === b) return true;
	if (a === null || b === null || typeof a !== 'object' || typeof b !== 'object') return false;
	if (Array.isArray(a)) {
		return Array.isArray(b) && a.length === b.length && a.every((held, i) => sameJson(held, b[i]));
	}
	const keys = Object.keys(a);
	if (Array.isArray(b) || keys.length !== Object.keys(b).length) return false;
	const [one, other] = [a as Record<string, unknown>, b as Record<string, unknown>];
	return keys.every((key) => Object.hasOwn(other, key) && sameJson(one[key], other[key]));
}

/** Eight hex digits of a text (MurmurHash3 under a 32-bit seed): for ids, not for secrets. */
export const digest = (text: string, seed = 0): string => murmur3Text(text, seed).toString(16).padStart(8, '0');

/** Sixteen hex digits of a text: two digests under two seeds. */
export const longDigest = (text: string): string => digest(text, 0x50617065) + digest(text, 0x72426179);
