import { InputError } from '../error/index.ts';
import { modeOf, type Profile, SETTING_KEYS, type SomeSettings } from '../profile/index.ts';
import {
	GOOD_WIRES,
	litLevels,
	noBoxes,
	type RigSheet,
	type SheetCable,
	type SheetDesk,
	type SheetFixture,
} from '../sheet/index.ts';
import { type CableEnd, numberedCables } from './cables.ts';
import { seenOn } from './found.ts';
import { type LinePlan, leaderOf, linesOf } from './line.ts';
import { profileOf } from './make.ts';
import { canSet, standingAt } from './panel.ts';
import { DESK_OUTPUTS } from './problems.ts';
import type { Plan, PlanRow } from './types.ts';

/** All that a plan asks of a fixture's settings: mode, start address, who it listens to, whether it leads, signal loss, lock. */
export function askedOf(plan: Plan, row: PlanRow): SomeSettings {
	const profile = profileOf(plan, row.profile);
	if (!profile) return {};
	const role = roleOf(plan, row);
	return {
		work: role === 'desk' ? 'line' : role === 'leader' ? 'held' : 'follow',
		lead: role === 'leader' ? 'on' : 'off',
		mode: row.mode,
		loss: plan.loss,
		lock: plan.lock,
		...(role === 'desk' || profile.follows === 'own-address' ? { address: row.address } : {}),
	};
}

/** What a plan asks of a fixture's settings; what its panel has no way to set is left out. */
export function settingsOf(plan: Plan, row: PlanRow): SomeSettings {
	const profile = profileOf(plan, row.profile);
	if (!profile) return {};
	const asked = askedOf(plan, row);
	return Object.fromEntries(
		SETTING_KEYS.flatMap((key) => {
			const value = asked[key];
			return value !== undefined && canSet(profile, key, value) ? [[key, value]] : [];
		}),
	);
}

/** Who a row listens to: the desk, or it leads, or follows. */
export function roleOf(plan: Plan, row: PlanRow): 'desk' | 'leader' | 'follower' {
	if (plan.source === 'desk') return 'desk';
	return leaderOf(plan)?.id === row.id ? 'leader' : 'follower';
}

/**
 * Fixtures of a sheet as they are before anybody sets them: at their defaults, or as their panels were seen to show.
 * @param stands what their panels are set to, where that is known of all of it
 */
export function sheetBefore(plan: Plan, stands: SomeSettings | null = null): RigSheet {
	return sheetWith(plan, (row, profile) => {
		const shows = seenOn(row);
		return standingAt(profile, stands ?? (shows ? { work: 'line', ...shows } : profile.defaults));
	});
}

/**
 * The rig sheet of a plan: every fixture set as planned, the desk patched and with its light up, cables along the room, splitters
 * where a line would hold too much, terminators at the ends.
 * @throws InputError `rig-plan.universes` for more universes than a desk has outputs
 */
export function planSheet(plan: Plan): RigSheet {
	return sheetWith(plan, (row, profile) => standingAt(profile, settingsOf(plan, row)));
}

type Standing = ReturnType<typeof standingAt>;

function sheetWith(plan: Plan, standing: (row: PlanRow, profile: Profile) => Standing): RigSheet {
	const lines = linesOf(plan);
	if (plan.source === 'desk' && lines.length > DESK_OUTPUTS)
		throw new InputError('rig-plan.universes', 'rows', {
			trouble: 'too-many-universes',
			found: lines.length,
			limit: DESK_OUTPUTS,
		});
	const fixtures = plan.rows.flatMap((row): SheetFixture[] => {
		const profile = profileOf(plan, row.profile);
		if (!profile) return [];
		return [
			{
				id: row.id,
				name: row.name,
				profile: profile.id,
				place: row.place,
				...standing(row, profile),
				on: true,
				plug: profile.power.battery ? 'none' : 'wall',
				charge: 1,
				hidden: false,
			},
		];
	});
	const { cables, terminators, splitters } = wiring(plan, lines);
	const hasSensor = plan.rows.some(({ profile }) => profileOf(plan, profile)?.sensor);
	return {
		version: 1,
		name: plan.name,
		hall: plan.hall,
		fixtures,
		desk: plan.source === 'desk' ? deskOf(plan, lines) : null,
		...noBoxes(),
		splitters,
		cables,
		terminators,
		remote: hasSensor ? { code: 1, battery: true } : null,
		profiles: [...plan.profiles],
	};
}

/** Outputs that a splitter of a sheet has at most. */
const MOST_OUTPUTS = 16;

/** A desk's output sockets are letters: a for its first universe. */
const outputId = (i: number): string => String.fromCharCode('a'.charCodeAt(0) + i);

function deskOf(plan: Plan, lines: readonly LinePlan[]): SheetDesk {
	const patch = plan.rows.map(({ id, universe, address, mode }) => ({ fixture: id, universe, address, mode }));
	const levels = new Map<string, SheetDesk['levels'][number]>();
	for (const row of plan.rows) {
		const profile = profileOf(plan, row.profile);
		if (profile)
			for (const level of litLevels(profile, modeOf(profile, row.mode), row))
				levels.set(`${level.universe}.${level.slot}`, level);
	}
	// a desk has an output though nothing hangs on it yet
	const universes = lines.length > 0 ? lines.map(({ universe }) => universe) : [plan.rules.universe];
	return {
		name: 'desk',
		outputs: universes.map((universe, i) => ({ id: outputId(i), universe, on: true })),
		patch,
		levels: [...levels.values()],
		master: 255,
	};
}

function wiring(plan: Plan, lines: readonly LinePlan[]): Pick<RigSheet, 'cables' | 'terminators' | 'splitters'> {
	const outputs = new Map(lines.map(({ universe }, i) => [universe, outputId(i)]));
	const splitOutput = (run: number): number => Math.min(MOST_OUTPUTS, run);
	const socket = (end: CableEnd, run: number, side: 'in' | 'out'): string => {
		if (end.is === 'row') return `${end.row}:${side}`;
		if (end.is === 'desk') return `desk:${outputs.get(end.universe)}`;
		return `split-${end.universe}:${side === 'in' ? side : splitOutput(run)}`;
	};
	return {
		cables: numberedCables(plan).map(({ n, run, from, to, length }): SheetCable => {
			const ends = { from: socket(from, run, 'out'), to: socket(to, run, 'in') };
			return { id: `cable-${n}`, kind: 'data', length, ...ends, ...GOOD_WIRES };
		}),
		terminators: lines.flatMap(({ runs }) =>
			runs.flatMap(({ terminator }) => (terminator === null ? [] : [`${terminator}:out`])),
		),
		splitters: lines.flatMap(({ universe, runs, feed }) =>
			feed === null
				? []
				: [{ id: `split-${universe}`, name: `splitter ${universe}`, outputs: splitOutput(runs.length), on: true }],
		),
	};
}
