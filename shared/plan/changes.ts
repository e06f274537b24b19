import { SETTING_KEYS, type SettingKey } from '../profile/index.ts';
import { murmur3Text } from '../random/index.ts';
import { type CableEnd, numberedCables } from './cables.ts';
import { digestsOf } from './digests.ts';
import { linesOf } from './line.ts';
import { profileOf } from './make.ts';
import { placed, rowFootprint } from './pack.ts';
import { problemsOf } from './problems.ts';
import { settingsOf } from './sheet.ts';
import type { Plan, PlanRow } from './types.ts';

/** What is to be done at one light to bring it from one plan to another. */
export interface RowChanges {
	/** As it is planned now; as it was, where it is gone. */
	readonly row: PlanRow;
	/** `swap`: another fixture in its place; `change`: the same one stays. */
	readonly is: 'new' | 'gone' | 'swap' | 'change';
	/** Settings to be changed at its panel; of one that is new, all that is asked. */
	readonly settings: readonly SettingKey[];
	/** It goes to another place, or from the floor overhead or back. */
	readonly moves: boolean;
	readonly circuit: boolean;
	/** Its label, and its prep slip, say what is no longer so. */
	readonly label: boolean;
	readonly slip: boolean;
}

export interface CableChange {
	readonly from: CableEnd;
	readonly to: CableEnd;
	/** Metres of the cable. */
	readonly length: number;
}

/** From one plan to another, the fewest things to do at the lights. */
export interface PlanChanges {
	/** In the order of the plan; those that are gone last. */
	readonly rows: readonly RowChanges[];
	/** Cables to take out, and to run. One that is long enough stays where both its ends do. */
	readonly pull: readonly CableChange[];
	readonly run: readonly CableChange[];
	/** Lengths to bring, metres, for what no cable that was taken out is long enough for. */
	readonly bring: readonly number[];
	/** Row ids whose terminator comes out, and goes in. */
	readonly unterminate: readonly string[];
	readonly terminate: readonly string[];
	/** How many that are the same otherwise have another number in the list. */
	readonly renumbered: number;
	/** Whether the patch list says what is no longer so. */
	readonly patch: boolean;
}

/** What changed between two plans. @param before as it was printed from, or the lights were set by */
export function changesOf(before: Plan, now: Plan): PlanChanges {
	const was = new Map(before.rows.map((row) => [row.id, row]));
	const ids = new Set(now.rows.map(({ id }) => id));
	const [digestsThen, digestsNow] = [digestsOf(before), digestsOf(now)];
	const rows = now.rows.flatMap((row): RowChanges[] => {
		const old = was.get(row.id);
		const change = old
			? between(before, old, now, row)
			: ({ is: 'new', settings: changed({}, settingsOf(now, row)), moves: true, circuit: row.circuit !== '' } as const);
		const label = !old || digestsThen.label(old) !== digestsNow.label(row);
		const slip = !old || digestsThen.slip(old, 'defaults') !== digestsNow.slip(row, 'defaults');
		const isSame =
			change.is === 'change' && !change.moves && !change.circuit && change.settings.length === 0 && !label && !slip;
		return isSame ? [] : [{ row, ...change, label, slip }];
	});
	const gone = before.rows
		.filter(({ id }) => !ids.has(id))
		.map(
			(row): RowChanges => ({ row, is: 'gone', settings: [], moves: true, circuit: false, label: false, slip: false }),
		);
	const told = new Set(rows.map(({ row }) => row.id));
	const numberOf = new Map(before.rows.map(({ id }, i) => [id, i]));
	return {
		rows: [...rows, ...gone],
		...cableChanges(before, now, new Set(rows.flatMap(({ row, is }) => (is === 'swap' ? [row.id] : [])))),
		renumbered: now.rows.filter(({ id }, i) => !told.has(id) && numberOf.get(id) !== i).length,
		patch: digestsThen.patch !== digestsNow.patch,
	};
}

/** A profile as its id, or all of it where the plan carries its own. */
export const kindOf = (plan: Plan, { profile }: PlanRow): string => {
	const own = plan.profiles.find(({ id }) => id === profile);
	return own ? `${profile} ${murmur3Text(JSON.stringify(own), 0)}` : profile;
};

function between(
	before: Plan,
	old: PlanRow,
	now: Plan,
	row: PlanRow,
): Pick<RowChanges, 'is' | 'settings' | 'moves' | 'circuit'> {
	const circuit = old.circuit !== row.circuit;
	if (kindOf(before, old) !== kindOf(now, row))
		return { is: 'swap', settings: changed({}, settingsOf(now, row)), moves: true, circuit };
	const { x, y, overhead } = old.place;
	const moves = x !== row.place.x || y !== row.place.y || overhead !== row.place.overhead;
	return { is: 'change', settings: changed(settingsOf(before, old), settingsOf(now, row)), moves, circuit };
}

