import { backToBack } from '../../../shared/dmx/index.ts';
import type { Profile, SomeSettings } from '../../../shared/profile/index.ts';
import type { Random } from '../../../shared/random/index.ts';
import type { DrillCondition } from '../types.ts';
import {
	another,
	anyAddress,
	COBBLE,
	type DrillDraft,
	desk,
	fixture,
	footprint,
	idOf,
	ids,
	KEYED,
	levelsFor,
	line,
	PICKET,
	setting,
	TALLOW,
} from './stage.ts';

// Kinds with a leader and followers.

const hands = ['panel', 'power'] as const;

/** Where a follower of this profile must read; null where it reads slot one whatever its address. */
const followsAt = (profile: Profile): number | null => (profile.follows === 'own-address' ? 1 : null);

/** A fixture minding its own business, however it was left. */
function idle(random: Random, profile: Profile, mode: string): SomeSettings {
	if (random.chance(0.5)) return { work: 'line', mode, address: anyAddress(random, profile, mode) };
	return { work: 'held', held: random.pick(ids(profile.held)), mode };
}

export function leaderThree(random: Random): DrillDraft {
	const profile = random.pick([TALLOW, PICKET, COBBLE]);
	const mode = random.pick(ids(profile.modes));
	const held = random.pick(ids(profile.held));
	const row = [1, 2, 3, 4].map((n) => idOf(profile, n));
	const leader = random.pick(row);
	const at = followsAt(profile);
	const fixtures = row.map((id, i) => {
		const itsMode = id === leader || random.chance(0.7) ? mode : random.pick(ids(profile.modes));
		return fixture('rig', profile, i + 1, idle(random, profile, itsMode));
	});
	const followers = row.filter((id) => id !== leader);
	return {
		scene: 'rig',
		rig: { fixtures, ...line(null, row) },
		goal: [
			setting(leader, 'work', 'held'),
			setting(leader, 'held', held),
			setting(leader, 'lead', 'on'),
			{ is: 'lit', fixture: leader },
			...followers.flatMap((id): DrillCondition[] => [
				setting(id, 'work', 'follow'),
				setting(id, 'lead', 'off'),
				setting(id, 'mode', mode),
				...(at === null ? [] : [setting(id, 'address', at)]),
				{ is: 'data-from', fixture: id, source: { kind: 'leader', fixture: leader } },
				{ is: 'lit', fixture: id },
			]),
		],
		hands,
		facts: { leader, followers, profile: profile.id, mode, held, ...(at === null ? {} : { address: at }) },
	};
}

export function followersMode(random: Random): DrillDraft {
	const profile = random.pick([TALLOW, PICKET, COBBLE]);
	const mode = random.pick(ids(profile.modes));
	const held = random.pick(ids(profile.held));
	const row = [1, 2, 3, 4].map((n) => idOf(profile, n));
	const leader = random.pick(row);
	const at = followsAt(profile);
	const fixtures = row.map((id, i) => {
		if (id === leader) return fixture('rig', profile, i + 1, { work: 'held', held, lead: 'on', mode });
		const address = at === null ? {} : { address: random.chance(0.4) ? at : anyAddress(random, profile, mode) };
		const itsMode = random.chance(0.4) ? mode : another(random, ids(profile.modes), mode);
		return fixture('rig', profile, i + 1, { work: 'follow', mode: itsMode, ...address });
	});
	const followers = row.filter((id) => id !== leader);
	return {
		scene: 'rig',
		rig: { fixtures, ...line(null, row) },
		goal: followers.flatMap((id): DrillCondition[] => [
			setting(id, 'mode', mode),
			...(at === null ? [] : [setting(id, 'address', at)]),
			...(profile === COBBLE ? [setting(id, 'work', 'follow'), setting(id, 'lead', 'off')] : []),
			{ is: 'data-from', fixture: id, source: { kind: 'leader', fixture: leader } },
			{ is: 'lit', fixture: id },
		]),
		hands,
		facts: { leader, followers, profile: profile.id, mode, ...(at === null ? {} : { address: at }) },
	};
}

/** The desk is back, and one fixture still talks as well. */
export function leaderLeftOn(random: Random): DrillDraft {
	const profile = random.pick(KEYED);
	const mode = random.pick(ids(profile.modes));
	const row = Array.from({ length: random.int(3, 4) }, (_, i) => idOf(profile, i + 1));
	const leader = random.pick(row);
	const first = random.int(1, 300);
	const { starts } = backToBack(
		first,
		row.map(() => footprint(profile, mode)),
	);
	const patch = row.map((id, i) => ({ fixture: id, universe: 1, address: starts[i] ?? 1, mode }));
	const fixtures = patch.map(({ fixture: id, address }, i) => {
		if (id === leader)
			return fixture('show', profile, i + 1, {
				work: 'held',
				held: random.pick(ids(profile.held)),
				lead: 'on',
				mode,
				address,
			});
		const reads = followsAt(profile) ?? (random.chance(0.75) ? address : anyAddress(random, profile, mode));
		return fixture('show', profile, i + 1, { work: 'follow', mode, address: reads });
	});
	return {
		scene: 'show',
		rig: {
			fixtures,
			desk: desk(
				[1],
				patch,
				patch.flatMap((each) => levelsFor(profile, mode, each, random.pick(ids(profile.held)))),
			),
			...line('desk:a', row),
		},
		goal: patch.flatMap(({ fixture: id, address }): DrillCondition[] => [
			setting(id, 'lead', 'off'),
			setting(id, 'work', 'line'),
			setting(id, 'address', address),
			{ is: 'data-from', fixture: id, source: { kind: 'desk', universe: 1 } },
			{ is: 'lit', fixture: id },
		]),
		hands,
		facts: { leader, followers: row.filter((id) => id !== leader), profile: profile.id, addresses: [...starts] },
	};
}
