/** A DMX value as the file gives it: `255/1` repeats its bytes in a wider channel, `255/1s` fills up with zeros. */
export interface DmxValue {
	readonly value: number;
	/** How many bytes it is given in, 1 to 4. */
	readonly bytes: number;
	readonly isShifted: boolean;
}

/** Reads a `DMXValue` (DIN SPEC 15800, table 1); null where it is none, or does not fit its bytes. */
export function readDmxValue(text: string): DmxValue | null {
	const [, digits = '', bytes, shift] = /^(\d{1,10})\/([1-4])(s?)$/.exec(text) ?? [];
	if (bytes === undefined) return null;
	const read = { value: Number(digits), bytes: Number(bytes), isShifted: shift === 's' };
	return read.value < 256 ** read.bytes ? read : null;
}

/** The value in a channel of so many bytes (1 to 4): cut at the low end where it is narrower. */
export function inBytes({ value, bytes, isShifted }: DmxValue, wanted: number): number {
	let out = 0;
	for (let i = 0; i < wanted; i++) out = out * 256 + (i < bytes || !isShifted ? byteOf(value, bytes, i % bytes) : 0);
	return out;
}

/** Byte `i` of a value in so many bytes, the highest first. */
const byteOf = (value: number, bytes: number, i: number): number => Math.floor(value / 256 ** (bytes - 1 - i)) % 256;

/** A number such as `0.64`; null where it is none. */
export function readNumber(text: string | null): number | null {
	if (text === null || !/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d{1,3})?$/i.test(text)) return null;
	const number = Number(text);
	return Number.isFinite(number) ? number : null;
}

/** A colour of the file: CIE 1931 x and y, and a luminance whose scale is the file's own. */
export interface Colour {
	readonly xy: readonly [number, number];
	readonly luminance: number;
}

/** Reads `x,y,Y`; null where it is no colour there can be. */
export function readColour(text: string | null): Colour | null {
	const [x, y, luminance, ...more] = (text ?? '').split(',').map((part) => readNumber(part.trim()));
	if (typeof x !== 'number' || typeof y !== 'number' || typeof luminance !== 'number' || more.length > 0) return null;
	// no light has y of 0, and nothing can be mixed from it
	if (x < 0 || y <= 0 || x + y > 1 || luminance < 0) return null;
	return { xy: [x, y], luminance };
}

/** Reads an `Offset` such as `4,3,5`, high byte first; an empty list for `None`, null where it is none. */
export function readOffsets(text: string | null): readonly number[] | null {
	if (text === null || text === 'None') return [];
	const parts = text.split(',').map((part) => part.trim());
	if (parts.length > 4 || !parts.every((part) => /^\d{1,4}$/.test(part))) return null;
	return parts.map(Number);
}
