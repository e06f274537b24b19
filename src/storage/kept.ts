import { type JsonBounds, LINK_BOUNDS } from './json.ts';

/** A thing that is kept on the device. */
export interface KeptThing {
	/** Permanent: what it is kept under, or what the keys of several begin with. */
	readonly key: string;
	/** Of several of a kind: what follows in the key of each. */
	readonly names?: RegExp;
	/** The version that is written. It stands first in the text; where none stands there, it is the first. */
	readonly version: number;
	/** What its text may come to. */
	readonly bounds: JsonBounds;
	/** Where an earlier version of the site set some of it aside, besides `.damaged` behind the key. */
	readonly earlier?: string;
}

/** As much as a browser keeps for a whole site: one's own is not held to what a link may bring. */
const OWN_BOUNDS: JsonBounds = { characters: 8_000_000, deep: 32, things: 1_000_000 };

/**
 * All that the site keeps in the browser's stores, by ids that words are keyed by. Keys and texts are permanent: what any version
 * wrote is read by every later one. The trainer's records are in a database besides (`records.ts`).
 */
export const KEPT = Object.freeze({
	bench: { key: 'prep-bay.bench', version: 1, bounds: OWN_BOUNDS, earlier: 'prep-bay.bench.before-link' },
	// some hundred times what every drill and lesson there is comes to
	progress: { key: 'prep-bay.progress', version: 2, bounds: { ...LINK_BOUNDS, things: 50_000 } },
	// some ten times what every skill there is comes to
	review: { key: 'prep-bay.review', version: 1, bounds: { ...LINK_BOUNDS, things: 100_000 } },
	/** The crew's own fixtures: charts as text, and what was read from fixture files, some of a hundred kilobytes. */
	stock: { key: 'prep-bay.stock', version: 3, bounds: OWN_BOUNDS },
	/** The walk of the finder, and what the gig allows. The second version may carry a fixture of the crew's own, the third the plan it began from. */
	walk: { key: 'prep-bay.finder', version: 3, bounds: LINK_BOUNDS },
	/** That what to ask first of a walk that was handed on is yet to be read: of which walk, by when it began. */
	handed: { key: 'prep-bay.finder.handed', version: 1, bounds: LINK_BOUNDS },
	/** The finder's count of verdicts. */
	verdicts: { key: 'prep-bay.finder.verdicts', version: 1, bounds: LINK_BOUNDS },
	/** The hidden faults looked for last. */
	hidden: { key: 'prep-bay.hidden', version: 1, bounds: LINK_BOUNDS },
	/** Rigs as they are planned, each under an id of its own. The second version may say more of the supply, the third which row feeds which, the fourth that a panel was taken from a bench. */
	rigs: { key: 'prep-bay.rig.', names: /^[0-9a-f]{16}$/, version: 4, bounds: LINK_BOUNDS },
	/** What was ticked off of a rig, each under the rig's id. */
	ticks: { key: 'prep-bay.ticks.', names: /^[0-9a-f]{16}$/, version: 1, bounds: OWN_BOUNDS },
	/** The initials of whoever ticks off a rig. */
	initials: { key: 'prep-bay.initials', version: 1, bounds: LINK_BOUNDS },
	/** What was picked for fixtures and modes of open rig files, by what the files call them, and for columns of pasted lists by their headings. */
	matches: { key: 'prep-bay.matches', version: 1, bounds: LINK_BOUNDS },
	/** The boxes of the trainer's page. */
	draft: { key: 'prep-bay.papers.draft', version: 1, bounds: LINK_BOUNDS },
	/** Papers being sat, each under its digest. */
	sitting: { key: 'prep-bay.sitting.', names: /^[0-9a-f]{16}$/, version: 1, bounds: OWN_BOUNDS },
	/** The fragment of the paper begun last. */
	lastPaper: { key: 'prep-bay.sitting.last', version: 1, bounds: LINK_BOUNDS },
	/** Tasks half done, each under the name of its results and its seed. */
	unfinished: { key: 'prep-bay.unfinished.', names: /^[a-z0-9-]+\.\d+$/, version: 1, bounds: LINK_BOUNDS },
	/** Whether keys and ticks buzz, where that is switched off. Its key stands in `pages/buzz.ts` too. */
	buzz: { key: 'prep-bay.buzz', version: 1, bounds: LINK_BOUNDS },
	/** The choice of look. Its key stands in `pages/theme.ts` and in the early script too. */
	theme: { key: 'prep-bay.theme', version: 1, bounds: LINK_BOUNDS },
} satisfies Readonly<Record<string, KeptThing>>);

export type KeptId = keyof typeof KEPT;

/** Whether a key is of this site, whichever version of it keeps something there. */
export const isOurs = (key: string): boolean => key.startsWith('prep-bay.');

/** Which thing a key belongs to; null where this version keeps nothing under it. */
export function thingAt(key: string): KeptId | null {
	const ids = Object.keys(KEPT) as KeptId[];
	return ids.find((id) => isKeyOf(KEPT[id], key)) ?? null;
}

const isKeyOf = ({ key: own, names }: KeptThing, key: string): boolean =>
	names ? key.startsWith(own) && names.test(key.slice(own.length)) : key === own;

/** Whether a newer version of the site wrote a text: it is sound, and not for this one to touch. */
export const isNewer = (text: string, { version }: KeptThing): boolean =>
	Number(/^\s*\{\s*"version"\s*:\s*(\d+)/.exec(text)?.[1] ?? 0) > version;

/** The database that a trainer's records are kept in. Its version is that of the tables; each record says its own besides. */
export const DATABASE = Object.freeze({ name: 'prep-bay.papers', version: 2 });

/** What each list of records is kept under. */
export type List = 'papers' | 'results' | 'names' | 'counts';
export const LISTS: readonly List[] = ['papers', 'results', 'names', 'counts'];

type Databases = () => Promise<readonly { name?: string }[]>;

/** Asked of the browser; undefined where it cannot say. */
const ofBrowser = (): Databases | undefined =>
	typeof indexedDB === 'undefined' ? undefined : indexedDB.databases?.bind(indexedDB);

/**
 * Whether this device may have kept records before: only then is what reads them fetched with a page. A browser that cannot say
 * is taken to have.
 */
export async function mayHoldRecords(databases: Databases | undefined = ofBrowser()): Promise<boolean> {
	if (!databases) return true;
	try {
		return (await databases()).some(({ name }) => name === DATABASE.name);
	} catch {
		return true;
	}
}

/** Words for what is kept of one kind, from `content/`. */
export interface KeepingWords {
	readonly kept: string;
	readonly keptWords: string;
	readonly export: string;
	readonly import: string;
	readonly clear: string;
	readonly clearTitle: string;
	readonly clearWords: string;
	readonly clearDo: string;
	readonly keep: string;
	readonly fileName: string;
	readonly asideName: string;
	readonly saveAside: string;
	readonly dismiss: string;
	readonly notKept: string;
	/** 0 where all of it was. */
	readonly damaged: (count: number) => string;
}
