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
	leastAddress,
	levelsFor,
	line,
	PICKET,
	setting,
	TALLOW,
} from './stage.ts';

// Kinds done along a row.

const hands = ['panel', 'power'] as const;

interface RowFixture {
	readonly id: string;
	readonly profile: Profile;
	readonly n: number;
	readonly mode: string;
}

const stand = (profile: Profile, n: number, mode: string): RowFixture => ({ id: idOf(profile, n), profile, n, mode });

/** Start addresses, back to back, and where they begin; begun anew until they fit. */
function anyRow(random: Random, row: readonly RowFixture[]): { first: number; starts: readonly number[] } {
	const footprints = row.map(({ profile, mode }) => footprint(profile, mode));
	for (;;) {
		const first = random.int(1, 440);
		const { starts, stopsAt } = backToBack(first, footprints);
		// nine switches read as a sum end at 511, and begin where every maker reads them alike
		const fits = row.every(({ profile }, i) => (starts[i] ?? 0) >= leastAddress(profile));
		if (stopsAt === null && fits && starts.every((start) => start < 512)) return { first, starts };
	}
}

export function rowBackToBack(random: Random): DrillDraft {
	const count = random.int(3, 5);
	const row = Array.from({ length: count }, (_, i) => {
		const profile = random.pick([TALLOW, PICKET, COBBLE]);
		return stand(profile, i + 1, random.pick(ids(profile.modes)));
	});
	const { first, starts } = anyRow(random, row);
	const fixtures = row.map(({ profile, n, mode }, i) => {
		const right = random.chance(0.2);
		const address = right ? (starts[i] ?? 1) : anyAddress(random, profile, mode);
		return fixture('bench', profile, n, { work: 'line', mode, address });
	});
	return {
		scene: 'bench',
		rig: { fixtures },
		goal: row.flatMap(({ id, profile }, i): DrillCondition[] => [
			...(profile === COBBLE ? [setting(id, 'work', 'line')] : []),
			setting(id, 'address', starts[i] ?? 1),
		]),
		hands,
		facts: { fixtures: ids(row), first, footprints: row.map(({ profile, mode }) => footprint(profile, mode)) },
	};
}

export function rowAsOne(random: Random): DrillDraft {
	const profile = random.pick([TALLOW, PICKET, COBBLE]);
	const mode = random.pick(ids(profile.modes));
	const address = anyAddress(random, profile, mode);
	const row = Array.from({ length: random.int(3, 4) }, (_, i) => stand(profile, i + 1, mode));
	const fixtures = row.map(({ n }) => fixture('rig', profile, n, strayed(random, profile, mode, address)));
	return {
		scene: 'rig',
		rig: {
			fixtures,
			desk: desk(
				[1],
				row.map(({ id }) => ({ fixture: id, universe: 1, address, mode })),
				levelsFor(profile, mode, { universe: 1, address }, random.pick(ids(profile.held))),
			),
			...line('desk:a', ids(row)),
		},
		goal: row.flatMap(({ id }): DrillCondition[] => [
			setting(id, 'work', 'line'),
			setting(id, 'mode', mode),
			setting(id, 'address', address),
			{ is: 'data-from', fixture: id, source: { kind: 'desk', universe: 1 } },
			{ is: 'lit', fixture: id },
		]),
		hands,
		facts: { fixtures: ids(row), profile: profile.id, mode, address },
	};
}

/** Settings of a fixture that should obey the desk, with one thing or another off. */
function strayed(random: Random, profile: Profile, mode: string, address: number): SomeSettings {
	const right: SomeSettings = { work: 'line', mode, address };
	switch (random.pick(['right', 'work', 'mode', 'address', 'address'])) {
		case 'work':
			// a fixture of switches that stands alone has no address to keep
			return profile === COBBLE
				? { work: 'held', held: random.pick(ids(COBBLE.held)), mode }
				: { ...right, work: random.pick(['held', 'follow'] as const) };
		case 'mode':
			return { ...right, mode: another(random, ids(profile.modes), mode) };
		case 'address':
			return { ...right, address: anyAddress(random, profile, mode) };
		default:
			return right;
	}
}

export function sensorsAudience(random: Random): DrillDraft {
	const count = random.int(4, 6);
	const row = Array.from({ length: count }, (_, i) => stand(TALLOW, i + 1, 'middle'));
	const audience = new Set(random.shuffle(ids(row)).slice(0, random.int(2, count - 2)));
	const fixtures = row.map(({ n }) =>
		fixture('rig', TALLOW, n, {
			work: 'held',
			held: random.pick(['candle', 'amber', 'rose', 'blue']),
			sensor: random.pick(['open', 'shut'] as const),
		}),
	);
	const sides = (isAudience: boolean) => ids(row).filter((id) => audience.has(id) === isAudience);
	return {
		scene: 'rig',
		rig: { fixtures },
		goal: row.map(({ id }) => setting(id, 'sensor', audience.has(id) ? 'shut' : 'open')),
		hands,
		facts: { shut: sides(true), open: sides(false) },
	};
}

export function twoUniverses(random: Random): DrillDraft {
	const profile = random.pick(KEYED);
	const first = random.int(1, 8);
	const planned = [first, another(random, [1, 2, 3, 4, 5, 6, 7, 8], first)] as const;
	const rows = [0, 1].map((output) =>
		Array.from({ length: random.int(2, 3) }, (_, i) =>
			stand(profile, 1 + output * 3 + i, random.pick(ids(profile.modes))),
		),
	);
	const plans = rows.flatMap((row, output) => {
		const { starts } = anyRow(random, row);
		return row.map((each, i) => ({ ...each, universe: planned[output] ?? 1, address: starts[i] ?? 1 }));
	});
	const isSwapped = random.chance(0.6);
	const [a, b] = isSwapped ? [planned[1], planned[0]] : [planned[0], another(random, [9, 10, 11], 0)];
	const ends = rows.map((row, i) => line(`desk:${'ab'[i]}`, ids(row)));
	return {
		scene: 'rig',
		rig: {
			fixtures: plans.map(({ n, mode, address }) =>
				fixture('rig', profile, n, {
					work: 'line',
					mode,
					address: random.chance(0.6) ? address : anyAddress(random, profile, mode),
				}),
			),
			desk: desk(
				[a, b],
				plans.map(({ id, universe, address, mode }) => ({ fixture: id, universe, address, mode })),
				plans.flatMap((plan) => levelsFor(profile, plan.mode, plan, random.pick(ids(profile.held)))),
			),
			cables: ends.flatMap(({ cables }) => cables),
			terminators: ends.flatMap(({ terminators }) => terminators),
		},
		goal: [
			{ is: 'output', output: 'a', universe: planned[0] },
			{ is: 'output', output: 'b', universe: planned[1] },
			...plans.flatMap(({ id, address, universe }): DrillCondition[] => [
				setting(id, 'address', address),
				{ is: 'data-from', fixture: id, source: { kind: 'desk', universe } },
				{ is: 'lit', fixture: id },
			]),
		],
		hands: ['panel', 'power', 'desk'],
		facts: {
			universes: [...planned],
			first: ids(rows[0] ?? []),
			second: ids(rows[1] ?? []),
			addresses: plans.map(({ address }) => address),
		},
	};
}
