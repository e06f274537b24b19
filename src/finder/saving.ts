/** Hands the person a text as a file. */
export function saveText(name: string, text: string, type = 'text/plain'): void {
	const url = URL.createObjectURL(new Blob([text], { type }));
	const link = document.createElement('a');
	link.href = url;
	link.download = name;
	link.click();
	// the browser reads it after the click: let it
	setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
