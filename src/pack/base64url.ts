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
		return Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (char) => char.charCodeAt(0));
	} catch {
		return null;
	}
}
