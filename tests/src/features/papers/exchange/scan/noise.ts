import { crc32, deflateSync } from 'node:zlib';
import { makeRandom } from '../../../../../../shared/random/index.ts';

/** A picture of noise alone as a PNG in grey (W3C PNG, third edition, clauses 5 and 11): a wall of gravel, a carpet, a dark hall. */
export function noisePng(width: number, height: number, seed = 1): Buffer {
	const chance = makeRandom(seed);
	const rows = Buffer.alloc((width + 1) * height);
	for (let at = 0; at < rows.length; at++) rows[at] = at % (width + 1) === 0 ? 0 : chance.int(0, 255);
	const head = Buffer.alloc(13);
	head.writeUInt32BE(width, 0);
	head.writeUInt32BE(height, 4);
	head.set([8, 0, 0, 0, 0], 8);
	return Buffer.concat([
		Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
		chunk('IHDR', head),
		chunk('IDAT', deflateSync(rows, { level: 1 })),
		chunk('IEND', Buffer.alloc(0)),
	]);
}

function chunk(name: string, data: Buffer): Buffer {
	const named = Buffer.concat([Buffer.from(name, 'latin1'), data]);
	const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
	length.writeUInt32BE(data.length);
	sum.writeUInt32BE(crc32(named));
	return Buffer.concat([length, named, sum]);
}
