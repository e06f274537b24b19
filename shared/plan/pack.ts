import { LAST_SLOT, LAST_UNIVERSE, type UniverseSlot } from '../dmx/index.ts';
import { footprintOf, modeOf } from '../profile/index.ts';
import { fedWithin } from './feeds.ts';
import { profileOf } from './make.ts';
import type { PackRules, Plan, PlanRow } from './types.ts';

/** A fixture to be given a start address. */
export interface PackItem {
	readonly id: string;
	/** Slots, 1 or more. */
	readonly footprint: number;
	/** Where it stands already and must stay; null where it is to be placed. */
	readonly at: UniverseSlot | null;
	/** Those of a type stand together where the order is by type. */
	readonly type: string;
	/** Metres along the room. */
	readonly x: number;
}

export interface Packed {
	/** Where each item that was to be placed goes. */
	readonly spots: ReadonlyMap<string, UniverseSlot>;
	/** Items that fit nowhere: a footprint past 512, or no universe left. */
	readonly unplaced: readonly string[];
	/** Universes from the first of the rules to the last that something was placed in; 0 where nothing was. */
	readonly universes: number;
	/** Whether no fewer would do, by these rules. False only where the search for fewer was given up. */
	readonly isFewest: boolean;
}

/** A run of free slots within a universe, both ends included. */
interface Stretch {
	readonly universe: number;
	readonly from: number;
	readonly to: number;
}

/** Steps of the search for fewer universes before it is given up. */
const MOST_STEPS = 20_000;

/** The lowest start of the rules' row of addresses from a slot on. */
const onStep = (slot: number, step: number): number => Math.ceil((slot - 1) / step) * step + 1;

/** Free stretches of a universe beside what stands there already, the gap kept on both sides of it. */
function freeIn(universe: number, kept: readonly PackItem[], { gap, step }: PackRules): Stretch[] {
	const there = kept
		.flatMap(({ at, footprint }) => (at?.universe === universe ? [{ from: at.slot, to: at.slot + footprint - 1 }] : []))
		.sort((a, b) => a.from - b.from);
	const free: Stretch[] = [];
	let from = 1;
	for (const taken of there) {
		free.push({ universe, from, to: taken.from - 1 - gap });
		from = Math.max(from, taken.to + 1 + gap);
	}
	free.push({ universe, from, to: LAST_SLOT });
	return free
		.map((stretch) => ({ ...stretch, from: onStep(stretch.from, step) }))
		.filter((stretch) => stretch.from <= stretch.to);
}

/**
 * Start addresses by rules: no two share a slot, none runs past 512, what stands already stays. In every order but `fewest` the
 * addresses rise in that order, and each fixture goes to the first place after the one before, which takes no more universes than
 * any other rising row. `fewest` takes any order: first the largest into the first stretch that holds it, then a search for one
 * universe fewer, until there is none or the search is given up.
 * @param items each id once
 */
export function packAddresses(items: readonly PackItem[], rules: PackRules): Packed {
	const kept = items.filter(({ at }) => at !== null);
	const fits = items.filter(({ at, footprint }) => at === null && footprint <= LAST_SLOT);
	const tooLong = items.filter(({ at, footprint }) => at === null && footprint > LAST_SLOT).map(({ id }) => id);
	const packed =
		rules.order === 'fewest' ? packFewest(fits, kept, rules) : packRising(inOrder(fits, rules), kept, rules);
	return { ...packed, unplaced: [...packed.unplaced, ...tooLong] };
}

function inOrder(items: readonly PackItem[], { order }: PackRules): readonly PackItem[] {
	if (order === 'place') return items.toSorted((a, b) => a.x - b.x);
	if (order !== 'type') return items;
	const types = [...new Set(items.map(({ type }) => type))];
	return types.flatMap((type) => items.filter((item) => item.type === type));
}

function packRising(items: readonly PackItem[], kept: readonly PackItem[], rules: PackRules): Packed {
	const spots = new Map<string, UniverseSlot>();
	const unplaced: string[] = [];
	let universe = rules.universe;
	let from = 1;
	let free = freeIn(universe, kept, rules);
	for (const { id, footprint } of items) {
		let slot = slotIn(free, from, footprint, rules.step);
		while (slot === null && universe < LAST_UNIVERSE) {
			universe++;
			from = 1;
			free = freeIn(universe, kept, rules);
			slot = slotIn(free, from, footprint, rules.step);
		}
		if (slot === null) {
			unplaced.push(id);
			continue;
		}
		spots.set(id, { universe, slot });
		from = slot + footprint + rules.gap;
	}
	return { spots, unplaced, universes: universesOf(spots, rules), isFewest: true };
}

/** The first slot from `from` on where a footprint fits into one of the stretches; null where it fits into none. */
function slotIn(free: readonly Stretch[], from: number, footprint: number, step: number): number | null {
	for (const stretch of free) {
		const slot = onStep(Math.max(stretch.from, from), step);
		if (slot + footprint - 1 <= stretch.to) return slot;
	}
	return null;
}

const universesOf = (spots: ReadonlyMap<string, UniverseSlot>, rules: PackRules): number =>
	[...spots.values()].reduce((most, { universe }) => Math.max(most, universe - rules.universe + 1), 0);

/** A stretch being filled. `taken` counts each item up to where the next may start; `slack` is the most that the last one gives back. */
interface Fill {
	readonly stretch: Stretch;
	readonly items: PackItem[];
	taken: number;
	slack: number;
}

/** Slots from an item's start to where the next may start. */
const widthOf = ({ footprint }: PackItem, { gap, step }: PackRules): number =>
	Math.ceil((footprint + gap) / step) * step;

