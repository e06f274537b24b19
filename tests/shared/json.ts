import fc from 'fast-check';

/** What JSON can hold. */
export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** A deep copy, through JSON and back: as a file would bring it. */
export function throughJson(value: unknown): Json {
	return JSON.parse(JSON.stringify(value)) as Json;
}

type Place = { readonly holder: Json[] | { [key: string]: Json }; readonly key: string | number };

/** Every place in a value that holds another, from the top down. */
function placesIn(value: Json): Place[] {
	if (value === null || typeof value !== 'object') return [];
	const keys: (string | number)[] = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
	return keys.flatMap((key) => [
		{ holder: value, key },
		...placesIn((value as { [key: string | number]: Json })[key] as Json),
	]);
}

/** The keys and indexes a path is made of: `a[2].b` is a, 2, b. */
function keysOf(path: string): (string | number)[] {
	return [...path.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, name]) =>
		index === undefined ? (name ?? '') : Number(index),
	);
}

/** What stands at a path of a value; undefined where nothing does. */
export function at(value: unknown, path: string): unknown {
	return keysOf(path).reduce<unknown>(
		(here, key) => (here as Record<string | number, unknown> | null | undefined)?.[key],
		value,
	);
}

/** A copy of a value with other things put at some paths; `undefined` takes what is there away. */
export function withPut(value: unknown, puts: Readonly<Record<string, unknown>>): Json {
	const copy = throughJson(value);
	for (const [path, thing] of Object.entries(puts)) {
		const keys = keysOf(path);
		const last = keys.pop() as string | number;
		const holder = keys.reduce<unknown>((here, key) => (here as Record<string | number, unknown>)[key], copy);
		if (thing === undefined && Array.isArray(holder)) holder.splice(Number(last), 1);
		else if (thing === undefined) delete (holder as Record<string | number, unknown>)[last];
		else (holder as Record<string | number, unknown>)[last] = thing;
	}
	return copy;
}

/** One thing done to a value: what, where (a share of all places), and with what. */
type Change = {
	readonly do: 'delete' | 'replace' | 'add' | 'twice' | 'move' | 'nudge';
	readonly where: number;
	readonly thing: Json;
};

const share = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });

const oddThing: fc.Arbitrary<Json> = fc.oneof(
	fc.constantFrom<Json>(null, true, false, '', ' ', 'x'.repeat(200), 'no-such-id', '__proto__', 'constructor', [], {}),
	fc.constantFrom<Json>(-1, 0, 0.5, 1.5, 65, 256, 513, 1e9, -1e9, 1e308),
	fc.jsonValue({ maxDepth: 4 }) as fc.Arbitrary<Json>,
);

export const changes: fc.Arbitrary<Change[]> = fc.array(
	fc.record({
		do: fc.constantFrom('delete', 'replace', 'add', 'twice', 'move', 'nudge'),
		where: share,
		thing: oddThing,
	}),
	{ minLength: 1, maxLength: 4 },
);

/** A copy of a value with the changes done to it, one after the other. */
export function changed(value: unknown, list: readonly Change[]): Json {
	const copy = throughJson(value);
	for (const change of list) {
		const places = placesIn(copy);
		const place = places[Math.floor(change.where * places.length)];
		if (!place) continue;
		const thing = throughJson(change.thing);
		const holder = place.holder as { [key: string | number]: Json };
		const here = holder[place.key] as Json;
		if (change.do === 'delete') {
			if (Array.isArray(place.holder)) place.holder.splice(Number(place.key), 1);
			else delete holder[place.key];
		} else if (change.do === 'replace') holder[place.key] = thing;
		else if (change.do === 'add') {
			if (Array.isArray(here)) here.push(thing);
			else if (here !== null && typeof here === 'object') here['extra'] = thing;
		} else if (change.do === 'twice' && Array.isArray(place.holder)) place.holder.push(throughJson(here));
		else if (change.do === 'move' && Array.isArray(here)) here.reverse();
		else if (change.do === 'nudge' && typeof here === 'number')
			holder[place.key] = here + (change.where < 0.5 ? -1 : 1);
	}
	return copy;
}
