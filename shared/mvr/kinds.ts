import { isInputError } from '../error/index.ts';
import {
	type Asked,
	type GdtfNames,
	type LeftOut,
	nameOf,
	readArchive,
	readFixtureType,
	readXml,
	toProfile,
	writeGdtf,
	type XmlNode,
} from '../gdtf/index.ts';
import { oncePer } from '../memo/index.ts';
import { PLAN_PROFILES } from '../plan/index.ts';
import type { Mode, Profile } from '../profile/index.ts';
import type { MvrArchive } from './archive.ts';
import type { MvrLeft } from './left.ts';
import type { Scene } from './scene.ts';

/** A socket of a fixture, as its file has it; null where it does not say. */
export interface Socket {
	readonly is: 'data' | 'power' | null;
	readonly way: 'in' | 'out' | null;
}

/** What a person picked where the file leaves a choice, by what the file calls it. */
export interface MvrPicks {
	/** A profile id by fixture file, `''` for fixtures that name none. */
	readonly types: Readonly<Record<string, string>>;
	/** A mode id by {@link modeKey}. */
	readonly modes: Readonly<Record<string, string>>;
}

export const NO_PICKS: MvrPicks = Object.freeze({ types: {}, modes: {} });

/** What a mode of the file is picked by: profile id and mode, which the page puts together too. */
const modeKey = (profile: string, mode: string): string => `${profile}/${mode}`;

/** All fixtures of the scene that go by one fixture file. */
export interface Kind {
	/** The file's name as the scene writes it; empty for fixtures that name none. */
	readonly spec: string;
	readonly count: number;
	/** What stands for it: of stock, or out of the file; null where the person must pick. */
	readonly profile: Profile | null;
	/** `stock`: the file is what this house writes of that fixture; `file`: made of the file, with a stand-in panel; `picked` by the person. */
	readonly by: 'stock' | 'file' | 'picked' | null;
	/** What the file itself has, where a pick stands in its place; else null. */
	readonly instead: Profile | null;
	/** Modes its fixtures are in, as the scene writes them, each with a mode of the profile; null where the person must pick. */
	readonly modes: readonly { readonly found: string; readonly mode: string | null }[];
	readonly sockets: ReadonlyMap<string, Socket>;
	/** What the fixture file lost on the way, and what had to be assumed; empty unless `by` is `file`. */
	readonly lost: readonly LeftOut[];
	readonly asked: readonly Asked[];
}

interface Found {
	readonly profile: Profile;
	readonly by: 'stock' | 'file';
	readonly lost: readonly LeftOut[];
	readonly asked: readonly Asked[];
	readonly sockets: ReadonlyMap<string, Socket>;
}

/** What stands in the file that this house writes of a profile. */
const writtenAs = oncePer((profile: Profile) => writeGdtf(profile).description);

/** Most kinds whose files are read: as many profiles as a plan carries. */
export const MOST_KINDS = PLAN_PROFILES;

/**
 * What each kind of fixture of a scene is here. A fixture file that is, word for word, what this house would write of a fixture of
 * stock stands for that one; of any other a profile is made. The same content under two names is one profile.
 * @param stock fixtures that may be meant or picked
 */
export function kindsOf(
	{ fixtures }: Scene,
	archive: MvrArchive,
	stock: readonly Profile[],
	names: GdtfNames,
	picks: MvrPicks,
	left: MvrLeft[],
): Kind[] {
	const written = new Map(stock.map((profile) => [writtenAs(profile), profile]));
	return [...Map.groupBy(fixtures, ({ spec }) => spec ?? '')].map(([spec, all], i): Kind => {
		const path = all[0]?.path ?? '';
		const found = i < MOST_KINDS ? readFile(spec, path, archive, written, names, left) : null;
		if (i >= MOST_KINDS) left.push({ path, code: 'too-many-kinds', facts: { spec, limit: MOST_KINDS } });
		const picked = Object.hasOwn(picks.types, spec) ? stock.find(({ id }) => id === picks.types[spec]) : undefined;
		const profile = picked ?? found?.profile ?? null;
		const isOfFile = !picked && found?.by === 'file';
		return {
			spec,
			count: all.length,
			profile,
			by: picked ? 'picked' : (found?.by ?? null),
			instead: picked && found && found.profile.id !== picked.id ? found.profile : null,
			modes: [...new Set(all.map(({ mode }) => mode ?? ''))].map((mode) => ({
				found: mode,
				mode: profile && modeFor(profile, mode, picks),
			})),
			sockets: found?.sockets ?? new Map(),
			lost: isOfFile ? found.lost : [],
			asked: isOfFile ? found.asked : [],
		};
	});
}

function readFile(
	spec: string,
	path: string,
	archive: MvrArchive,
	written: ReadonlyMap<string, Profile>,
	names: GdtfNames,
	left: MvrLeft[],
): Found | null {
	if (spec === '') return null;
	try {
		const bytes = archive.file(spec);
		if (!bytes) {
			left.push({ path, code: 'file-missing', facts: { spec } });
			return null;
		}
		const { description } = readArchive(bytes);
		const own = written.get(description);
		const sockets = socketsIn(readXml(description));
		if (own) return { profile: own, by: 'stock', lost: [], asked: [], sockets };
		const { profile, left: lost, asked } = toProfile(readFixtureType(description), names);
		return { profile, by: 'file', lost, asked, sockets };
	} catch (error) {
		if (!isInputError(error)) throw error;
		const { code, path: place, facts } = error;
		left.push({ path, code: 'file-refused', facts: { spec }, because: { code, path: place, facts } });
		return null;
	}
}

/** The mode of a profile that the scene means: as picked, by its name, or the only one there is where the scene names none. */
function modeFor(profile: Profile, found: string, { modes: picks }: MvrPicks): string | null {
	const key = modeKey(profile.id, found);
	const picked = Object.hasOwn(picks, key) ? picks[key] : undefined;
	const { modes } = profile;
	if (modes.some(({ id }) => id === picked)) return picked ?? null;
	if (found === '') return modes.length === 1 ? (modes[0]?.id ?? null) : null;
	const alike = (same: (mode: Mode) => boolean): string | null => {
		const those = modes.filter(same);
		return those.length === 1 ? (those[0]?.id ?? null) : null;
	};
	const plain = (text: string): string => nameOf(text).toLowerCase();
	return alike(({ name }) => nameOf(name) === nameOf(found)) ?? alike(({ name }) => plain(name) === plain(found));
}

function socketsIn(root: XmlNode): Map<string, Socket> {
	const sockets = new Map<string, Socket>();
	const walk = (node: XmlNode): void => {
		if (node.name === 'WiringObject') {
			const { Name = '', SignalType = '', ComponentType = '' } = node.attributes;
			sockets.set(Name.trim(), {
				is: /^power$/i.test(SignalType) ? 'power' : /dmx/i.test(SignalType) ? 'data' : null,
				way: /^(power)?input$/i.test(ComponentType) ? 'in' : /^output$/i.test(ComponentType) ? 'out' : null,
			});
		}
		for (const child of node.children) walk(child);
	};
	walk(root);
	return sockets;
}
