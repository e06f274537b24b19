/** What a text of JSON may come to before it is parsed: characters, brackets within brackets, and things in it. */
export interface JsonBounds {
	readonly characters: number;
	readonly deep: number;
	/** Commas and opening brackets outside of quotes: no fewer than the values in it, less one. */
	readonly things: number;
}

/**
 * What a link may come to once inflated. A full log of 20,000 events has some 100,000 things, and one of cables laid a quarter of
 * a million; a rig sheet is nested 12 deep, in a result in a store 16.
 */
export const LINK_BOUNDS: JsonBounds = Object.freeze({ characters: 8_000_000, deep: 32, things: 300_000 });

/** How much of what a person hands in is read at all, before anything looks into it: bytes of a file, characters of a text. */
export const MOST_READ = Object.freeze({
	/** Of a rig sheet: the largest that a phone can take stays well under. */
	sheet: 4_000_000,
	/** Of one paper, or a picture of its code. */
	paper: 2_000_000,
	/** Of the results of drills. */
	results: 2_000_000,
	/** Of anything that was saved from what is kept here. */
	saved: 8_000_000,
	/** Of an open fixture file: one byte more than its reader takes, so that it says so of a larger one. */
	fixtureFile: 16 * 2 ** 20 + 1,
	/** Of all that is handed in at once: 5,000 results of 40 questions stay under it. */
	handedIn: 40_000_000,
	/** Of a link, still packed: a full log of the longest kind stays under it. */
	link: 1_000_000,
});

/** Why a text was left unparsed. */
export type JsonTrouble = 'long' | 'deep' | 'many' | 'damaged';

/**
 * Where the JSON object or list that opens at `from` ends: the place after its last bracket. Text in quotes is passed over, and
 * nothing is made of anything: a few kilobytes that stand for millions of lists cost a look each and no memory.
 * @returns null where it is cut short; `deep` or `many` where it goes past its bounds
 */
export function endOfJson(text: string, from: number, bounds: JsonBounds): number | null | 'deep' | 'many' {
	let depth = 0;
	let things = 0;
	for (let at = from; at < text.length; at++) {
		const code = text.charCodeAt(at);
		if (code === QUOTE) {
			at = endOfQuoted(text, at);
			if (at < 0) return null;
		} else if (code === CURLY || code === SQUARE) {
			if (++depth > bounds.deep) return 'deep';
			if (++things > bounds.things) return 'many';
		} else if (code === COMMA) {
			if (++things > bounds.things) return 'many';
		} else if (code === CURLY + 2 || code === SQUARE + 2) {
			depth--;
			if (depth <= 0) return at + 1;
		}
	}
	return null;
}

const [QUOTE, COMMA, BACKSLASH, SQUARE, CURLY] = [34, 44, 92, 91, 123];

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

/** An object or a list from JSON that came from outside, held to its bounds on the text before it is parsed. */
export function readJson(text: string, bounds = LINK_BOUNDS): { readonly value: unknown } | JsonTrouble {
	if (text.length > bounds.characters) return 'long';
	const from = text.search(/[^ \t\n\r]/);
	if (from < 0 || !'{['.includes(text.charAt(from))) return 'damaged';
	const end = endOfJson(text, from, bounds);
	if (end === 'deep' || end === 'many') return end;
	try {
		return { value: JSON.parse(text) };
	} catch {
		return 'damaged';
	}
}
