import type { Chance, Facts, Ground, Told } from '../../shared/paper/index.ts';
import { BUNDLED, bundledProfile, modeOf, type Profile } from '../../shared/profile/index.ts';
import { profileFor } from '../../shared/sheet/index.ts';
import { type Drill, type DrillKind, makeDrillWhere } from '../drill/index.ts';

/** Highest seed of a drill in a paper. */
const TOP_SEED = 0xffffffff;

/** Drills are made on bundled fixtures: those that the questions are about. */
export const drillable = ({ profiles }: Ground): readonly string[] =>
	profiles.filter((profile) => bundledProfile(profile.id) === profile).map(({ id }) => id);

/**
 * Bundled fixtures that a drill of a kind is often made of with no other beside it: where to look first for a drill on some
 * fixtures. A test holds it to the drills; nothing but time hangs on it.
 */
export const OFTEN_ON: Readonly<Record<DrillKind, readonly string[]>> = Object.freeze({
	'address-keys': ['tallow-6', 'picket-8'],
	'address-dip': ['cobble'],
	'held-colour': ['tallow-6', 'picket-8'],
	'loss-setting': ['tallow-6', 'picket-8', 'cobble'],
	'mains-row': ['picket-8'],
	'mode-address': ['tallow-6', 'picket-8'],
	'dip-colour': ['cobble'],
	'programme-speed': ['tallow-6', 'picket-8'],
	'locked-address': ['tallow-6', 'picket-8'],
	'cable-missing': ['tallow-6', 'picket-8'],
	'past-512': ['tallow-6', 'picket-8'],
	'desk-percent': ['tallow-6'],
	'sensors-audience': ['tallow-6'],
	'row-as-one': ['tallow-6', 'picket-8', 'cobble'],
	'row-back-to-back': [],
	'desk-band': ['tallow-6'],
	'strobe-left-on': ['tallow-6', 'picket-8'],
	'remote-three': ['tallow-6'],
	'leader-three': ['tallow-6', 'picket-8', 'cobble'],
	'followers-mode': ['tallow-6', 'picket-8', 'cobble'],
	defaults: ['tallow-6', 'picket-8'],
	'line-longer': ['tallow-6', 'picket-8'],
	'two-universes': ['tallow-6', 'picket-8'],
	'leader-left-on': ['tallow-6', 'picket-8'],
});

/** Drills of these kinds, one after another, each on none but the fixtures that the questions are about. Never more than `most`. */
export function* drillsOn(
	ground: Ground,
	chance: Chance,
	kinds: readonly DrillKind[],
	most: number,
): Generator<Drill, undefined> {
	const able = new Set(drillable(ground));
	const isAll = BUNDLED.every(({ id }) => able.has(id));
	const often = isAll ? kinds : kinds.filter((kind) => OFTEN_ON[kind].some((profile) => able.has(profile)));
	const asked = often.length > 0 ? often : kinds;
	for (let n = 0; n < most; n++) {
		const drill = makeDrillWhere(chance.pick(asked), chance.int(0, TOP_SEED), ({ fixtures }) =>
			fixtures.every(({ profile }) => able.has(profile)),
		);
		if (drill) yield drill;
	}
}

/**
 * What a drill's words are filled with, ids told by the names that its sheet and its fixture's profile give them. `drill` says which
 * kind, `hasAddress` whether it gives one.
 */
export function drillFacts({ kind, sheet, facts, scene }: Drill): Facts {
	const names = new Map(sheet.fixtures.map(({ id, name }) => [id, name]));
	const about = [facts['fixture'], facts['leader'], facts['fresh'], facts['fixtures']].flat().find(Boolean);
	const placed = sheet.fixtures.find(({ id }) => id === about) ?? sheet.fixtures[0];
	const profile = placed && profileFor(sheet, placed.profile);
	const told = Object.entries(facts).map(([key, value]): [string, Told] => {
		const name = (one: string | number): string | number =>
			names.get(String(one)) ?? (profile && typeof one === 'string' ? ownName(profile, key, one) : one);
		if (Array.isArray(value)) return [key, value.map(name)];
		return [key, typeof value === 'string' ? name(value) : value];
	});
	return { ...Object.fromEntries(told), drill: kind, scene, hasAddress: facts['address'] !== undefined };
}

/** What a profile calls a thing of its own, by the fact it stands in. */
function ownName(profile: Profile, key: string, id: string): string {
	const named = (things: readonly { readonly id: string; readonly name: string }[]): string =>
		things.find((each) => each.id === id)?.name ?? id;
	switch (key) {
		case 'mode':
		case 'fromMode':
			return modeOf(profile, id).name;
		case 'held':
			return named(profile.held);
		case 'programme':
			return named(profile.programmes);
		case 'emitters':
			return named(profile.emitters).toLowerCase();
		case 'profile':
			return profile.name;
		default:
			return id;
	}
}
