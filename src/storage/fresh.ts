/** A fresh id: 16 hex digits by chance, which tell nothing of who or what made it. */
export function freshId(): string {
	const bytes = crypto.getRandomValues(new Uint8Array(8));
	return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
