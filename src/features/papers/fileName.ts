/** A file's name out of a title: letters, digits and dashes, whatever the title has. */
export function fileNameOf(title: string, end = '.json'): string {
	const plain = title
		.normalize('NFKD')
		.replace(/\p{M}/gu, '')
		.replace(/[^\p{L}\p{N}]+/gu, '-')
		.replace(/^-|-$/g, '')
		.toLowerCase()
		.slice(0, 60);
	return `prep-bay-${plain || 'paper'}${end}`;
}
