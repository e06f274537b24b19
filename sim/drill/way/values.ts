import type { KeyedPanel, LeafItem, SettingValue } from '../../../shared/profile/index.ts';
import { direction, holdFor, stepSize, stepValue } from '../../fixture/index.ts';
import { type Allowed, allows } from '../wish.ts';

export type EditableItem = Extract<LeafItem, { kind: 'choice' | 'number' }>;

/** One press of Up or Down while a value is edited: held for so many repeats, 0 for a tap. */
export interface ValuePress {
	readonly key: 'up' | 'down';
	readonly repeats: number;
}

/** The fewest presses to an allowed value, and the first of them (null where none is needed). */
export interface ValueWay {
	readonly presses: number;
	readonly first: ValuePress | null;
}

/** Values of an item as small numbers, and where one step, or one big step, leads from each. */
interface Steps {
	readonly values: SettingValue[];
	readonly index: ReadonlyMap<SettingValue, number>;
	/** By key, then value: after one step; after one big step. */
	readonly one: Readonly<Record<'up' | 'down', readonly number[]>>;
	readonly big: Readonly<Record<'up' | 'down', readonly number[]>>;
}

const stepsMade = new WeakMap<EditableItem, Steps>();

function stepsOf(panel: KeyedPanel, item: EditableItem): Steps {
	let steps = stepsMade.get(item);
	if (!steps) {
		const values: SettingValue[] =
			item.kind === 'choice'
				? item.options.map(({ value }) => value as SettingValue)
				: Array.from({ length: item.most - item.least + 1 }, (_, i) => item.least + i);
		const index = new Map(values.map((value, i) => [value, i]));
		const along = (key: 'up' | 'down', size: number) =>
			values.map((value) => index.get(stepValue(item, value, direction(key), size)) ?? 0);
		const { bigStep } = panel.repeat;
		steps = {
			values,
			index,
			one: { up: along('up', 1), down: along('down', 1) },
			big: { up: along('up', bigStep), down: along('down', bigStep) },
		};
		stepsMade.set(item, steps);
	}
	return steps;
}

/** How far each value is from one it started at, worked out a press at a time and no further than was asked. */
interface Spread {
	/** Presses to each value; -1 where not reached yet. */
	readonly presses: Int16Array;
	/** Milliseconds held on the quickest of the ways with that many presses. */
	readonly ms: Float64Array;
	/** The first press of that way. */
	readonly first: (ValuePress | null)[];
	/** Values reached in exactly `depth` presses. */
	edge: readonly number[];
	depth: number;
}

const spreads = new WeakMap<EditableItem, Map<number, Spread>>();

/**
 * The fewest presses of Up and Down that bring an edited value to an allowed one, over the machine's own steps: a hold of any
 * length is one press, and long ones take big steps. Of ways with as few presses, the one held least.
 * @returns null where no press leads there
 */
export function valueWay(panel: KeyedPanel, item: EditableItem, from: SettingValue, to: Allowed): ValueWay | null {
	if (allows(to, from)) return { presses: 0, first: null };
	const steps = stepsOf(panel, item);
	const start = steps.index.get(from);
	// a value this panel cannot show steps onto its list first
	if (start === undefined) return fromOutside(panel, item, from, to);
	const spread = spreadFrom(item, start, steps.values.length);
	for (;;) {
		const found = nearest(spread, steps, to);
		if (found) return found;
		if (spread.edge.length === 0) return null;
		widen(panel, steps, spread);
	}
}

function spreadFrom(item: EditableItem, start: number, size: number): Spread {
	let bySource = spreads.get(item);
	if (!bySource) {
		bySource = new Map();
		spreads.set(item, bySource);
	}
	let spread = bySource.get(start);
	if (!spread) {
		spread = {
			presses: new Int16Array(size).fill(-1),
			ms: new Float64Array(size),
			first: new Array<ValuePress | null>(size).fill(null),
			edge: [start],
			depth: 0,
		};
		spread.presses[start] = 0;
		bySource.set(start, spread);
	}
	return spread;
}

function nearest(spread: Spread, steps: Steps, to: Allowed): ValueWay | null {
	let best = -1;
	const consider = (i: number | undefined): void => {
		if (i === undefined || (spread.presses[i] ?? -1) < 0) return;
		const closer =
			best < 0 ||
			(spread.presses[i] ?? 0) < (spread.presses[best] ?? 0) ||
			(spread.presses[i] === spread.presses[best] && (spread.ms[i] ?? 0) < (spread.ms[best] ?? 0));
		if (closer) best = i;
	};
	if ('value' in to) consider(steps.index.get(to.value));
	else for (const { from, to: last } of to.within) for (let v = from; v <= last; v++) consider(steps.index.get(v));
	return best < 0 ? null : { presses: spread.presses[best] ?? 0, first: spread.first[best] ?? null };
}

/** One press further in every direction. */
function widen(panel: KeyedPanel, steps: Steps, spread: Spread): void {
	const next = spread.depth + 1;
	const edge: number[] = [];
	for (const from of spread.edge) {
		const since = spread.ms[from] ?? 0;
		for (const key of ['up', 'down'] as const) {
			holds(panel, steps, from, key, (to, repeats) => {
				const ms = since + holdFor(panel, repeats);
				const known = spread.presses[to] ?? -1;
				if (known >= 0 && (known < next || (spread.ms[to] ?? 0) <= ms)) return;
				if (known < 0) edge.push(to);
				spread.presses[to] = next;
				spread.ms[to] = ms;
				spread.first[to] = spread.depth === 0 ? { key, repeats } : (spread.first[from] ?? null);
			});
		}
	}
	spread.edge = edge;
	spread.depth = next;
}

/** Every value a hold of one key passes, with its repeats, until it stands still or comes round. */
function holds(
	panel: KeyedPanel,
	steps: Steps,
	from: number,
	key: 'up' | 'down',
	visit: (to: number, repeats: number) => void,
): void {
	const one = steps.one[key];
	const big = steps.big[key];
	let at = one[from] ?? from;
	visit(at, 0);
	const { quickAfter } = panel.repeat;
	let round = at;
	for (let repeat = 1; ; repeat++) {
		at = (repeat > quickAfter ? big : one)[at] ?? at;
		visit(at, repeat);
		if (repeat <= quickAfter) round = at;
		else if (at === round || at === big[at]) return;
	}
}

function fromOutside(panel: KeyedPanel, item: EditableItem, from: SettingValue, to: Allowed): ValueWay | null {
	let best: ValueWay | null = null;
	for (const key of ['up', 'down'] as const) {
		let at = from;
		const { length } = stepsOf(panel, item).values;
		for (let repeats = 0; repeats < length; repeats++) {
			at = stepValue(item, at, direction(key), stepSize(panel, repeats));
			const rest = valueWay(panel, item, at, to);
			if (rest && (!best || rest.presses + 1 < best.presses))
				best = { presses: rest.presses + 1, first: { key, repeats } };
		}
	}
	return best;
}
