import type { MenuMap } from './menu.ts';

/** An item to be visited, and the presses its work takes once the panel stands on it. */
export interface Visit {
	readonly path: readonly number[];
	readonly presses: number;
}

/** A press while browsing: Set on what is shown, Back out of a menu, or Up or Down held to a sibling. */
export type Browse =
	| { readonly do: 'set' }
	| { readonly do: 'back' }
	| { readonly do: 'move'; readonly key: 'up' | 'down'; readonly repeats: number };

export interface Tour {
	readonly presses: number;
	/** Null where there is nothing to visit. */
	readonly first: Browse | null;
}

const NOTHING: Tour = Object.freeze({ presses: 0, first: null });

/**
 * The fewest presses that visit every item, and the first of them. Exact, since along one level of a menu any sibling is one
 * press away (a key held long enough goes round), a menu is entered at its first item, and Back leaves it:
 *
 * - inside a menu: one press for each item still to visit there but the one shown; then Back, if anything is left elsewhere
 * - on top: one press for each place to visit but the one shown; for each menu one to enter, and one for each of its items
 *   but the first; and Back out of each menu but the last. Some menu can stand last unless the only one is that where the
 *   tour begins, and then putting it last would cost one move more, which comes to the same.
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
	const here = places.get(top) ?? new Set<number>();
	places.delete(top);
	const shown = here.has(leaf);
	const rest = places.size > 0 ? 1 + fromTop(map, top, places).presses : 0;
	const presses = work + here.size - (shown ? 1 : 0) + rest;
	if (shown) return { presses, first: { do: 'set' } };
	if (here.size > 0) return { presses, first: nearestMove(leaf, [...here], map.insides[top] ?? 1) };
	return { presses, first: { do: 'back' } };
}

function fromTop(map: MenuMap, top: number, places: ReadonlyMap<number, ReadonlySet<number>>): Tour {
	const isMenu = (place: number): boolean => (map.insides[place] ?? 0) > 0;
	const shown = places.has(top);
	let presses = places.size - (shown ? 1 : 0);
	let menus = 0;
	let canEnd = false;
	for (const [place, inside] of places) {
		if (!isMenu(place)) continue;
		menus++;
		canEnd ||= place !== top || places.size === 1;
		presses += 1 + inside.size - (inside.has(0) ? 1 : 0);
	}
	presses += menus - (canEnd ? 1 : 0);
	if (shown) return { presses, first: { do: 'set' } };
	const leaves = [...places.keys()].filter((place) => !isMenu(place));
	return { presses, first: nearestMove(top, leaves.length > 0 ? leaves : [...places.keys()], map.tops) };
}

/** To whichever of these is the fewest steps away; Down goes down the list. */
function nearestMove(from: number, to: readonly number[], count: number): Browse {
	let best = { key: 'down' as 'up' | 'down', steps: Number.POSITIVE_INFINITY };
	for (const at of to) {
		const down = (at - from + count) % count;
		if (down < best.steps) best = { key: 'down', steps: down };
		if (count - down < best.steps) best = { key: 'up', steps: count - down };
	}
	return { do: 'move', key: best.key, repeats: best.steps - 1 };
}
