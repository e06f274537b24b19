import { createHash } from 'node:crypto';
import type { Stats } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { promisify } from 'node:util';
import { brotliCompress, gzip, constants as zlib } from 'node:zlib';

/** How hard to press: `best` is the smallest there is, at some seconds a site; `quick` is a tenth larger, at none to speak of. */
export type Effort = 'best' | 'quick';

const compress = {
	br: (bytes: Buffer, effort: Effort): Promise<Buffer> =>
		promisify(brotliCompress)(bytes, {
			params: {
				[zlib.BROTLI_PARAM_MODE]: zlib.BROTLI_MODE_TEXT,
				[zlib.BROTLI_PARAM_SIZE_HINT]: bytes.length,
				[zlib.BROTLI_PARAM_QUALITY]: effort === 'best' ? zlib.BROTLI_MAX_QUALITY : 5,
			},
		}),
	gzip: (bytes: Buffer, effort: Effort): Promise<Buffer> =>
		promisify(gzip)(bytes, { level: effort === 'best' ? zlib.Z_BEST_COMPRESSION : zlib.Z_DEFAULT_COMPRESSION }),
};

/** How a file's bytes are sent (RFC 9110, 8.4.1: content codings). */
type Encoding = keyof typeof compress;

/**
 * The smallest encoding that a browser takes; null where it is to have the bytes as they are.
 * @param accepts its `accept-encoding`: names, each with a weight `q` of 0 (never) to 1 or none (RFC 9110, 12.5.3)
 */
export function bestEncoding(accepts: string): Encoding | null {
	const weights = new Map<string, number>();
	for (const each of accepts.toLowerCase().split(',')) {
		const [name = '', ...about] = each.split(';').map((part) => part.trim());
		const weight = about.find((part) => part.startsWith('q='));
		weights.set(name, weight ? Number(weight.slice(2)) : 1);
	}
	const takes = (name: Encoding): boolean => (weights.get(name) ?? weights.get('*') ?? 0) > 0;
	if (takes('br')) return 'br';
	return takes('gzip') ? 'gzip' : null;
}

/** Compresses files, each once for as long as it stays as it is. */
export function keepEncoded(effort: Effort): (file: string, about: Stats, encoding: Encoding) => Promise<Buffer> {
	const kept = new Map<string, Promise<Buffer>>();
	return (file, { mtimeMs, size }, encoding) => {
		const key = [file, mtimeMs, size, encoding].join('\n');
		let bytes = kept.get(key);
		if (!bytes) {
			bytes = readFile(file).then((whole) => compress[encoding](whole, effort));
			kept.set(key, bytes);
		}
		return bytes;
	};
}

/**
 * Tags files by what is in them, each read once for as long as it stays as it is. A weak tag: it is the same in every content coding
 * (RFC 9110, 8.8.1).
 */
export function keepTags(): (file: string, about: Stats) => Promise<string> {
	const kept = new Map<string, Promise<string>>();
	return (file, { mtimeMs, size, ino }) => {
		const key = [file, mtimeMs, size, ino].join('\n');
		let tag = kept.get(key);
		if (!tag) {
			tag = readFile(file).then(
				(bytes) => `W/"${createHash('sha256').update(bytes).digest('base64url').slice(0, 22)}"`,
			);
			kept.set(key, tag);
		}
		return tag;
	};
}

/** One member of the list, or an empty one, and the comma or the end behind it (RFC 9110, 8.8.3 and 5.6.1). */
const MEMBER = /[ \t]*(?:(?:W\/)?"([\x21\x23-\x7e\x80-\xff]*)")?[ \t]*(?:,|$)/y;

/**
 * Whether a browser has the file already, by the weak comparison of tags (RFC 9110, 8.8.3.2 and 13.1.2).
 * @param told its `if-none-match`: `*`, or tags with commas between; empty where it sent none. What is no such list is taken for none
 * @param tag the file's own
 */
export function hasIt(told: string, tag: string): boolean {
	if (told.trim() === '*') return true;
	const own = /"(.*)"$/.exec(tag)?.[1];
	let found = false;
	for (MEMBER.lastIndex = 0; MEMBER.lastIndex < told.length; ) {
		const member = MEMBER.exec(told);
		if (!member) return false;
		if (member[1] === own) found = true;
	}
	return found;
}
