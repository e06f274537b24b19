/**
 * What was worked out is kept, so that it is worked out once: the one way in `shared/` and `sim/` of remembering a result. Only for
 * what hangs on nothing but what it is given, and gives what nobody changes afterwards. What is kept for an object goes with it.
 */

/** As `work`, done once for each object. */
export function oncePer<K extends object, V>(work: (of: K) => V): (of: K) => V {
	const known = new WeakMap<K, { readonly value: V }>();
	return (of) => {
		let kept = known.get(of);
		if (!kept) {
			kept = { value: work(of) };
			known.set(of, kept);
		}
		return kept.value;
	};
}

/** Keeps things made for an object, each under a key of its own: made once, given again after that. */
export function onceUnder<K extends object, N, V>(): (of: K, key: N, make: () => V) => V {
	const shelfOf = oncePer((_: K) => new Map<N, { readonly value: V }>());
	return (of, key, make) => {
		const shelf = shelfOf(of);
		let kept = shelf.get(key);
		if (!kept) {
			kept = { value: make() };
			shelf.set(key, kept);
		}
		return kept.value;
	};
}

/** Keeps the last few things made, by name: what was asked for longest ago goes first. @param most how many are kept */
export function lastFew<V>(most: number): (name: string, make: () => V) => V {
	const kept = new Map<string, { readonly value: V }>();
	return (name, make) => {
		const found = kept.get(name) ?? { value: make() };
		kept.delete(name);
		kept.set(name, found);
		if (kept.size > most) for (const oldest of [...kept.keys()].slice(0, kept.size - most)) kept.delete(oldest);
		return found.value;
	};
}
