import type { GdtfNames } from '../gdtf/index.ts';
import {
	alongRoom,
	emptyPlan,
	lineOrder,
	type NewRow,
	PLAN_PROFILES,
	type Plan,
	placed,
	withRows,
} from '../plan/index.ts';
import type { Profile } from '../profile/index.ts';
import { readAddress, type Spot } from './address.ts';
import { originOf } from './along.ts';
import type { MvrArchive } from './archive.ts';
import { type Kind, kindsOf, type MvrPicks, NO_PICKS } from './kinds.ts';
import type { MvrLeft } from './left.ts';
import { feedsOf, type Taken } from './links.ts';
import { isTurned } from './place.ts';
import type { Scene, SceneFixture } from './scene.ts';

/** Bounds of a plan's places, metres. */
const ALONG = 200;
const HIGH = 40;
/** Metres from which on a fixture is taken to hang overhead (ours, and on the cautious side: what hangs is cautioned and weighed). */
export const OVERHEAD_FROM = 2;
/** Most characters of a fixture's name. */
const LONGEST = 60;

/** Words for what a file leaves unsaid, from `content/`. */
export interface MvrNames {
	/** The rig. */
	readonly rig: string;
	/** A fixture without a name, by its kind and number. */
	readonly fixture: (profile: Profile, n: number) => string;
	readonly gdtf: GdtfNames;
}

/** A plan out of a scene, and all that was lost on the way. */
export interface PlanFromScene {
	/** Its fixtures as far as each is known: what waits for a pick is not in it. */
	readonly plan: Plan;
	readonly kinds: readonly Kind[];
	readonly left: readonly MvrLeft[];
}

/**
 * Makes a plan of what an MVR file says: fixtures with modes, start addresses and places, and data cables as it has them.
 * @param stock fixtures that may be meant or picked; those that are not bundled go into the plan's own where they are used
 */
export function toPlan(
	scene: Scene,
	archive: MvrArchive,
	stock: readonly Profile[],
	isBundled: (id: string) => boolean,
	names: MvrNames,
	picks: MvrPicks = NO_PICKS,
): PlanFromScene {
	const left: MvrLeft[] = [...scene.left];
	const kinds = kindsOf(scene, archive, stock, names.gdtf, picks, left);
	const unused = archive.names.length - kinds.filter(({ by }) => by === 'stock' || by === 'file').length;
	if (unused > 0) left.push({ path: '', code: 'files-unused', facts: { count: unused } });
	for (const { profile, by, lost, asked } of kinds)
		if (profile && by === 'file')
			left.push({
				path: '',
				code: 'stand-in',
				facts: { name: profile.name, lost: lost.length, assumed: asked.length },
			});
	const bySpec = new Map(kinds.map((kind) => [kind.spec, kind]));
	const all = scene.fixtures.flatMap((fixture, i) => takenOf(fixture, i, bySpec, left) ?? []);
	const own = ownOf(all, isBundled, left);
	const known = all.filter(({ profile: { id } }) => isBundled(id) || own.has(id));
	const places = placesOf(known, left);
	const spots = spotsOf(known, scene.fixtures, left);
	const seen = new Set<string>();
	for (const { fixture, called } of known) {
		if (fixture.uuid !== '' && seen.has(fixture.uuid))
			left.push({ path: fixture.path, code: 'uuid-twice', facts: { name: called } });
		seen.add(fixture.uuid);
	}
	const rows = known.map(({ profile, mode, name }, i): NewRow => {
		const place = places[i];
		return {
			profile: profile.id,
			mode,
			...(name === null ? {} : { name }),
			// where it isn't known whether one hangs, it is taken to: too much care hurts nobody
			...(place === null || place === undefined ? { overhead: true } : placeOf(place)),
			...spots[i],
		};
	});
	const high = Math.max(6, ...places.map((place) => Math.ceil(place?.y ?? 0)));
	const begun = withRows({ ...emptyPlan(names.rig), profiles: [...own.values()] }, rows, names.fixture);
	const patched = addressed({
		...begun,
		hall: { width: Math.max(begun.hall.width, ...places.map((place) => Math.ceil(place?.x ?? 0))), height: high },
		rows: begun.rows.map((row, i) => ({ ...row, place: { ...row.place, x: places[i]?.x ?? row.place.x } })),
	});
	return { plan: asRoomHasIt(linked(patched, known, left)), kinds, left };
}

