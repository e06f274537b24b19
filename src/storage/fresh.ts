/** A fresh id: two hex digits a byte by chance, which tell nothing of who or what made it. */
export function freshId(bytes = 8): string {
	return Array.from(crypto.getRandomValues(new Uint8Array(bytes)), (byte) => byte.toString(16).padStart(2, '0')).join(
		'',
	);
}
