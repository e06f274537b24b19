import { readJson } from '../../pack/index.ts';
import type { Store } from './device.ts';

/** Benches set aside stand each under a key of its own: two tabs that set one aside at once do not get in each other's way. */
const ASIDE = 'prep-bay.bench.aside.';
/** Where earlier versions set aside the last one of each kind. What stands there is listed with the rest. */
const EARLIER: Readonly<Record<string, Why>> = {
	'prep-bay.bench.damaged': 'damaged',
	'prep-bay.bench.before-link': 'link',
};
const VERSION = 1;

/** What made a bench give up its place: a link, another tab, damage, a bench brought back. */
const WHYS = ['link', 'tab', 'damaged', 'back'] as const;
export type Why = (typeof WHYS)[number];

/** Benches of others, from links and never touched, that are set aside at most: the oldest goes. One's own never goes by itself. */
const MOST_THEIRS = 8;

const LISTING_BOUNDS = { characters: 9_000_000, deep: 34, things: 1_000_000 } as const;

/** A bench set aside, as it is listed. */
export interface Aside {
	readonly id: string;
	readonly why: Why;
	/** ms since 1970; null where an earlier version did not note it. */
	readonly at: number | null;
	/** What it says of itself; null where it cannot be read. */
	readonly about: { readonly name: string; readonly fixtures: number; readonly done: number } | null;
	readonly isNewer: boolean;
	/** From a link, and never touched. */
	readonly isTheirs: boolean;
}

/** The name of a kept text among those set aside: the same bench later on takes the place of itself. */
export function asideIdOf(text: string): string {
	const { id } = partsOf(text);
	return typeof id === 'string' && /^[0-9a-f]{16}$/.test(id) ? id : nameFor(text);
}

/** A name for a text that has none of its own: FNV-1a, 32 bits (from memory), and its length. Two that share it would be one. */
function nameFor(text: string): string {
	let hash = 0x811c9dc5;
	for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
	return `${(hash >>> 0).toString(16)}-${text.length}`;
}

/**
 * Sets a kept text aside, whole and as it is.
 * @param now ms since 1970
 * @returns its name; null where the store refuses
 */
export function putAside(store: Store, text: string, why: Why, now: number): string | null {
	const id = asideIdOf(text);
	try {
		store().setItem(ASIDE + id, JSON.stringify({ version: VERSION, at: now, why, text }));
		const theirs = asideList(store).filter((each) => each.isTheirs);
		for (const { id: oldest } of theirs.slice(MOST_THEIRS)) if (oldest !== id) dropAside(store, oldest);
		return id;
	} catch {
		return null;
	}
}

/** How many are set aside; 0 where the store may not be read. */
export const asideCount = (store: Store): number => keysOf(store).length;

/** Those set aside, the latest first. */
export function asideList(store: Store): readonly Aside[] {
	const all = keysOf(store).flatMap((key): Aside[] => {
		const found = entryOf(store, key);
		if (!found) return [];
		const { text, why, at } = found;
		return [{ id: key.startsWith(ASIDE) ? key.slice(ASIDE.length) : key, why, at, ...saysOf(text) }];
	});
	return all.sort((a, b) => (b.at ?? 0) - (a.at ?? 0));
}

/** The text of one that was set aside, as it stood in its place; null where it is gone. */
export const asideText = (store: Store, id: string): string | null => entryOf(store, keyOf(id))?.text ?? null;

/** Forgets one that was set aside. */
export function dropAside(store: Store, id: string): void {
	try {
		store().removeItem(keyOf(id));
	} catch {
		// nothing to forget where nothing may be read
	}
}

const keyOf = (id: string): string => (Object.hasOwn(EARLIER, id) ? id : ASIDE + id);

function keysOf(store: Store): string[] {
	try {
		const held = store();
		const keys = Array.from({ length: held.length }, (_, i) => held.key(i) ?? '');
		return keys.filter((key) => key.startsWith(ASIDE) || Object.hasOwn(EARLIER, key));
	} catch {
		return [];
	}
}

function entryOf(store: Store, key: string): { text: string; why: Why; at: number | null } | null {
	let whole: string | null;
	try {
		whole = store().getItem(key);
	} catch {
		return null;
	}
	if (whole === null) return null;
	const earlier = EARLIER[key];
	if (earlier) return { text: whole, why: earlier, at: null };
	const found = readJson(whole, LISTING_BOUNDS);
	const { text, why, at } = (typeof found === 'string' ? {} : found.value) as Record<string, unknown>;
	// what cannot be read is still listed, and can be saved
	if (typeof text !== 'string') return { text: whole, why: 'damaged', at: null };
	return { text, why: WHYS.find((each) => each === why) ?? 'damaged', at: typeof at === 'number' ? at : null };
}

function partsOf(text: string): Record<string, unknown> {
	const found = readJson(text, LISTING_BOUNDS);
	return typeof found === 'string' || found.value === null ? {} : (found.value as Record<string, unknown>);
}

/** Looked at no closer than a list needs: it is read in full when it is brought back. */
function saysOf(text: string): Pick<Aside, 'about' | 'isNewer' | 'isTheirs'> {
	const { version, kept, theirs } = partsOf(text);
	const [sheet, log] = (Array.isArray(kept) ? kept : []) as [{ name?: unknown; fixtures?: unknown }?, unknown?];
	const { name, fixtures } = sheet ?? {};
	const readable = typeof name === 'string' && Array.isArray(fixtures) && Array.isArray(log);
	return {
		about: readable
			? {
					name,
					fixtures: fixtures.length,
					done: log.filter((event: { type?: unknown } | null) => event?.type !== 'clock.wait').length,
				}
			: null,
		isNewer: typeof version === 'number' && version > VERSION,
		isTheirs: theirs === true,
	};
}
