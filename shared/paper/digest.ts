import { murmur3Text } from '../random/index.ts';

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
