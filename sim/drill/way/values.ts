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

const UP_AND_DOWN = ['up', 'down'] as const;

/**
 * The fewest presses of Up and Down that bring an edited value to an allowed one, over the machine's own steps: a hold of any
 * length is one press, and long ones take big steps. Of ways with as few presses, the one held least.
 * @returns null where no press leads there
 */
export function valueWay(panel: KeyedPanel, item: EditableItem, from: SettingValue, to: Allowed): ValueWay | null {
	if (allows(to, from)) return { presses: 0, first: null };
	const holds = holdsOf(panel, item);
	const at = holds.index.get(from);
	if (at === undefined) return fromOutside(panel, item, from, to);
	const { presses, ms } = distancesTo(panel, item, to);
	const here = presses[at] ?? -1;
	if (here < 0) return null;
	let first: ValuePress | null = null;
	let least = Number.POSITIVE_INFINITY;
	for (const key of UP_AND_DOWN) {
		for (const [repeats, next] of (holds.by[key][at] ?? []).entries()) {
			const spent = holdFor(panel, repeats) + (ms[next] ?? 0);
			if (presses[next] !== here - 1 || spent >= least) continue;
			least = spent;
			first = { key, repeats };
		}
	}
	return { presses: here, first };
}

/** Values of an item as small numbers, and where a hold of either key leads from each. */
interface Holds {
	readonly values: readonly SettingValue[];
	readonly index: ReadonlyMap<SettingValue, number>;
	/** By key and value: the value reached after 0 repeats, 1, 2 and so on, until all that come have been. */
	readonly by: Readonly<Record<'up' | 'down', readonly Uint16Array[]>>;
}

const holdsMade = new WeakMap<EditableItem, Holds>();

function holdsOf(panel: KeyedPanel, item: EditableItem): Holds {
	let holds = holdsMade.get(item);
	if (!holds) {
		const values: SettingValue[] =
			item.kind === 'choice'
				? item.options.map(({ value }) => value as SettingValue)
				: Array.from({ length: item.most - item.least + 1 }, (_, i) => item.least + i);
		const index = new Map(values.map((value, i) => [value, i]));
		const steps = (key: 'up' | 'down', size: number): number[] =>
			values.map((value) => index.get(stepValue(item, value, direction(key), size)) ?? 0);
		const along = (key: 'up' | 'down'): Uint16Array[] => {
			const one = steps(key, 1);
			const big = steps(key, panel.repeat.bigStep);
			return values.map((_, from) => passed(panel, one, big, from));
		};
		holds = { values, index, by: { up: along('up'), down: along('down') } };
		holdsMade.set(item, holds);
	}
	return holds;
}

/** What a hold passes from a value, until it stands still or comes round in big steps. */
function passed(panel: KeyedPanel, one: readonly number[], big: readonly number[], from: number): Uint16Array {
	let at = one[from] ?? from;
	const all = [at];
	let round = at;
	for (let repeat = 1; ; repeat++) {
		const isQuick = repeat > panel.repeat.quickAfter;
		at = (isQuick ? big : one)[at] ?? at;
		if (isQuick && at === round) return Uint16Array.from(all);
		all.push(at);
		if (!isQuick) round = at;
		else if (at === big[at]) return Uint16Array.from(all);
	}
}

/** By value: the fewest presses to an allowed one, -1 where none leads there; and the least time held on such a way, ms. */
interface Distances {
	readonly presses: Int16Array;
	readonly ms: Float64Array;
}

/** Goals remembered for each item, at most. */
const REMEMBERED = 600;
const distancesMade = new WeakMap<EditableItem, Map<string, Distances>>();

function distancesTo(panel: KeyedPanel, item: EditableItem, to: Allowed): Distances {
	let byGoal = distancesMade.get(item);
	if (!byGoal || byGoal.size >= REMEMBERED) {
		byGoal = new Map();
		distancesMade.set(item, byGoal);
	}
	const goal = JSON.stringify(to);
	let distances = byGoal.get(goal);
	if (!distances) {
		distances = search(panel, holdsOf(panel, item), to);
		byGoal.set(goal, distances);
	}
	return distances;
}

/** Breadth first, from the allowed values backwards: each round finds those one press from what the last round found. */
function search(panel: KeyedPanel, holds: Holds, to: Allowed): Distances {
	const presses = Int16Array.from(holds.values, (value) => (allows(to, value) ? 0 : -1));
	const ms = new Float64Array(presses.length);
	for (let round = 1, found = true; found; round++) {
		found = false;
		for (let from = 0; from < presses.length; from++) {
			if (presses[from] !== -1) continue;
			let least = Number.POSITIVE_INFINITY;
			for (const key of UP_AND_DOWN) {
				const along = holds.by[key][from] as Uint16Array;
				for (let repeats = 0; repeats < along.length; repeats++) {
					const next = along[repeats] as number;
					if (presses[next] !== round - 1) continue;
					least = Math.min(least, holdFor(panel, repeats) + (ms[next] as number));
				}
			}
			if (least === Number.POSITIVE_INFINITY) continue;
			presses[from] = round;
			ms[from] = least;
			found = true;
		}
	}
	return { presses, ms };
}

/** A value this panel cannot show steps onto its list first. */
function fromOutside(panel: KeyedPanel, item: EditableItem, from: SettingValue, to: Allowed): ValueWay | null {
	const { values } = holdsOf(panel, item);
	let best: ValueWay | null = null;
	for (const key of UP_AND_DOWN) {
		let at = from;
		for (let repeats = 0; repeats < values.length; repeats++) {
			at = stepValue(item, at, direction(key), stepSize(panel, repeats));
			const rest = valueWay(panel, item, at, to);
			if (rest && (!best || rest.presses + 1 < best.presses))
				best = { presses: rest.presses + 1, first: { key, repeats } };
		}
	}
	return best;
}
