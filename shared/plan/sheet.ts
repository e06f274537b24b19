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
 * Fixtures of a sheet as they are before anybody sets them: at their defaults, or as the plan knows them to show.
 * @param stands what their panels are set to, where that is known of all of it
 */
export function sheetBefore(plan: Plan, stands: SomeSettings | null = null): RigSheet {
	return sheetWith(plan, (row, profile) =>
		stands
			? standingAt(profile, stands)
			: row.shows
				? standingAt(profile, { work: 'line', ...row.shows })
				: standingAt(profile, profile.defaults),
	);
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

function wiring(
	plan: Plan,
	lines: readonly LinePlan[],
): Pick<RigSheet, 'cables' | 'terminators'> & Pick<RigSheet, 'splitters'> {
	const cables: SheetCable[] = [];
	const terminators: string[] = [];
	const splitters: RigSheet['splitters'] = [];
	const add = (from: string, to: string, length: number): void => {
		cables.push({ id: `cable-${cables.length + 1}`, kind: 'data', length, from, to, ...GOOD_WIRES });
	};
	for (const [i, { universe, runs, feed }] of lines.entries()) {
		const desk = `desk:${outputId(i)}`;
		const split = `split-${universe}`;
		if (feed !== null) {
			splitters.push({ id: split, name: `splitter ${universe}`, outputs: Math.min(16, runs.length), on: true });
			add(desk, `${split}:in`, feed);
		}
		for (const [n, run] of runs.entries()) {
			const start = feed !== null ? `${split}:${Math.min(16, n + 1)}` : desk;
			for (const { from, to, length } of run.cables) add(from === null ? start : `${from}:out`, `${to}:in`, length);
			const last = run.rows.at(-1);
			if (last !== undefined && (plan.source === 'desk' || run.rows.length > 1)) terminators.push(`${last}:out`);
		}
	}
	return { cables, terminators, splitters };
}
