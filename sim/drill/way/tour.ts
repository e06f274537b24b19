import type { KeyedPanel, MenuItem, SettingKey } from '../../../shared/profile/index.ts';
import type { EditableItem } from '../../fixture/index.ts';

/** An item to be visited, and the presses its work takes once the panel stands on it. */
export interface Visit {
	readonly path: readonly number[];
	readonly presses: number;
}

/** A press while browsing: Set on what is shown, Back out of a menu, or a tap of Up or Down to what stands beside. */
export type Browse =
	| { readonly do: 'set' }
	| { readonly do: 'back' }
	| { readonly do: 'move'; readonly key: 'up' | 'down' };

export interface Tour {
	readonly presses: number;
	/** Null where there is nothing to visit. */
	readonly first: Browse | null;
}

const NOTHING: Tour = Object.freeze({ presses: 0, first: null });
const SET: Browse = Object.freeze({ do: 'set' });
const BACK: Browse = Object.freeze({ do: 'back' });

/**
 * The fewest presses that visit every item, and the first of them. Along one level of a menu each tap goes to what stands
 * beside (past an end comes the other end); a menu is entered at its first item, and Back leaves it:
 *
 * - inside a menu: taps from item to item in the best order, or Back and Set where its first item is nearer that way; then
 *   Back, if anything is left elsewhere
 * - on top: taps from place to place in the best order; for each menu one press to enter, its own taps, and Back out of each
 *   but the last
 */
export function tour(map: MenuMap, path: readonly number[], visits: readonly Visit[]): Tour {
	if (visits.length === 0) return NOTHING;
	const work = visits.reduce((sum, { presses }) => sum + presses, 0);
	const places = new Map<number, Set<number>>();
	for (const { path: at } of visits) {
		const [top = 0, leaf] = at;
		const inside = places.get(top) ?? new Set<number>();
		if (leaf !== undefined) inside.add(leaf);
		places.set(top, inside);
	}
	const [top = 0, leaf] = path;
	if (leaf === undefined) {
		const onTop = fromTop(map, top, places);
		return { ...onTop, presses: onTop.presses + work };
	}
	const here = [...(places.get(top) ?? [])];
	places.delete(top);
	const rest = places.size > 0 ? 1 + fromTop(map, top, places).presses : 0;
	if (here.length === 0) return { presses: work + rest, first: BACK };
	const { presses, first } = insideFrom(map.insides[top] ?? 1, leaf, here);
	return { presses: work + presses + rest, first };
}

/** The fewest presses from one place of a panel's menu to another. */
export const stepsBetween = (panel: KeyedPanel, from: readonly number[], to: readonly number[]): number =>
	to.length === 1 && from.length === 2 && to[0] === from[0]
		? 1
		: tour(menuMap(panel), from, [{ path: to, presses: 0 }]).presses;

function fromTop(map: MenuMap, top: number, places: ReadonlyMap<number, ReadonlySet<number>>): Tour {
	const isMenu = (place: number): boolean => (map.insides[place] ?? 0) > 0;
	let inside = 0;
	for (const [place, leaves] of places) {
		// in, along and out again
		if (isMenu(place)) inside += 2 + insideFrom(map.insides[place] ?? 1, 0, [...leaves]).presses;
	}
	const { presses, first } = round(top, [...places.keys()], {
		between: (from, to) => ringSteps(map.tops, from, to),
		// out of the last menu nobody has to go
		atEnd: (place) => (isMenu(place) ? -1 : 0),
	});
	return { presses: inside + presses, first: first === null ? SET : moveTo(map.tops, top, first) };
}

/** Along one menu of so many items. */
function insideFrom(count: number, leaf: number, here: readonly number[]): Tour {
	// Back and Set stand on its first item
	const anew = (to: number): number => 2 + ringSteps(count, 0, to);
	const { presses, first } = round(leaf, here, {
		between: (from, to) => Math.min(ringSteps(count, from, to), anew(to)),
		atEnd: () => 0,
	});
	if (first === null) return { presses, first: SET };
	return { presses, first: ringSteps(count, leaf, first) <= anew(first) ? moveTo(count, leaf, first) : BACK };
}

interface Costs {
	readonly between: (from: number, to: number) => number;
	/** Added where the round ends. */
	readonly atEnd: (place: number) => number;
}

/** The cheapest order to come to each place once, and which is first: null where that is where it stands. Menus are short: all orders are tried. */
function round(from: number, to: readonly number[], costs: Costs): { presses: number; first: number | null } {
	if (to.includes(from)) {
		const rest = to.filter((place) => place !== from);
		return { presses: rest.length === 0 ? costs.atEnd(from) : round(from, rest, costs).presses, first: null };
	}
	let best = { presses: Number.POSITIVE_INFINITY, first: null as number | null };
	for (const next of to) {
		const presses = costs.between(from, next) + round(next, to, costs).presses;
		if (presses < best.presses) best = { presses, first: next };
	}
	return best;
}

function ringSteps(count: number, from: number, to: number): number {
	const down = (to - from + count) % count;
	return Math.min(down, count - down);
}

/** One tap towards a place; Down goes down the list. */
function moveTo(count: number, from: number, to: number): Browse {
	const down = (to - from + count) % count;
	return { do: 'move', key: down <= count - down ? 'down' : 'up' };
}

/** An item of the menu and where it stands. */
export interface MenuPlace<Item = MenuItem> {
	readonly path: readonly number[];
	readonly item: Item;
}

/** A panel's menu, looked up by what can be done there. */
export interface MenuMap {
	readonly bySetting: ReadonlyMap<SettingKey, MenuPlace<EditableItem>>;
	/** The item that sets all back, if the panel has one. */
	readonly defaults: MenuPlace | null;
	/** Items beside each other: of the top, then of each menu of the top; 0 where there is none. */
	readonly tops: number;
	readonly insides: readonly number[];
}

const made = new WeakMap<KeyedPanel, MenuMap>();

export function menuMap(panel: KeyedPanel): MenuMap {
	let map = made.get(panel);
	if (!map) {
		const all: MenuPlace[] = panel.menu.flatMap((item, i): MenuPlace[] =>
			item.kind === 'menu' ? item.items.map((leaf, n) => ({ path: [i, n], item: leaf })) : [{ path: [i], item }],
		);
		const bySetting = new Map<SettingKey, MenuPlace<EditableItem>>();
		for (const { path, item } of all)
			if ((item.kind === 'choice' || item.kind === 'number') && !bySetting.has(item.setting))
				bySetting.set(item.setting, { path, item });
		map = {
			bySetting,
			defaults: all.find(({ item }) => item.kind === 'action') ?? null,
			tops: panel.menu.length,
			insides: panel.menu.map((item) => (item.kind === 'menu' ? item.items.length : 0)),
		};
		made.set(panel, map);
	}
	return map;
}
