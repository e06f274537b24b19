import fc from 'fast-check';

type Way = readonly (string | number)[];

/** Every place in a plain value, the top included. */
function waysInto(value: unknown, way: Way = []): Way[] {
	if (typeof value !== 'object' || value === null) return [way];
	return [
		way,
		...Object.entries(value).flatMap(([key, inner]) =>
			waysInto(inner, [...way, Array.isArray(value) ? Number(key) : key]),
		),
	];
}

function put(value: unknown, [first, ...rest]: Way, junk: unknown): unknown {
	if (first === undefined) return junk;
	const copy: Record<string | number, unknown> | unknown[] = Array.isArray(value)
		? [...value]
		: { ...(value as Record<string, unknown>) };
	(copy as Record<string | number, unknown>)[first] = put(
		(value as Record<string | number, unknown>)[first],
		rest,
		junk,
	);
	return copy;
}

const junk = fc.oneof(
	fc.anything(),
	fc.constantFrom(
		null,
		undefined,
		'',
		'__proto__',
		'constructor',
		-1,
		0,
		1,
		512,
		513,
		1e308,
		Number.NaN,
		0.5,
		[],
		{},
		true,
	),
);

/** A good thing with one place in it spoilt, or junk altogether. */
export function spoilt<T>(good: T): fc.Arbitrary<T> {
	return fc.tuple(fc.constantFrom(...waysInto(good)), junk).map(([way, put_]) => put(good, way, put_) as T);
}
