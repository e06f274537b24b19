import { murmur3Text } from '../../../../shared/random/index.ts';

/**
 * Eight hex digits over a text (MurmurHash3): shows that something was changed or hurt on its way. It is no seal: whoever means
 * to forge a result can work it out again, and an answer changed with it is then simply another answer.
 */
export const checkOf = (text: string): string => murmur3Text(text, 0x70617072).toString(16).padStart(8, '0');

/** A value as JSON with the keys of every object in order, so that a file that was only laid out anew still fits its check. */
export function inKeyOrder(value: unknown): string {
	if (Array.isArray(value)) return `[${value.map(inKeyOrder).join(',')}]`;
	if (value === null || typeof value !== 'object') return JSON.stringify(value) ?? 'null';
	const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
	return `{${entries.map(([key, held]) => `${JSON.stringify(key)}:${inKeyOrder(held)}`).join(',')}}`;
}
