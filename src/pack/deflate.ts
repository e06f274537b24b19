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

/**
 * The text that bytes inflate to; null where they are damaged, hold no UTF-8, or come to more than `most` bytes: reading
 * stops there, so that a few bytes that stand for gigabytes do no harm.
 */
export async function inflateText(bytes: Uint8Array<ArrayBuffer>, most: number): Promise<string | null> {
	const reader = through(bytes, new DecompressionStream('deflate-raw')).getReader();
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
