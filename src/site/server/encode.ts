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
