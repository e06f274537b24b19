/** Hands text or bytes to the person as a file to save. */
export function saveText(name: string, content: string | Uint8Array<ArrayBuffer>, type = 'application/json'): void {
	const address = URL.createObjectURL(new Blob([content], { type }));
	const link = document.createElement('a');
	link.href = address;
	link.download = name;
	link.click();
	// the browser has taken it by then, or never will
	setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
