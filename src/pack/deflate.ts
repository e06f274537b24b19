/** Text, deflated by the browser itself (RFC 1951). */
export async function deflateText(text: string): Promise<Uint8Array> {
	const packed = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
	return new Uint8Array(await new Response(packed).arrayBuffer());
}

/**
 * The text that bytes inflate to; null where they are damaged, hold no UTF-8, or come to more than `most` bytes: reading
 * stops there, so that a few bytes that stand for gigabytes do no harm.
 */
export async function inflateText(bytes: Uint8Array<ArrayBuffer>, most: number): Promise<string | null> {
	const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
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
