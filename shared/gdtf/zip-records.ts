import { END, ENTRY, LOCAL, type ZipEntry } from './zip.ts';

/**
 * An archive made of files' records as they stand in another one, nothing unpacked. A file without a record there is in its list
 * alone.
 */
export function zipOf(
	entries: readonly ZipEntry[],
	records: ReadonlyMap<ZipEntry, Uint8Array>,
): Uint8Array<ArrayBuffer> {
	const empty = new Uint8Array(LOCAL.size);
	new DataView(empty.buffer).setUint32(0, LOCAL.signature, true);
	const names = entries.map(({ name }) => new TextEncoder().encode(name));
	const held = empty.length + [...records.values()].reduce((sum, { length }) => sum + length, 0);
	const listed = names.reduce((sum, { length }) => sum + ENTRY.size + length, 0);
	const bytes = new Uint8Array(held + listed + END.size);
	const view = new DataView(bytes.buffer);
	bytes.set(empty);
	let to = empty.length;
	let at = held;
	for (const [i, entry] of entries.entries()) {
		const name = names[i] ?? new Uint8Array();
		const record = records.get(entry);
		view.setUint32(at, ENTRY.signature, true);
		view.setUint16(at + 8, entry.flags, true);
		view.setUint16(at + 10, entry.method, true);
		view.setUint32(at + 16, entry.sum, true);
		view.setUint32(at + 24, entry.size, true);
		view.setUint16(at + 28, name.length, true);
		if (record) {
			view.setUint32(at + 20, entry.packed, true);
			view.setUint32(at + 42, to, true);
			bytes.set(record, to);
			to += record.length;
		}
		bytes.set(name, at + ENTRY.size);
		at += ENTRY.size + name.length;
	}
	view.setUint32(at, END.signature, true);
	view.setUint16(at + 8, entries.length, true);
	view.setUint16(at + 10, entries.length, true);
	view.setUint32(at + 12, listed, true);
	view.setUint32(at + 16, held, true);
	return bytes;
}
