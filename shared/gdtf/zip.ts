import { Inflate } from 'fflate';
import { type ArchiveTrouble, InputError } from '../error/index.ts';
import { LIMITS, megabytes } from './limits.ts';

// signatures and sizes of a zip's records (APPNOTE 6.3, from memory; the reading of real archives in the tests holds them)
export const END = { signature: 0x06054b50, size: 22, longestComment: 0xffff };
export const ENTRY = { signature: 0x02014b50, size: 46 };
export const LOCAL = { signature: 0x04034b50, size: 30 };
/** Bytes of a file's own record before its name. */
export const ZIP_RECORD = LOCAL.size;
const STORED = 0;
const DEFLATED = 8;
/** What stands where a place or a count is too large for its field: the true one is in a record of ZIP64, which is not read here. */
const WIDE = { place: 0xffffffff, count: 0xffff };
/** Bit 0 of an entry's flags: encrypted. */
const ENCRYPTED = 1;

/** Of which kind of file an archive is: each has its own sentences. */
export type ArchiveCode = 'gdtf.archive' | 'mvr.archive';

/** One file in an archive, by the archive's own list. */
export interface ZipEntry {
	readonly name: string;
	readonly flags: number;
	readonly method: number;
	readonly sum: number;
	readonly packed: number;
	readonly size: number;
	readonly at: number;
}

/** What needs no more than its name to be told. */
type PlainTrouble = Exclude<ArchiveTrouble, { readonly trouble: 'method' | 'name-outside' | 'too-large' }>['trouble'];

export const archiveTrouble = (code: ArchiveCode, what: PlainTrouble): InputError =>
	new InputError(code, '', { trouble: what });

export const tooLarge = (code: ArchiveCode, what: 'archive' | 'description' | 'list', bytes: number): InputError =>
	new InputError(code, '', { trouble: 'too-large', what, megabytes: megabytes(bytes) });

/**
 * The archive's own list of its files, which stands at its end.
 * @param limit bytes of the archive @throws InputError of that code for what is too large, is no archive, is empty, is damaged, or names a place outside itself
 */
export function zipEntries(bytes: Uint8Array, code: ArchiveCode, limit: number = LIMITS.archiveBytes): ZipEntry[] {
	if (bytes.length > limit) throw tooLarge(code, 'archive', limit);
	const { count, from, to } = listIn(bytes, 0, code);
	return entriesIn(bytes.subarray(from, to), count, code);
}

/** Bytes at an archive's end that hold the record which says where its list stands. */
export const ZIP_END = END.size + END.longestComment;

/**
 * Where an archive's list of its files stands, by its last bytes.
 * @param at where in the archive they begin
 */
export function listIn(tail: Uint8Array, at: number, code: ArchiveCode): { count: number; from: number; to: number } {
	const view = new DataView(tail.buffer, tail.byteOffset, tail.byteLength);
	const end = endOf(view);
	if (end === null) throw archiveTrouble(code, 'no-archive');
	const from = view.getUint32(end + 16, true);
	const count = view.getUint16(end + 10, true);
	if (from === WIDE.place || count === WIDE.count) throw archiveTrouble(code, 'wide');
	if (from > at + end) throw archiveTrouble(code, 'damaged');
	return { count, from, to: at + end };
}

/** The files that an archive's list names. @throws as {@link zipEntries} */
export function entriesIn(list: Uint8Array, count: number, code: ArchiveCode): ZipEntry[] {
	const view = new DataView(list.buffer, list.byteOffset, list.byteLength);
	const entries: ZipEntry[] = [];
	let at = 0;
	for (let i = 0; i < count; i++) {
		if (at + ENTRY.size > list.length || view.getUint32(at, true) !== ENTRY.signature)
			throw archiveTrouble(code, 'damaged');
		const nameLength = view.getUint16(at + 28, true);
		const next = at + ENTRY.size + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
		if (next > list.length) throw archiveTrouble(code, 'damaged');
		entries.push({
			// a name that is no UTF-8 is none of ours
			name: new TextDecoder().decode(list.subarray(at + ENTRY.size, at + ENTRY.size + nameLength)),
			flags: view.getUint16(at + 8, true),
			method: view.getUint16(at + 10, true),
			sum: view.getUint32(at + 16, true),
			packed: view.getUint32(at + 20, true),
			size: view.getUint32(at + 24, true),
			at: view.getUint32(at + 42, true),
		});
		at = next;
	}
	if (entries.length === 0) throw archiveTrouble(code, 'empty');
	for (const { name } of entries) {
		if (name.startsWith('/') || name.includes('\\') || name.split('/').includes('..'))
			throw new InputError(code, '', { trouble: 'name-outside', found: name.slice(0, 80) });
	}
	return entries;
}

