import type { Chance, Facts, Ground, Told } from '../../shared/paper/index.ts';
import { bundledProfile, modeOf, type Profile } from '../../shared/profile/index.ts';
import { profileFor } from '../../shared/sheet/index.ts';
import { type Drill, type DrillKind, makeDrill } from '../drill/index.ts';

/** Highest seed of a drill in a paper. */
const TOP_SEED = 0xffffffff;

/** Drills are made on bundled fixtures: those that the questions are about. */
export const drillable = ({ profiles }: Ground): readonly string[] =>
	profiles.filter((profile) => bundledProfile(profile.id) === profile).map(({ id }) => id);

/** Drills of these kinds, one after another, each on none but the fixtures that the questions are about. Never more than `most`. */
export function* drillsOn(
	ground: Ground,
	chance: Chance,
	kinds: readonly DrillKind[],
	most: number,
): Generator<Drill, undefined> {
	const able = new Set(drillable(ground));
	for (let n = 0; n < most; n++) {
		const drill = makeDrill(chance.pick(kinds), chance.int(0, TOP_SEED));
		if (drill.sheet.fixtures.every(({ profile }) => able.has(profile))) yield drill;
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