type Settings = ReturnType<typeof settingsOf>;
const changed = (then: Settings, now: Settings): SettingKey[] =>
	SETTING_KEYS.filter((key) => now[key] !== undefined && now[key] !== then[key]);

interface Run extends CableChange {
	/** Metres it has to reach. */
	readonly metres: number;
}

function cablesOf(plan: Plan): { cables: Map<string, Run>; ends: Set<string> } {
	const cables = new Map(
		numberedCables(plan).map(({ from, to, length, metres }): [string, Run] => [
			JSON.stringify([from, to]),
			{ from, to, length, metres },
		]),
	);
	const ends = linesOf(plan).flatMap(({ runs }) => runs.flatMap(({ terminator }) => terminator ?? []));
	return { cables, ends: new Set(ends) };
}

/** @param others rows with another fixture in their place: a terminator goes away in the old one */
function cableChanges(
	before: Plan,
	now: Plan,
	others: ReadonlySet<string>,
): Pick<PlanChanges, 'pull' | 'run' | 'bring' | 'unterminate' | 'terminate'> {
	const [then, next] = [cablesOf(before), cablesOf(now)];
	const stays = (key: string): boolean => {
		const [old, its] = [then.cables.get(key), next.cables.get(key)];
		return old !== undefined && its !== undefined && old.length >= its.metres;
	};
	const only = (all: Map<string, Run>): Run[] => [...all].flatMap(([key, run]) => (stays(key) ? [] : [run]));
	const [pulled, run] = [only(then.cables), only(next.cables)];
	return {
		pull: pulled.map(plain),
		run: run.map(plain),
		bring: toBring(pulled, run),
		unterminate: [...then.ends].filter((id) => !next.ends.has(id) || others.has(id)),
		terminate: [...next.ends].filter((id) => !then.ends.has(id) || others.has(id)),
	};
}

const plain = ({ from, to, length }: Run): CableChange => ({ from, to, length });

/** Each cable to run takes the shortest that is free and long enough, the shortest first: no other way leaves fewer without. */
function toBring(free: readonly Run[], run: readonly Run[]): number[] {
	const left = free.map(({ length }) => length).sort((a, b) => a - b);
	const bring: number[] = [];
	for (const { metres, length } of run.toSorted((a, b) => a.metres - b.metres)) {
		const at = left.findIndex((each) => each >= metres);
		if (at < 0) bring.push(length);
		else left.splice(at, 1);
	}
	return bring;
}

/**
 * A fixture swapped for a spare of another kind or mode. Name, place and circuit stay, and all other fixtures are left alone. It
 * keeps its start address where a mode of the spare fits there (its default mode first, then the largest); else it goes to free
 * slots.
 * @param mode a mode that the person picked; left out, one that fits
 * @returns the plan as it was where it has no such row or profile
 */
export function swapped(plan: Plan, id: string, profile: string, mode?: string): Plan {
	const was = plan.rows.find((each) => each.id === id);
	const spare = profileOf(plan, profile);
	if (!was || !spare) return plan;
	const { unseen: _, ...row } = was;
	const sizeOf = (its: string): number => rowFootprint(plan, { profile, mode: its });
	const modes =
		mode === undefined
			? [
					...spare.modes.filter((each) => each.id === spare.defaults.mode),
					...spare.modes
						.filter((each) => each.id !== spare.defaults.mode)
						.toSorted((a, b) => sizeOf(b.id) - sizeOf(a.id)),
				].map((each) => each.id)
			: [mode];
	const withMode = (its: string): Plan => ({
		...plan,
		rows: plan.rows.map((each) => (each.id === id ? { ...row, profile, mode: its, shows: null } : each)),
	});
	const fits = (next: Plan): boolean =>
		!problemsOf(next).some(({ is, rows }) => rows.some((at) => at === id) && isInTheWay(is));
	for (const each of modes) {
		const next = withMode(each);
		if (next.source === 'leader' || fits(next)) return next;
	}
	const loose = withMode(modes[0] ?? spare.defaults.mode);
	const free = { ...loose, rows: loose.rows.map((each) => (each.id === id ? { ...each, labelled: false } : each)) };
	return placed(free, new Set([id]), row.universe);
}

const isInTheWay = (is: string): boolean => ['clash', 'past-512', 'no-such-address'].includes(is);
