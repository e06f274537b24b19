import {
	asideAt,
	asideKey,
	asideKeys,
	asidesIn,
	dropText,
	isNewer,
	isRecord,
	KEPT,
	nameFor,
	readJson,
	type SetAside,
	type Store,
	setAside,
	type Why,
} from '../../storage/index.ts';

const { bench } = KEPT;

/** Benches of others, from links and never touched, that are set aside at most: the oldest goes. One's own never goes by itself. */
const MOST_THEIRS = 8;

/** A bench set aside, as it is listed. */
export interface Aside extends Pick<SetAside, 'why' | 'at'> {
	readonly id: string;
	/** What it says of itself; null where it cannot be read. */
	readonly about: { readonly name: string; readonly fixtures: number; readonly done: number } | null;
	readonly isNewer: boolean;
	/** From a link, and never touched. */
	readonly isTheirs: boolean;
}

/** The name of a kept text among those set aside: the same bench later on takes the place of itself. */
export function asideNameOf(text: string): string {
	const { id } = partsOf(text);
	return typeof id === 'string' && /^[0-9a-f]{16}$/.test(id) ? id : nameFor(text);
}

/** The id among those set aside of a bench by its name. */
export const asideIdOf = (name: string): string => asideKey(bench.key, name);

/**
 * Sets a kept text aside, whole and as it is.
 * @param now ms since 1970
 * @returns its id; null where the store refuses
 */
export function putAside(store: Store, text: string, why: Why, now: number): string | null {
	const name = asideNameOf(text);
	if (!setAside(store, bench.key, text, why, now, name)) return null;
	dropOldest(store, name);
	return asideIdOf(name);
}

/** Keeps benches of others to their number. @param but by its name, one that stays */
export function dropOldest(store: Store, but: string): void {
	const theirs = asideList(store).filter((each) => each.isTheirs);
	for (const { id } of theirs.slice(MOST_THEIRS)) if (id !== asideIdOf(but)) dropText(store, id);
}

/** How many are set aside; 0 where the store may not be read. */
export const asideCount = (store: Store): number => asideKeys(store, 'bench').length;

/** Those set aside, the latest first. */
export const asideList = (store: Store): readonly Aside[] =>
	asidesIn(store, 'bench').map(({ key, why, at, text }) => ({ id: key, why, at, ...saysOf(text) }));

/** The text of one that was set aside, as it stood in its place; null where it is gone. */
export const asideText = (store: Store, id: string): string | null => asideAt(store, id)?.text ?? null;

/** As much as is set aside at all. */
const LISTING_BOUNDS = { ...bench.bounds, characters: 9_000_000 };

function partsOf(text: string): Readonly<Record<string, unknown>> {
	const found = readJson(text, LISTING_BOUNDS);
	return typeof found !== 'string' && isRecord(found.value) ? found.value : {};
}

/** Looked at no closer than a list needs: it is read in full when it is brought back. */
function saysOf(text: string): Pick<Aside, 'about' | 'isNewer' | 'isTheirs'> {
	const { kept, theirs } = partsOf(text);
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
		isNewer: isNewer(text, bench),
		isTheirs: theirs === true,
	};
}
