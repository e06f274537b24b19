/** Open rig files in the worker: what reads and writes them is fetched with the first one. */

import { gdtfNames } from '#words/gdtf/index.ts';
import { mvrWords } from '#words/mvr/index.ts';
import { rowWords } from '#words/plan/index.ts';
import {
	gatherMvr,
	type MvrArchive,
	type MvrLeft,
	type MvrPicks,
	readMvrArchive,
	readScene,
	type Scene,
	toPlan,
	writeMvr,
} from '../../../shared/mvr/index.ts';
import { type Plan, readPlan } from '../../../shared/plan/index.ts';
import { loadProfile, PROFILE_IDS, type Profile, profileAtHand } from '../../../shared/profile/index.ts';
import { loadProfiles } from '../../../shared/sheet/index.ts';
import { assumedText, leftOutText, mvrLeftText } from '../../wording/index.ts';

/** A loss in words, and where it is. */
export interface MvrNote {
	readonly code: MvrLeft['code'];
	readonly path: string;
	readonly says: string;
}

/** A kind of fixture in a file, and what stands for it. */
export interface KindShown {
	/** The fixture file as the scene names it; empty where it names none. */
	readonly spec: string;
	readonly count: number;
	readonly profile: { readonly id: string; readonly name: string } | null;
	readonly by: 'stock' | 'file' | 'picked' | null;
	/** What the file itself has, where a pick stands in its place. */
	readonly instead: string | null;
	readonly modes: readonly { readonly found: string; readonly mode: string | null }[];
	/** Modes there are to pick from. */
	readonly choices: readonly { readonly id: string; readonly name: string }[];
	/** What its fixture file lost, and what had to be assumed, in words. */
	readonly notes: readonly string[];
}

export interface MvrAnswer {
	readonly plan: Plan;
	/** Fixtures in the file, taken or not. */
	readonly fixtures: number;
	readonly kinds: readonly KindShown[];
	readonly left: readonly MvrNote[];
}

/** What can hurt somebody comes first: few read to the end of a long list. */
const FIRST: readonly MvrLeft['code'][] = [
	'overhead',
	'no-place',
	'unreadable',
	'place-cut',
	'place-changed',
	'object-unused',
	'link-power',
	'fixture-left',
	'mode-left',
	'too-many-own',
];
const rank = ({ code }: MvrLeft): number => (FIRST.includes(code) ? FIRST.indexOf(code) : FIRST.length);

const worded = (left: readonly MvrLeft[]): MvrNote[] =>
	left
		.toSorted((a, b) => rank(a) - rank(b))
		.map((each) => ({ code: each.code, path: each.path, says: mvrLeftText(each) }));

/** An MVR file with its scene. */
interface Opened {
	readonly archive: MvrArchive;
	readonly scene: Scene;
}

/** The file read last: some are tens of megabytes, which are read once and don't go to the page. */
let held: (Opened & { readonly n: number }) | null = null;

/** What of a file is read; null where the device doesn't hand it over. @throws InputError as the route `read` */
async function opened(file: Blob): Promise<Opened | null> {
	const read = async (from: number, to: number): Promise<Uint8Array> =>
		new Uint8Array(await file.slice(from, to).arrayBuffer());
	try {
		const archive = readMvrArchive(await gatherMvr({ size: file.size, read }));
		return { archive, scene: readScene(archive.scene) };
	} catch (error) {
		if (error instanceof DOMException) return null;
		throw error;
	}
}

export const routes = {
	/**
	 * A plan out of an MVR file; null where the device doesn't hand the file over. What of the file is read stays here for the next
	 * picks, until another is asked about or it is let go.
	 * @throws InputError `mvr.archive`, `mvr.xml` or `mvr.scene`; as `readPlan`, where what is made could not be opened again; NotFetched
	 */
	async read({
		file,
		n,
		own,
		picks,
	}: {
		readonly file: Blob;
		/** Tells this file from those before it: a file that comes over is a new one each time. */
		readonly n: number;
		readonly own: readonly Profile[];
		readonly picks: MvrPicks;
	}): Promise<MvrAnswer | null> {
		if (held?.n !== n) {
			held = null;
			const read = await opened(file);
			if (!read) return null;
			held = { n, ...read };
		}
		const { archive, scene } = held;
		await Promise.all(PROFILE_IDS.map(loadProfile));
		const bundled = PROFILE_IDS.flatMap((id) => profileAtHand(id) ?? []);
		const isBundled = (id: string): boolean => bundled.some((each) => each.id === id);
		const names = {
			rig: mvrWords.rig,
			fixture: ({ shape }: Profile, n: number): string => rowWords.names[shape](n),
			gdtf: gdtfNames,
		};
		const { plan, kinds, left } = toPlan(scene, archive, [...own, ...bundled], isBundled, names, picks);
		return {
			plan: readPlan(plan),
			fixtures: scene.fixtures.length,
			kinds: kinds.map(({ spec, count, profile, by, instead, modes, lost, asked }) => ({
				spec,
				count,
				profile: profile && { id: profile.id, name: profile.name },
				by,
				instead: instead?.name ?? null,
				modes,
				choices: (profile?.modes ?? []).map(({ id, name }) => ({ id, name })),
				notes: [...asked.map(assumedText), ...lost.map(leftOutText)],
			})),
			left: worded(left),
		};
	},
	/** Lets go of the file that was read last. */
	letGo(): void {
		held = null;
	},
	/**
	 * An MVR file of a plan.
	 * @throws NotFetched
	 */
	async write({
		plan,
	}: {
		readonly plan: Plan;
	}): Promise<{ bytes: Uint8Array<ArrayBuffer>; left: readonly MvrNote[] }> {
		await loadProfiles({ fixtures: plan.rows });
		const { bytes, left } = writeMvr(plan);
		return { bytes: new Uint8Array(bytes), left: worded(left) };
	},
};
