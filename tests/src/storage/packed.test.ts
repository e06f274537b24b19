import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { deflateText, inflateText } from '../../../src/storage/index.ts';
import { runs } from '../../runs.ts';

const own = (bytes: Uint8Array): Uint8Array<ArrayBuffer> => Uint8Array.from(bytes);

afterEach(() => vi.unstubAllGlobals());

describe('text packed', () => {
	it('unpacks to the same, and so does what zlib packs (recalculated)', async () => {
		await fc.assert(
			fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 3000 }), async (text) => {
				expect(await inflateText(own(await deflateText(text)), 100_000)).toBe(text);
				expect(await inflateText(own(deflateRawSync(text)), 100_000)).toBe(text);
			}),
			{ numRuns: runs(60) },
		);
	});

	it('is null where it is cut short, nothing deflated, followed by more, no UTF-8, or stands for more than it may', async () => {
		const bytes = own(deflateRawSync('a paper of forty questions '.repeat(9)));
		const wrong = [
			bytes.slice(0, -3),
			own(Buffer.from('\xff\xff\xff\xff', 'latin1')),
			own(Buffer.concat([bytes, Buffer.from('more')])),
			own(deflateRawSync(Buffer.from([0xff, 0xfe, 0xfd]))),
		];
		for (const each of wrong) expect(await inflateText(each, 100_000)).toBeNull();
		expect(await inflateText(own(deflateRawSync(Buffer.alloc(50_000_000))), 100_000)).toBeNull();
	});

	// 500 results' links took 3 s to read in a page: each was read from a Blob, which a browser asks of another process
	it('asks for no Blob', async () => {
		vi.stubGlobal('Blob', undefined);
		expect(await inflateText(own(await deflateText('a result')), 1000)).toBe('a result');
	});

	// a link of 0.9 MB that stands for 700 MB was fed in whole: the page froze for six seconds and took 600 MB
	it('is fed in by small pieces, and no more once it stands for more than it may', async () => {
		const fed: number[] = [];
		const Real = DecompressionStream;
		vi.stubGlobal(
			'DecompressionStream',
			class {
				readonly readable: ReadableStream<Uint8Array>;
				readonly writable: WritableStream<Uint8Array<ArrayBuffer>>;
				constructor() {
					const { readable, writable } = new Real('deflate-raw');
					const into = writable.getWriter();
					this.readable = readable;
					this.writable = new WritableStream({
						write(piece) {
							fed.push(piece.length);
							return into.write(piece);
						},
						close: () => into.close(),
						abort: (reason) => into.abort(reason),
					});
				}
			},
		);
		const bomb = own(deflateRawSync(Buffer.alloc(200_000_000)));
		expect(bomb.length).toBeGreaterThan(190_000);
		expect(await inflateText(bomb, 2_000_000)).toBeNull();
		expect(Math.max(...fed)).toBeLessThanOrEqual(1024);
		// 2 MB, and the 64 kB that Node holds on its way in; the rest was never looked at
		expect(fed.reduce((sum, each) => sum + each, 0)).toBeLessThan(bomb.length / 2);
	});
});