function holds(fill: Fill, item: PackItem, rules: PackRules): boolean {
	const width = widthOf(item, rules);
	const slack = Math.max(fill.slack, width - item.footprint);
	return fill.taken + width - slack <= fill.stretch.to - fill.stretch.from + 1;
}

function packFewest(items: readonly PackItem[], kept: readonly PackItem[], rules: PackRules): Packed {
	const large = items.toSorted((a, b) => b.footprint - a.footprint);
	const fills: Fill[] = [];
	const unplaced: string[] = [];
	let next = rules.universe;
	const open = (): void => {
		fills.push(...fillsOf(freeIn(next, kept, rules)));
		next++;
	};
	for (const item of large) {
		let fill = fills.find((each) => holds(each, item, rules));
		while (!fill && next <= LAST_UNIVERSE) {
			open();
			fill = fills.find((each) => holds(each, item, rules));
		}
		if (fill) put(fill, item, rules);
		else unplaced.push(item.id);
	}
	let spots = spotsOf(fills, rules);
	let universes = universesOf(spots, rules);
	const steps = { left: MOST_STEPS };
	const toPlace = large.filter(({ id }) => !unplaced.includes(id));
	while (universes > 1) {
		const last = rules.universe + universes - 2;
		const fewer = fills.filter(({ stretch }) => stretch.universe <= last).map(({ stretch }) => stretch);
		const found = search(toPlace, fillsOf(fewer), rules, steps);
		if (found === null) return { spots, unplaced, universes, isFewest: false };
		if (!found) break;
		spots = spotsOf(found, rules);
		universes = universesOf(spots, rules);
	}
	return { spots, unplaced, universes, isFewest: true };
}

const fillsOf = (stretches: readonly Stretch[]): Fill[] =>
	stretches.map((stretch) => ({ stretch, items: [], taken: 0, slack: 0 }));

function put(fill: Fill, item: PackItem, rules: PackRules): void {
	const width = widthOf(item, rules);
	fill.items.push(item);
	fill.taken += width;
	fill.slack = Math.max(fill.slack, width - item.footprint);
}

/** All items in these stretches, the largest first, each tried in every stretch; false where there is no way, null where the search is given up. */
function search(
	items: readonly PackItem[],
	fills: Fill[],
	rules: PackRules,
	steps: { left: number },
): Fill[] | false | null {
	const place = (at: number): boolean | null => {
		const item = items[at];
		if (!item) return true;
		if (steps.left-- <= 0) return null;
		// stretches that stand alike lead to the same
		const tried = new Set<string>();
		for (const fill of fills) {
			const { stretch, taken, slack } = fill;
			const like = `${stretch.to - stretch.from} ${taken} ${slack}`;
			if (tried.has(like) || !holds(fill, item, rules)) continue;
			tried.add(like);
			put(fill, item, rules);
			const came = place(at + 1);
			if (came !== false) return came;
			fill.items.pop();
			fill.taken = taken;
			fill.slack = slack;
		}
		return false;
	};
	const need = items.reduce((sum, { footprint }) => sum + footprint, 0);
	const room = fills.reduce((sum, { stretch }) => sum + stretch.to - stretch.from + 1, 0);
	if (need > room) return false;
	const came = place(0);
	return came ? fills : came;
}

/** Start addresses in filled stretches; the item that gives back the most slots stands last in each. */
function spotsOf(fills: readonly Fill[], rules: PackRules): Map<string, UniverseSlot> {
	const spots = new Map<string, UniverseSlot>();
	for (const { stretch, items } of fills) {
		let slot = stretch.from;
		const slack = (item: PackItem): number => widthOf(item, rules) - item.footprint;
		for (const item of items.toSorted((a, b) => slack(a) - slack(b))) {
			spots.set(item.id, { universe: stretch.universe, slot });
			slot += widthOf(item, rules);
		}
	}
	return spots;
}

/** The rows of a plan as items: labelled ones stay. */
const packItems = (plan: Plan): PackItem[] =>
	plan.rows.map((row) => ({
		id: row.id,
		footprint: rowFootprint(plan, row),
		at: row.labelled ? { universe: row.universe, slot: row.address } : null,
		type: row.profile,
		x: row.place.x,
	}));

/** Slots a row takes: 1 or more; 0 for a fixture or a mode that there is not. */
export function rowFootprint(plan: Plan, { profile: id, mode }: Pick<PlanRow, 'profile' | 'mode'>): number {
	const profile = profileOf(plan, id);
	return profile?.modes.some((each) => each.id === mode) ? footprintOf(modeOf(profile, mode)) : 0;
}

/**
 * The plan with some of its rows placed by its rules, all others left where they stand, labelled or not.
 * @param ids the rows to place; one that fits nowhere stays where it is
 * @param universe the first to use; that of the rules unless told
 */
export function placed(plan: Plan, ids: ReadonlySet<string>, universe = plan.rules.universe): Plan {
	const stays = { ...plan, rows: plan.rows.map((row) => ({ ...row, labelled: !ids.has(row.id) })) };
	return withSpots(plan, packAddresses(packItems(stays), { ...plan.rules, universe }));
}

/** The plan with its start addresses packed by its own rules; those that fit nowhere stay where they are, and are told as problems. */
export function packed(plan: Plan): { readonly plan: Plan; readonly packing: Packed } {
	const packing = packAddresses(packItems(plan), plan.rules);
	return { plan: withSpots(plan, packing), packing };
}

function withSpots(plan: Plan, { spots }: Packed): Plan {
	const rows = plan.rows.map((row) => {
		const spot = spots.get(row.id);
		return spot ? { ...row, universe: spot.universe, address: spot.slot } : row;
	});
	return fedWithin({ ...plan, rows });
}