/** The plan with a start address for each fixture that has none. */
function addressed(plan: Plan): Plan {
	const loose = new Set(plan.rows.flatMap(({ id, labelled }) => (labelled ? [] : [id])));
	return loose.size > 0 ? placed(plan, loose, plan.rules.universe) : plan;
}

/** The plan with the data cables of the file. @param known what its rows were made of, in their order */
function linked(plan: Plan, known: readonly Known[], left: MvrLeft[]): Plan {
	const taken = known.map(({ fixture, kind }, i): Taken => {
		const row = plan.rows[i];
		return { fixture, kind, name: row?.name ?? '', universe: row?.universe ?? 0 };
	});
	const feeds = feedsOf(taken, left);
	const idOf = new Map(known.map(({ fixture }, i) => [fixture.path, plan.rows[i]?.id]));
	const rows = plan.rows.map((row, i) => {
		const after = idOf.get(feeds.get(known[i]?.fixture.path ?? '') ?? '');
		return after === undefined ? row : { ...row, after };
	});
	return { ...plan, rows };
}

/** The plan with no word on the line of a universe where that says what the room says anyway: fixtures that move take their cables along. */
function asRoomHasIt(plan: Plan): Plan {
	const along = new Set<number>();
	for (const [universe, rows] of Map.groupBy(plan.rows, (row) => row.universe)) {
		const room = alongRoom(rows);
		if (lineOrder(rows).every((row, i) => row === room[i])) along.add(universe);
	}
	return {
		...plan,
		rows: plan.rows.map(({ after, ...row }) =>
			after === undefined || along.has(row.universe) ? row : { ...row, after },
		),
	};
}

/** How one stands or hangs. What lies below the floor was measured down from where it hangs. */
const placeOf = ({ x, y, isBelow }: Place): Pick<NewRow, 'x' | 'y' | 'overhead'> =>
	isBelow
		? { x: Math.min(ALONG - 2, x), overhead: true }
		: { x: Math.min(ALONG - 2, x), y, overhead: y > OVERHEAD_FROM };

interface Place {
	readonly x: number;
	readonly y: number;
	/** Whether the file has it below the floor. */
	readonly isBelow: boolean;
}

interface Known {
	readonly fixture: SceneFixture;
	readonly kind: Kind;
	readonly profile: Profile;
	readonly mode: string;
	/** Null where the plan gives one. */
	readonly name: string | null;
	/** For a sentence. */
	readonly called: string;
}

function takenOf(
	fixture: SceneFixture,
	index: number,
	kinds: ReadonlyMap<string, Kind>,
	left: MvrLeft[],
): Known | null {
	const { path } = fixture;
	const said = fixture.name ?? fixture.fixtureId;
	const name = said?.trim().slice(0, LONGEST).trim() || null;
	const called = name ?? `${index + 1}`;
	const spec = fixture.spec ?? '';
	const kind = kinds.get(spec);
	if (!kind?.profile) {
		left.push({ path, code: 'fixture-left', facts: { name: called, spec } });
		return null;
	}
	const mode = kind.modes.find(({ found }) => found === (fixture.mode ?? ''))?.mode ?? null;
	if (mode === null) {
		left.push({ path, code: 'mode-left', facts: { name: called, mode: fixture.mode ?? '' } });
		return null;
	}
	if (said !== null && name !== said.trim())
		left.push({ path, code: 'name-cut', facts: { name: called, found: said.slice(0, 200) } });
	if (name === null) left.push({ path, code: 'name-made', facts: { name: called } });
	else if (fixture.fixtureId !== null && fixture.name !== null && fixture.fixtureId !== fixture.name) countId(left);
	return { fixture, kind, profile: kind.profile, mode, name, called };
}

/** Profiles that the plan carries, by id: those used first, as many as it takes. */
function ownOf(
	known: readonly Known[],
	isBundled: (id: string) => boolean,
	left: MvrLeft[],
): ReadonlyMap<string, Profile> {
	const used = [...Map.groupBy(known, ({ profile }) => profile.id)].filter(([id]) => !isBundled(id));
	for (const [, [first, ...others]] of used.slice(PLAN_PROFILES)) {
		if (!first) continue;
		const { profile, fixture } = first;
		const facts = { name: profile.name, count: 1 + others.length, limit: PLAN_PROFILES };
		left.push({ path: fixture.path, code: 'too-many-own', facts });
	}
	return new Map(used.slice(0, PLAN_PROFILES).flatMap(([id, [first]]) => (first ? [[id, first.profile]] : [])));
}

