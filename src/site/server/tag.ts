import { createHash } from 'node:crypto';
import type { Stats } from 'node:fs';
import { readFile } from 'node:fs/promises';

/**
 * Tags files by what is in them, each read once for as long as it stays as it is. A weak tag: it is the same in every content coding
 * (RFC 9110, 8.8.1).
 */
export function keepTags(): (file: string, about: Stats) => Promise<string> {
	const kept = new Map<string, Promise<string>>();
	return (file, { mtimeMs, size, ino }) => {
		const key = [file, mtimeMs, size, ino].join('\n');
		let tag = kept.get(key);
		if (!tag) {
			tag = readFile(file).then(
				(bytes) => `W/"${createHash('sha256').update(bytes).digest('base64url').slice(0, 22)}"`,
			);
			kept.set(key, tag);
		}
		return tag;
	};
}

/** One member of the list, or an empty one, and the comma or the end behind it (RFC 9110, 8.8.3 and 5.6.1). */
const MEMBER = /[ \t]*(?:(?:W\/)?"([\x21\x23-\x7e\x80-\xff]*)")?[ \t]*(?:,|$)/y;

/**
 * Whether a browser has the file already, by the weak comparison of tags (RFC 9110, 8.8.3.2 and 13.1.2).
 * @param told its `if-none-match`: `*`, or tags with commas between; empty where it sent none. What is no such list is taken for none
 * @param tag the file's own
 */
export function hasIt(told: string, tag: string): boolean {
	if (told.trim() === '*') return true;
	const own = /"(.*)"$/.exec(tag)?.[1];
	let found = false;
	for (MEMBER.lastIndex = 0; MEMBER.lastIndex < told.length; ) {
		const member = MEMBER.exec(told);
		if (!member) return false;
		if (member[1] === own) found = true;
	}
	return found;
}
