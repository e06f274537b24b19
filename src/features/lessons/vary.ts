import * as v from 'valibot';

const value = v.union([v.string(), v.number()]);
/** Numbers from one to another, both included, a step apart. */
const run = v.strictObject({ from: v.number(), to: v.number(), by: v.pipe(v.number(), v.gtValue(0)) });
const name = v.pipe(v.string(), v.regex(/^[a-z]+(,[a-z]+)*$/, 'names'));

/**
 * What differs between the cases of a task, by name: what each may be, or for names that belong together (`one,other`) rows of what
 * they may be together. Numbers may be told as a run of them.
 */
export const varySchema = v.record(
	name,
	v.union([v.pipe(v.array(v.union([value, v.array(value)])), v.minLength(2)), v.pipe(run, v.transform(numbersOf))]),
);

type Vary = v.InferOutput<typeof varySchema>;
type Row = Readonly<Record<string, string | number>>;

/** Most cases of a task: what differs in each stands on the lesson's page (ours). */
const MOST = 64;

/**
 * A task as it is written, once for each case: `$name` stands for what differs, in values and in ids (`wash-$n`), and so does
 * `{name}` in its words. Of more than {@link MOST} cases, as many from all over.
 * @throws RangeError for a row with fewer values than names
 */
export function casesOf(task: unknown, vary: Vary): unknown[] {
	const rows = Object.entries(vary).reduce<readonly Row[]>(
		(all, [names, values]) => all.flatMap((row) => values.map((each) => ({ ...row, ...named(names, each) }))),
		[{}],
	);
	return spread(rows).map((row) => filled(task, row));
}

/** The numbers of a run, to a thousandth. */
function numbersOf({ from, to, by }: v.InferOutput<typeof run>): number[] {
	const count = Math.floor((to - from) / by + 1e-9) + 1;
	return Array.from({ length: count }, (_, i) => Math.round(1000 * (from + i * by)) / 1000);
}

const named = (names: string, values: Vary[string][number]): Row => {
	const list = Array.isArray(values) ? values : [values];
	return Object.fromEntries(
		names.split(',').map((each, i) => {
			const value = list[i];
			if (value === undefined) throw new RangeError(`no value for '${each}' in [${list.join(', ')}] of '${names}'`);
			return [each, value];
		}),
	);
};

/** A step through the list that meets all of it before it meets anything twice, so that no name stays as it is. */
function spread(rows: readonly Row[]): Row[] {
	let step = Math.ceil(rows.length * 0.618);
	while (commonFactor(step, rows.length) > 1) step++;
	return Array.from({ length: Math.min(MOST, rows.length) }, (_, i) => rows[(i * step) % rows.length] as Row);
}

const commonFactor = (a: number, b: number): number => (b === 0 ? a : commonFactor(b, a % b));

function filled(found: unknown, row: Row): unknown {
	if (typeof found === 'string') {
		const whole = row[found.slice(1)];
		if (found.startsWith('$') && whole !== undefined) return whole;
		return found.replace(/\$([a-z]+)|\{([a-z]+)\}/g, (text, inId: string, inWords: string) =>
			String(row[inId ?? inWords] ?? text),
		);
	}
	if (Array.isArray(found)) return found.map((each) => filled(each, row));
	if (typeof found !== 'object' || found === null) return found;
	// of one id said twice, such as every wash and then the odd one, the later holds
	return Object.fromEntries(Object.entries(found).map(([key, each]) => [filled(key, row), filled(each, row)]));
}