/** Where the record stands that ends every zip; null in what is none. */
function endOf(view: DataView): number | null {
	const first = Math.max(0, view.byteLength - ZIP_END);
	for (let at = view.byteLength - END.size; at >= first; at--) {
		if (view.getUint32(at, true) === END.signature && at + END.size + view.getUint16(at + 20, true) === view.byteLength)
			return at;
	}
	return null;
}

/** Bytes that a file's own record has before its name, and after it up to what it holds, by the first of them. @throws InputError */
export function recordLength(head: Uint8Array, code: ArchiveCode): number {
	const view = new DataView(head.buffer, head.byteOffset, head.byteLength);
	if (head.length < LOCAL.size || view.getUint32(0, true) !== LOCAL.signature) throw archiveTrouble(code, 'damaged');
	return LOCAL.size + view.getUint16(26, true) + view.getUint16(28, true);
}

/**
 * What one file holds. What the archive says of it (size, check sum) is held to what comes out, and no more comes out than the limit.
 * @param limit bytes @throws InputError of that code
 */
export function unpacked(bytes: Uint8Array, entry: ZipEntry, code: ArchiveCode, limit: number): Uint8Array {
	const { at, flags, method, packed, size, sum } = entry;
	if ((flags & ENCRYPTED) !== 0) throw archiveTrouble(code, 'locked');
	if (size > limit) throw tooLarge(code, 'description', limit);
	const from = at + recordLength(bytes.subarray(at, at + LOCAL.size), code);
	if (from + packed > bytes.length) throw archiveTrouble(code, 'damaged');
	const data = bytes.subarray(from, from + packed);
	if (method !== STORED && method !== DEFLATED) throw new InputError(code, '', { trouble: 'method', method });
	const content = method === STORED ? data : inflated(data, code, limit);
	if (content.length !== size) throw archiveTrouble(code, 'size-false');
	if (checkSum(content) !== sum) throw archiveTrouble(code, 'sum-false');
	return content;
}

/** Bytes unpacked at a time: what is too large is found out before much of it is there. */
const PIECE = 8192;

function inflated(data: Uint8Array, code: ArchiveCode, limit: number): Uint8Array {
	const parts: Uint8Array[] = [];
	let length = 0;
	const stream = new Inflate((part) => {
		length += part.length;
		if (length > limit) throw tooLarge(code, 'description', limit);
		parts.push(part);
	});
	try {
		for (let at = 0; at === 0 || at < data.length; at += PIECE)
			stream.push(data.subarray(at, at + PIECE), at + PIECE >= data.length);
	} catch (error) {
		if (error instanceof InputError) throw error;
		throw archiveTrouble(code, 'damaged');
	}
	const whole = new Uint8Array(length);
	let at = 0;
	for (const part of parts) {
		whole.set(part, at);
		at += part.length;
	}
	return whole;
}

/** CRC-32 (ISO 3309) of each byte value. */
const SUMS = Uint32Array.from({ length: 256 }, (_, byte) => {
	let sum = byte;
	for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? 0xedb88320 ^ (sum >>> 1) : sum >>> 1;
	return sum;
});

/** CRC-32, as a zip keeps it of each file; the library does not check it. */
function checkSum(bytes: Uint8Array): number {
	let sum = 0xffffffff;
	for (const byte of bytes) sum = (SUMS[(sum ^ byte) & 255] as number) ^ (sum >>> 8);
	return ~sum >>> 0;
}

/** Bytes as text. @throws InputError of that code for what is no UTF-8 */
export function textOf(bytes: Uint8Array, code: ArchiveCode): string {
	try {
		return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
	} catch {
		throw archiveTrouble(code, 'not-utf-8');
	}
}