/** Fixture ids, for which a plan has no place, are counted as one loss. */
function countId(left: MvrLeft[]): void {
	const at = left.findIndex(
		({ code, facts }) => code === 'part-unused' && 'part' in facts && facts.part === 'FixtureID',
	);
	const before = left[at];
	const count = before?.code === 'part-unused' ? before.facts.count + 1 : 1;
	left.splice(at < 0 ? left.length : at, at < 0 ? 0 : 1, {
		path: '',
		code: 'part-unused',
		facts: { part: 'FixtureID', count },
	});
}

/** Metres along the wall and above the floor, to the millimetre; null for one with no place. */
function placesOf(known: readonly Known[], left: MvrLeft[]): (Place | null)[] {
	const metres = (millimetres: number): number => Math.round(millimetres) / 1000;
	const from = originOf(
		known.flatMap(({ fixture: { matrix } }) => (matrix ? metres(matrix.o[0]) : [])),
		ALONG,
	);
	if (from !== 0)
		left.push({ path: '', code: 'moved', facts: { metres: Math.abs(from), to: from < 0 ? 'right' : 'left' } });
	let hung = 0;
	const places = known.map(({ fixture, called: name }) => {
		const { path, matrix, badMatrix } = fixture;
		if (!matrix) {
			left.push(
				badMatrix === null
					? { path, code: 'no-place', facts: { name } }
					: { path, code: 'unreadable', facts: { name, part: 'Matrix', found: badMatrix.slice(0, 80) } },
			);
			return null;
		}
		// told as the file has it, before all was moved
		const held = (of: 'along' | 'height', found: number, from: number, most: number): number => {
			const moved = found - from;
			const within = Math.round(1000 * Math.min(most, Math.max(0, moved))) / 1000;
			if (moved < 0 || moved > most) left.push({ path, code: 'place-cut', facts: { name, of, found, metres: within } });
			return within;
		};
		if (isTurned(matrix)) left.push({ path, code: 'turned', facts: { name } });
		if (metres(matrix.o[1]) !== 0) left.push({ path, code: 'depth', facts: { name, metres: metres(matrix.o[1]) } });
		const x = held('along', metres(matrix.o[0]), from, ALONG);
		const y = held('height', metres(matrix.o[2]), 0, HIGH);
		if (y > OVERHEAD_FROM) hung++;
		return { x, y, isBelow: metres(matrix.o[2]) < 0 };
	});
	if (hung > 0) left.push({ path: '', code: 'overhead', facts: { count: hung, metres: OVERHEAD_FROM } });
	return places;
}

/** Start addresses; empty for what is not patched. */
function spotsOf(
	known: readonly Known[],
	all: readonly SceneFixture[],
	left: MvrLeft[],
): (Spot | Record<string, never>)[] {
	const byUuid = new Map(all.map((each) => [each.uuid, each]));
	return known.map(({ fixture, called: name }) => {
		const { path, multipatch, addresses } = fixture;
		const lead = multipatch === null ? undefined : byUuid.get(multipatch);
		if (multipatch !== null) left.push({ path, code: 'multipatch', facts: { name } });
		const all = addresses.length > 0 ? addresses : (lead?.addresses ?? []);
		// a fixture here has one start address: that of its first break
		const sorted = all.toSorted((a, b) => a.break - b.break);
		const [first, ...others] = sorted;
		for (const { break: at, text } of others) {
			if (readAddress(text) !== 'none')
				left.push({ path, code: 'other-break', facts: { name, break: at, found: text.slice(0, 40) } });
		}
		const spot = first ? readAddress(first.text) : 'none';
		if (spot === null) left.push({ path, code: 'address-bad', facts: { name, found: first?.text.slice(0, 40) ?? '' } });
		if (spot === 'none') left.push({ path, code: 'not-patched', facts: { name } });
		return spot === null || spot === 'none' ? {} : spot;
	});
}
