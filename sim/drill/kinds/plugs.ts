import type { Random } from '../../../shared/random/index.ts';
import type { SheetCable } from '../../../shared/sheet/index.ts';
import { LINE_LIMITS } from '../../line/index.ts';
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

// Kinds done with plugs and cables, or with the remote.

/** Longest cable a join may be made with, metres: a row hangs closer than that. */
const JOIN_METRES = 50;

export function mainsRow(random: Random): DrillDraft {
	const count = random.int(3, 5);
	const row = Array.from({ length: count }, (_, i) => fixture('rig', random.pick([PICKET, COBBLE]), i + 1, {}));
	const from = row.map((_, i) => row[i - 1]?.id ?? 'wall');
	const stray = random.int(0, count - 1);
	const fixtures = row.map((each, i) => {
		const isWrong = i === stray || random.chance(0.3);
		// only what stands earlier in the row may feed it, so that the sheet has no circle
		const plug = isWrong ? another(random, ['none', 'wall', ...ids(row.slice(0, i))], from[i]) : from[i];
		return { ...each, plug: plug ?? 'none', on: random.chance(0.8) };
	});
	return {
		scene: 'rig',
		rig: { fixtures },
		goal: row.map(({ id }, i): DrillCondition => ({ is: 'fed', fixture: id, from: from[i] ?? 'wall' })),
		hands: ['mains', 'power'],
		facts: { fixtures: ids(row) },
	};
}

/** A row on a desk's line, right but for the line. */
function litRow(random: Random, scene: DrillDraft['scene'], count: number) {
	const profile = random.pick(KEYED);
	const mode = random.pick(ids(profile.modes).filter((id) => id !== 'cells'));
	const slots = footprint(profile, mode);
	const first = random.int(1, 512 - slots * count);
	const row = Array.from({ length: count }, (_, i) => ({
		id: idOf(profile, i + 1),
		n: i + 1,
		address: first + i * slots,
	}));
	return {
		profile,
		mode,
		row,
		fixtures: row.map(({ n, address }) => fixture(scene, profile, n, { work: 'line', mode, address })),
		desk: desk(
			[1],
			row.map(({ id, address }) => ({ fixture: id, universe: 1, address, mode })),
			row.flatMap(({ address }) => levelsFor(profile, mode, { universe: 1, address }, random.pick(ids(profile.held)))),
		),
	};
}

/** The whole row joined up, one into the next, the line ended, and every fixture hearing the desk. */
function joinedRow(row: readonly string[]): DrillCondition[] {
	return [
		...row.map(
			(id, i): DrillCondition => ({
				is: 'joined',
				a: i === 0 ? 'desk:a' : `${row[i - 1]}:out`,
				b: `${id}:in`,
				metres: JOIN_METRES,
			}),
		),
		{ is: 'terminators', ports: [`${row.at(-1)}:out`] },
		...row.flatMap((id): DrillCondition[] => [
			{ is: 'data-from', fixture: id, source: { kind: 'desk', universe: 1 } },
			{ is: 'lit', fixture: id },
		]),
	];
}

export function cableMissing(random: Random): DrillDraft {
	const count = random.int(3, 5);
	const { profile, row, fixtures, desk: lit } = litRow(random, 'show', count);
	const whole = line('desk:a', ids(row));
	const at = random.int(0, count - 1);
	const what = random.pick(['missing', 'loose', 'microphone', 'open', 'swapped'] as const);
	return {
		scene: 'show',
		rig: {
			fixtures,
			desk: lit,
			terminators: whole.terminators,
			cables: whole.cables.flatMap((cable, i) => (i === at ? damaged(cable, what, random) : cable)),
		},
		goal: joinedRow(ids(row)),
		hands: ['panel', 'power', 'line'],
		facts: { fixtures: ids(row), profile: profile.id, after: at === 0 ? 'desk' : (row[at - 1]?.id ?? 'desk'), what },
	};
}

/** Metres from which microphone cable harms here, and a coil of it that turns up at a gig (ours, no source). */
const MICROPHONE_METRES = { least: LINE_LIMITS.microphoneMetres + 5, most: JOIN_METRES };

function damaged(
	cable: SheetCable,
	what: 'missing' | 'loose' | 'microphone' | 'open' | 'swapped',
	random: Random,
): SheetCable[] {
	switch (what) {
		case 'missing':
			return [];
		case 'loose':
			return [{ ...cable, to: null }];
		case 'microphone':
			// a short one does no harm: nobody would see it
			return [{ ...cable, kind: 'microphone', length: random.int(MICROPHONE_METRES.least, MICROPHONE_METRES.most) }];
		case 'open':
			return [{ ...cable, plus: 'open' }];
		case 'swapped':
			return [{ ...cable, swapped: true }];
	}
}

/** More fixtures at the end of a line that was ended before them. */
export function lineLonger(random: Random): DrillDraft {
	const old = random.int(2, 3);
	const added = random.int(1, 2);
	const { profile, mode, row, fixtures, desk: lit } = litRow(random, 'rig', old + added);
	const { cables, terminators } = line('desk:a', ids(row.slice(0, old)));
	const fresh = row.slice(old);
	return {
		scene: 'rig',
		rig: {
			fixtures: fixtures.map((each, i) =>
				i < old
					? each
					: fixture('rig', profile, i + 1, { work: 'line', mode, address: anyAddress(random, profile, mode) }),
			),
			desk: lit,
			cables,
			terminators,
		},
		goal: [...fresh.map(({ id, address }) => setting(id, 'address', address)), ...joinedRow(ids(row))],
		hands: ['panel', 'power', 'line'],
		facts: {
			fixtures: ids(row),
			fresh: ids(fresh),
			profile: profile.id,
			mode,
			addresses: fresh.map(({ address }) => address),
		},
	};
}

export function remoteThree(random: Random): DrillDraft {
	const code = random.int(1, 4);
	const held = random.pick(ids(TALLOW.held));
	const level = random.int(2, 10) * 10;
	const row = [1, 2, 3].map((n) =>
		fixture('rig', TALLOW, n, {
			work: random.pick(['held', 'programme', 'line'] as const),
			held: random.pick(ids(TALLOW.held)),
			level: random.int(0, 10) * 10,
			strobe: random.pick([0, 0, 4]),
			code,
		}),
	);
	const isShut = random.chance(0.5);
	const apart = fixture('rig', TALLOW, 4, {
		work: 'held',
		held: another(random, ids(TALLOW.held), held),
		...(isShut ? { sensor: 'shut', code } : { code: another(random, [1, 2, 3, 4], code) }),
	});
	return {
		scene: 'rig',
		rig: { fixtures: [...row, apart], remote: { code, battery: true } },
		goal: row.flatMap(({ id }): DrillCondition[] => [
			setting(id, 'work', 'held'),
			setting(id, 'held', held),
			setting(id, 'strobe', 0),
			setting(id, 'level', level),
			{ is: 'lit', fixture: id },
		]),
		hands: ['remote'],
		facts: { fixtures: ids(row), apart: apart.id, held, level },
		free: ['programme', 'speed'],
	};
}
