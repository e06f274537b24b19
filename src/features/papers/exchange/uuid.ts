/** The namespace of our own ids: drawn once by chance, and never changed. */
const OURS = '18387bce-e796-4837-a710-896e6ec99d53';

/** A UUID, version 5 (RFC 9562): the same name always gives the same, so that a record store knows a statement sent twice. */
export function uuidOf(name: string, namespace = OURS): string {
	const space = Uint8Array.from(namespace.replaceAll('-', '').match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
	const bytes = sha1(Uint8Array.of(...space, ...new TextEncoder().encode(name))).slice(0, 16);
	bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x50;
	bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
	const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
	return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

const left = (word: number, by: number): number => (word << by) | (word >>> (32 - by));

/**
 * SHA-1 (RFC 3174), 20 bytes. Our own, since a browser has it only on a secure page, and a hall's own server may be none. It keeps
 * no secret here.
 */
export function sha1(message: Uint8Array): Uint8Array {
	const blocks = ((message.length + 8) >> 6) + 1;
	const padded = new DataView(new ArrayBuffer(blocks * 64));
	for (const [at, byte] of message.entries()) padded.setUint8(at, byte);
	padded.setUint8(message.length, 0x80);
	padded.setUint32(blocks * 64 - 4, message.length * 8);
	const hash = [0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476, 0xc3d2e1f0];
	const words = new Int32Array(80);
	for (let block = 0; block < blocks; block++) {
		for (let t = 0; t < 80; t++) {
			const at = (back: number): number => words[t - back] ?? 0;
			words[t] = t < 16 ? padded.getInt32(block * 64 + t * 4) : left(at(3) ^ at(8) ^ at(14) ^ at(16), 1);
		}
		let [a = 0, b = 0, c = 0, d = 0, e = 0] = hash;
		for (let t = 0; t < 80; t++) {
			const [mixed, constant] = round(t, b, c, d);
			const next = (left(a, 5) + mixed + e + (words[t] ?? 0) + constant) | 0;
			[e, d, c, b, a] = [d, c, left(b, 30), a, next];
		}
		[a, b, c, d, e].forEach((word, i) => {
			hash[i] = ((hash[i] ?? 0) + word) | 0;
		});
	}
	const out = new DataView(new ArrayBuffer(20));
	for (const [i, word] of hash.entries()) out.setInt32(i * 4, word);
	return new Uint8Array(out.buffer);
}

/** What a step mixes of three words, and its constant. */
function round(t: number, b: number, c: number, d: number): readonly [number, number] {
	if (t < 20) return [(b & c) | (~b & d), 0x5a827999];
	if (t < 40) return [b ^ c ^ d, 0x6ed9eba1];
	if (t < 60) return [(b & c) | (b & d) | (c & d), 0x8f1bbcdc];
	return [b ^ c ^ d, 0xca62c1d6];
}
