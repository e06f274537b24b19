import { InputError } from '../../../shared/error/index.ts';

/** Characters of anything handed in at once: 5,000 results of 40 questions stay under it. */
export const LONGEST_TEXT = 40_000_000;
/** How deep JSON may be nested: twice what a rig sheet in a result in a store comes to. */
const DEEPEST = 32;

/**
 * Where the JSON object or list that opens at `from` ends: the place after its last bracket. Text in quotes is passed over.
 * @returns null where it is cut short
 * @throws InputError `handed.deep` where it is nested deeper than anything of ours: it is not parsed then
 */
export function endOfJson(text: string, from: number): number | null {
	let depth = 0;
	for (let at = from; at < text.length; at++) {
		const code = text.charCodeAt(at);
		if (code === QUOTE) {
			at = endOfQuoted(text, at);
			if (at < 0) return null;
		} else if (code === CURLY || code === SQUARE) {
			depth++;
			if (depth > DEEPEST)
				throw new InputError(
					'handed.deep',
					'',
					'This is nested deeper than anything that Prep Bay writes. It was left unread. Ask for it again.',
				);
		} else if (code === CURLY + 2 || code === SQUARE + 2) {
			depth--;
			if (depth === 0) return at + 1;
		}
	}
	return null;
}

const [QUOTE, BACKSLASH, SQUARE, CURLY] = [34, 92, 91, 123];

function endOfQuoted(text: string, from: number): number {
	let end = from;
	do {
		end = text.indexOf('"', end + 1);
	} while (end > 0 && isEscaped(text, end));
	return end;
}

function isEscaped(text: string, at: number): boolean {
	let slashes = 0;
	while (text.charCodeAt(at - 1 - slashes) === BACKSLASH) slashes++;
	return slashes % 2 === 1;
}

/**
 * JSON from outside, held to a depth before it is parsed.
 * @throws InputError `handed.deep`, `handed.damaged`
 */
export function parsed(text: string): unknown {
	if (endOfJson(text, 0) === text.length) {
		try {
			return JSON.parse(text);
		} catch {
			// said below
		}
	}
	throw damaged();
}

export const damaged = (): InputError =>
	new InputError('handed.damaged', '', 'This is damaged or was cut short on its way. Ask for it again.');

export const otherVersion = (): InputError =>
	new InputError(
		'handed.version',
		'version',
		'This was made by another version of Prep Bay. Load the page again to get the newest, or ask for it to be made anew.',
	);
