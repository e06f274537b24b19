/** Text, deflated by the browser itself (RFC 1951). */
export async function deflateText(text: string): Promise<Uint8Array> {
	const packed = through(new TextEncoder().encode(text), new CompressionStream('deflate-raw'));
	return new Uint8Array(await new Response(packed).arrayBuffer());
}

/** Bytes put through at once: a `Blob` to read them from would be asked of another process, some milliseconds each. */
function through(
	bytes: Uint8Array<ArrayBuffer>,
	{ writable, readable }: CompressionStream | DecompressionStream,
): ReadableStream<Uint8Array> {
	const writer = writable.getWriter();
	// what goes wrong is told where it is read
	writer.write(bytes).catch(() => {});
	writer.close().catch(() => {});
	return readable;
}

/** Bytes fed in at a time. Deflated bytes stand for 1032 times as many at most (RFC 1951), so a piece for half a megabyte. */
const PIECE = 512;

/**
 * Bytes put through piece by piece, the next when what came of the last has been read: a browser inflates all of a piece at once,
 * and one piece of a megabyte that stood for 700 held the page for seconds.
 */
function pieceByPiece(
	bytes: Uint8Array<ArrayBuffer>,
	{ writable, readable }: DecompressionStream,
): ReadableStream<Uint8Array> {
	const writer = writable.getWriter();
	const feed = async () => {
		for (let at = 0; at < bytes.length; at += PIECE) await writer.write(bytes.subarray(at, at + PIECE));
		await writer.close();
	};
	// what goes wrong is told where it is read
	feed().catch(() => {});
	return readable;
}

/**
 * The text that bytes inflate to; null where they are damaged, hold no UTF-8, or come to more than `most` bytes: reading
 * stops there, and feeding with it, so that a few bytes that stand for gigabytes do no harm.
 */
export async function inflateText(bytes: Uint8Array<ArrayBuffer>, most: number): Promise<string | null> {
	const reader = pieceByPiece(bytes, new DecompressionStream('deflate-raw')).getReader();
	const decoder = new TextDecoder('utf-8', { fatal: true });
	let text = '';
	let size = 0;
	try {
		for (;;) {
			const { done, value } = await reader.read();
			if (done) return text + decoder.decode();
			size += value.length;
			if (size > most) {
				await reader.cancel();
				return null;
			}
			text += decoder.decode(value, { stream: true });
		}
	} catch {
		return null;
	}
}
/** Bytes as text that a link may carry unescaped (RFC 4648, section 5), with no padding. */
export function toBase64url(bytes: Uint8Array): string {
	let binary = '';
	// in stretches: a call takes only so many arguments
	for (let at = 0; at < bytes.length; at += 0x8000) binary += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
	return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** The bytes of such text; null where it is none. */
export function fromBase64url(text: string): Uint8Array<ArrayBuffer> | null {
	if (!/^[\w-]*$/.test(text)) return null;
	try {
		const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
		const bytes = new Uint8Array(binary.length);
		// a plain loop: `Uint8Array.from` asks for each byte by an iterator, which held the page twelve times as long
		for (let at = 0; at < bytes.length; at++) bytes[at] = binary.charCodeAt(at);
		return bytes;
	} catch {
		return null;
	}
}
