/** Hands text to the person as a file to save. */
export function saveFile(name: string, text: string): void {
	const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
	const link = document.createElement('a');
	link.href = address;
	link.download = name;
	link.click();
	// the browser has taken it by then, or never will
	setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
