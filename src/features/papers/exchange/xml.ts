/** An element of XML: name, attributes and what is in it. */
export interface Element {
	readonly name: string;
	readonly attributes: Readonly<Record<string, string | number | boolean>>;
	readonly inside: readonly (Element | string)[];
}

/** An element; what is in it may be elements, text, or nothing. */
export const element = (
	name: string,
	attributes: Element['attributes'] = {},
	...inside: readonly (Element | string)[]
): Element => ({ name, attributes, inside });

/** A whole document of XML 1.0. */
export const xmlText = (root: Element): string => `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, '')}\n`;

function written({ name, attributes, inside }: Element, indent: string): string {
	const open = [name, ...Object.entries(attributes).map(([key, value]) => `${key}="${escaped(String(value))}"`)].join(
		' ',
	);
	if (inside.length === 0) return `${indent}<${open}/>`;
	// text is not laid out: a space more would be another answer
	if (inside.some((each) => typeof each === 'string')) {
		const text = inside.map((each) => (typeof each === 'string' ? escaped(each) : written(each, ''))).join('');
		return `${indent}<${open}>${text}</${name}>`;
	}
	const lines = inside.map((each) => written(each as Element, `${indent}\t`));
	return `${indent}<${open}>\n${lines.join('\n')}\n${indent}</${name}>`;
}

const NAMED: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Characters that XML 1.0 has no way to hold (its production 2, from memory), and halves of characters. */
const UNFIT = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

const escaped = (text: string): string =>
	text
		.toWellFormed()
		.replace(UNFIT, ' ')
		.replace(/[&<>"]/g, (char) => NAMED[char] ?? char);
