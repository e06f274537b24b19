import { type BrowserStore, dropText, keysIn, putText, textAt } from './device.ts';
import { readJson } from './json.ts';
import { isNewer, KEPT, type KeptId, type KeptThing, thingAt } from './kept.ts';

/** Each stands under a key of its own, behind that of its place: two tabs that set one aside at once are in nobody's way. */
const ASIDE = '.aside.';
/** Where earlier versions of the site set aside what they could not read. What stands there is listed with the rest. */
const DAMAGED = '.damaged';
const VERSION = 1;

/** What made it give up its place: a link, a file, another tab, another one brought back, damage, a newer version of the site. */
const WHYS = ['link', 'file', 'tab', 'back', 'damaged', 'newer'] as const;
export type Why = (typeof WHYS)[number];

/** Something that gave up its place, whole and as it stood there. */
export interface SetAside {
	/** Where it lies now. */
	readonly key: string;
	/** What kind of thing it is. */
	readonly of: KeptId;
	readonly why: Why;
	/** ms since 1970; null where an earlier version did not note it. */
	readonly at: number | null;
	readonly text: string;
}

/** A name for a text that has none of its own: FNV-1a, 32 bits (from memory), and its length. Two that share it would be one. */
export function nameFor(text: string): string {
	let hash = 0x811c9dc5;
	for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
	return `${(hash >>> 0).toString(16)}-${text.length}`;
}

/** Where a text of a place stands once it is set aside. */
export const asideKey = (place: string, name: string): string => place + ASIDE + name;

/** A text that gives up its place. */
export interface Leaving {
	/** The key it stood under. */
	readonly place: string;
	readonly text: string;
	readonly why: Why;
	/** ms since 1970. */
	readonly now: number;
	/** What tells it from others, made from the text unless told; the same name later on takes the place of itself. */
	readonly name?: string;
}

/** Sets a text aside, whole and as it is. @returns false where there is no room, or the store refuses */
export function setAside(store: BrowserStore, { place, text, why, now, name = nameFor(text) }: Leaving): boolean {
	const record = JSON.stringify({ version: VERSION, at: now, why, text });
	return putText(store, asideKey(place, name), record) === 'kept';
}

/**
 * As `setAside`, so that something else may be written in its place. What does not fit twice leaves its place first, and goes back
 * where it fits nowhere else.
 */
export function makeRoom(store: BrowserStore, leaving: Leaving): boolean {
	const { place, text } = leaving;
	if (setAside(store, leaving)) return true;
	// a store that takes nothing at all would not take it back either
	if (textAt(store, place) !== text || putText(store, place, text) !== 'kept') return false;
	if (!dropText(store, place)) return false;
	if (setAside(store, leaving)) return true;
	putText(store, place, text);
	return false;
}

/** Moves a text that is of no use out of its place. Where the store refuses it stays, and is met again. */
export function moveAside(store: BrowserStore, leaving: Leaving): boolean {
	if (!makeRoom(store, leaving)) return false;
	const { place, text } = leaving;
	// another tab may have written meanwhile
	return textAt(store, place) !== text || dropText(store, place);
}

/** Keys of what was set aside of one kind, or of all. */
export const asideKeys = (store: BrowserStore, of?: KeptId): string[] =>
	keysIn(store).filter((key) => {
		const id = kindAside(key);
		return id !== null && (of === undefined || id === of);
	});

/** What was set aside, of one kind or of all, the latest first. */
export function asidesIn(store: BrowserStore, of?: KeptId): SetAside[] {
	return asideKeys(store, of)
		.flatMap((key) => asideAt(store, key) ?? [])
		.sort((a, b) => (b.at ?? 0) - (a.at ?? 0));
}

/** What lies under a key of something set aside; null where it is gone. */
export function asideAt(store: BrowserStore, key: string): SetAside | null {
	const of = kindAside(key);
	const whole = textAt(store, key);
	if (of === null || whole === null) return null;
	const isEarlier = !key.includes(ASIDE);
	if (isEarlier) return { key, of, why: key === earlierOf(of) ? 'link' : 'damaged', at: null, text: whole };
	const found = readJson(whole, LISTING_BOUNDS);
	const { text, why, at } = (typeof found === 'string' ? {} : found.value) as Record<string, unknown>;
	// what cannot be read is still listed, and can be saved
	if (typeof text !== 'string') return { key, of, why: 'damaged', at: null, text: whole };
	return { key, of, why: WHYS.find((each) => each === why) ?? 'damaged', at: typeof at === 'number' ? at : null, text };
}

/** A whole store's worth, quoted once more. */
const LISTING_BOUNDS = { characters: 9_000_000, deep: 34, things: 1_000_000 } as const;

/** What kind of thing lies under a key of something set aside; null where the key is none of such. */
function kindAside(key: string): KeptId | null {
	const at = key.indexOf(ASIDE);
	if (at >= 0) return thingAt(key.slice(0, at));
	if (key.endsWith(DAMAGED)) return thingAt(key.slice(0, -DAMAGED.length));
	return (Object.keys(KEPT) as KeptId[]).find((id) => earlierOf(id) === key) ?? null;
}

const earlierOf = (id: KeptId): string | undefined => (KEPT[id] as KeptThing).earlier;

/**
 * Puts a text in its place. What a newer version of the site left there is set aside first; where there is no room for both it
 * stays, and the text is not kept.
 * @param name of several of a kind, which
 */
export function putInPlace(
	store: BrowserStore,
	thing: KeptThing,
	text: string,
	{ name = '', now = Date.now() }: { readonly name?: string; readonly now?: number } = {},
): ReturnType<typeof putText> {
	const place = thing.key + name;
	const there = textAt(store, place);
	if (there !== null && isNewer(there, thing) && !makeRoom(store, { place, text: there, why: 'newer', now }))
		return 'full';
	return putText(store, place, text);
}
