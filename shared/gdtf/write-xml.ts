import { murmur3Text } from '../random/index.ts';

/** Attributes of an element, in the order they are written. */
export type Attributes = Readonly<Record<string, string | number>>;

/** An element as text, with others in it. */
export function element(name: string, attributes: Attributes = {}, children: readonly string[] = []): string {
	const given = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(String(value))}"`);
	const within = children.filter((child) => child !== '').join('\n');
	return within === '' ? `<${name}${given.join('')}/>` : `<${name}${given.join('')}>\n${within}\n</${name}>`;
}

/** An element with text in it and nothing around that text. */
export const textElement = (name: string, text: string | number, attributes: Attributes = {}): string =>
	element(name, attributes).replace('/>', () => `>${escaped(String(text))}</${name}>`);

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

const escaped = (text: string): string =>
	text
		.toWellFormed()
		// what XML cannot hold, escaped or not
		.replaceAll(/[\p{Cc}\uFFFE\uFFFF]/gu, ' ')
		.replaceAll(/[&<>"]/g, (one) => ESCAPES[one] ?? one);

/** Characters that a name may not have (annex C): it would be taken for a link, a list, or one of the standard's own marks. */
const BARRED = /[!$&,.?[\\\]^{|}~\p{Cc}\uFFFE\uFFFF]/gu;

/** A text as the standard takes it for a name. */
export const nameOf = (text: string): string =>
	text.toWellFormed().replaceAll(BARRED, ' ').replaceAll(/\s+/g, ' ').trim() || '-';

/** A number with as many places as it needs, six at most. */
export const figure = (value: number): string => String(Number(value.toFixed(6)));

/** An id of the form the standard asks for, made of the profile's own. */
export function guidOf(id: string): string {
	const hex = [1, 2, 3, 4].map((seed) => murmur3Text(id, seed).toString(16).padStart(8, '0')).join('');
	// version 8 and the usual variant: an id made by a way of one's own (RFC 9562, from memory)
	const parts = [hex.slice(0, 8), hex.slice(8, 12), `8${hex.slice(13, 16)}`, `8${hex.slice(17, 20)}`, hex.slice(20)];
	return parts.join('-').toUpperCase();
}
