import { murmur3Text } from '../random/index.ts';

/** A value as JSON with the keys of every object in order, so that equal things read equal however they travelled. */
export function canonical(value: unknown): string {
	if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
	if (value === null || typeof value !== 'object') return JSON.stringify(value) ?? 'null';
	const entries = Object.entries(value).filter(([, held]) => held !== undefined);
	entries.sort(([a], [b]) => (a < b ? -1 : 1));
	return `{${entries.map(([key, held]) => `${JSON.stringify(key)}:${canonical(held)}`).join(',')}}`;
}

/** Eight hex digits of a text (MurmurHash3 under a 32-bit seed): for ids, not for secrets. */
export const digest = (text: string, seed = 0): string => murmur3Text(text, seed).toString(16).padStart(8, '0');

/** Sixteen hex digits of a text: two digests under two seeds. */
export const longDigest = (text: string): string => digest(text, 0x50617065) + digest(text, 0x72426179);
