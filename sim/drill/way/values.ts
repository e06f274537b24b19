import { lastFew, oncePer, onceUnder } from '../../../shared/memo/index.ts';
import { type KeyedPanel, listOf, type SettingValue } from '../../../shared/profile/index.ts';
import type { EditableItem } from '../../fixture/index.ts';
import { direction, holdFor, stepSize, stepValue } from '../../fixture/index.ts';
import { allows, type SettingDomain } from '../wish.ts';

/** One press of Up or Down while a value is edited. */
export interface ValuePress {
	readonly key: 'up' | 'down';
	/** The repeat at whose sight a held key is let go; 0 for a tap. */
	readonly cue: number;
}

/** Presses that are sure to do, and the first of them (null where none is needed). */
export interface ValueWay {
	readonly presses: number;
	readonly first: ValuePress | null;
}

const UP_AND_DOWN = ['up', 'down'] as const;

/**
 * The fewest presses of Up and Down that are sure to bring an edited value to an allowed one, over the machine's own steps,
 * held as a person holds (see `hold.ts`): however late each hold ends within its scatter, no more are needed. Each press goes
 * the shorter way round to where the value is bound, though a detour may come out a press better: nobody would think of it. Of
 * ways with as few, the one that needs least on the average, and then the one held least.
 * @returns null where no press leads there
 */
export function valueWay(
	panel: KeyedPanel,
	item: EditableItem,
	from: SettingValue,
	to: SettingDomain,
): ValueWay | null {
	if (allows(to, from)) return { presses: 0, first: null };
	const moves = movesOf(panel, item);
	const at = moves.index.get(from);
	if (at === undefined) return fromOutside(panel, item, from, to);
	const { presses, firsts } = tableTo(panel, item, to);
	const first = firsts[at];
	return first ? { presses: presses[at] as number, first } : null;
}

/** A press, and the stretch of passed values it may end on. */
interface Move {
	readonly press: ValuePress;
	/** By value, then repeats: what a held key comes to. Shared by all moves of a key. */
	readonly passed: Uint16Array;
	readonly least: number;
	readonly most: number;
}

/** Values of an item as small numbers, and where each press may lead from each. */
interface Moves {
	readonly values: readonly SettingValue[];
	readonly index: ReadonlyMap<SettingValue, number>;
	/** Entries of `passed` for each value. */
	readonly width: number;
	/** Taps first, then holds from short to long. */
	readonly moves: readonly Move[];
}

const movesKept = onceUnder<EditableItem, KeyedPanel, Moves>();

const movesOf = (panel: KeyedPanel, item: EditableItem): Moves => movesKept(item, panel, () => movesMade(panel, item));

function movesMade(panel: KeyedPanel, item: EditableItem): Moves {
	const values: SettingValue[] =
		item.kind === 'choice'
			? listOf(item).map(({ value }) => value as SettingValue)
			: Array.from({ length: item.most - item.least + 1 }, (_, i) => item.least + i);
	const index = new Map(values.map((value, i) => [value, i]));
	const cues = [0, ...(item.kind === 'number' ? cuesOf(panel) : [])];
	const width = landingOf(panel, cues.at(-1) ?? 0).most + 1;
	const passedBy = (key: 'up' | 'down'): Uint16Array => {
		const all = new Uint16Array(values.length * width);
		for (const [i, value] of values.entries()) {
			let at = value;
			for (let repeats = 0; repeats < width; repeats++) {
				at = stepValue(item, at, direction(key), stepSize(panel, repeats));
				all[i * width + repeats] = index.get(at) ?? 0;
			}
		}
		return all;
	};
	const passed = { up: passedBy('up'), down: passedBy('down') };
	const moves = cues.flatMap((cue) =>
		UP_AND_DOWN.map((key) => ({ press: { key, cue }, passed: passed[key], ...landingOf(panel, cue) })),
	);
	return { values, index, width, moves };
}

/** Stands for a value from which no press is known to lead there: more than any number of presses. */
const FAR = 30_000;

/** By value: presses that are sure to do, `FAR` where none leads there; and the first of them. */
interface Table {
	readonly presses: Int16Array;
	readonly firsts: readonly (ValuePress | null)[];
}

/** Goals remembered for each item, at most. */
const REMEMBERED = 600;
const tables = oncePer((_: EditableItem) => lastFew<Table>(REMEMBERED));

const tableTo = (panel: KeyedPanel, item: EditableItem, to: SettingDomain): Table =>
	tables(item)(JSON.stringify(to), () => search(movesOf(panel, item), to));

/** From the allowed values outwards: each round finds those from which some press is sure to end on what earlier rounds found. */
function search({ values, width, moves }: Moves, to: SettingDomain): Table {
	const presses = Int16Array.from(values, (value) => (allows(to, value) ? 0 : FAR));
	const firsts: (ValuePress | null)[] = values.map(() => null);
	let left = values.flatMap((_, i) => (presses[i] === FAR ? [i] : []));
	const taps = { up: tapsBy('up', presses, moves, width), down: tapsBy('down', presses, moves, width) };
	for (let round = 1, found = true; found; round++) {
		found = false;
		for (const from of left) {
			let best = Number.POSITIVE_INFINITY;
			for (const { press, passed, least, most } of moves) {
				const back = press.key === 'up' ? 'down' : 'up';
				if ((taps[press.key][from] as number) > (taps[back][from] as number)) continue;
				let sum = 0;
				let at = from * width + least;
				const end = from * width + most;
				for (; at <= end; at++) {
					const needed = presses[passed[at] as number] as number;
					// found this round or not yet: no press to be sure of
					if (needed >= round) break;
					sum += needed;
				}
				const mean = sum / (most - least + 1);
				if (at <= end || mean >= best) continue;
				best = mean;
				firsts[from] = press;
			}
			if (best === Number.POSITIVE_INFINITY) continue;
			presses[from] = round;
			found = true;
		}
		left = left.filter((from) => presses[from] === FAR);
	}
	return { presses, firsts };
}

/** By value: taps of one key to the nearest allowed value; `FAR` where there is none that way. */
function tapsBy(key: 'up' | 'down', presses: Int16Array, moves: readonly Move[], width: number): Int16Array {
	const taps = presses.map((needed) => (needed === 0 ? 0 : FAR));
	const passed = moves.find(({ press }) => press.key === key)?.passed as Uint16Array;
	const count = taps.length;
	// against the way the key goes, and round once more where a list goes round
	for (let n = 0; n < 2 * count; n++) {
		const at = key === 'up' ? count - 1 - (n % count) : n % count;
		taps[at] = Math.min(taps[at] as number, 1 + (taps[passed[at * width] as number] as number));
	}
	return taps;
}

/** A value this panel cannot show steps onto its list first. */
function fromOutside(panel: KeyedPanel, item: EditableItem, from: SettingValue, to: SettingDomain): ValueWay | null {
	let best: ValueWay | null = null;
	for (const key of UP_AND_DOWN) {
		const next = stepValue(item, from, direction(key), 1);
		if (!movesOf(panel, item).index.has(next)) continue;
		const rest = valueWay(panel, item, next, to);
		if (rest && (!best || rest.presses + 1 < best.presses))
			best = { presses: rest.presses + 1, first: { key, cue: 0 } };
	}
	return best;
}

/**
 * How a person holds a key, stated once. Somebody watches the display and lets go when it reads what they wait for; the key
 * comes up a reaction later, and meanwhile the value runs on. So a hold does not end on a value: it ends near one, and
 * taps do the rest. Words that fly past cannot be read, so holds are asked for on numbers alone, and along a menu or
 * a list there are taps.
 */
export const HAND = Object.freeze({
	/** From what the display shows to the key coming up, ms: anything between these. A scatter of 250 ms; ours, no source. */
	soonestMs: 100,
	latestMs: 350,
	/** The longest hold that is asked for, its reaction and all, ms. Ours, no source. */
	longestMs: 4000,
	/** Repeats before which nobody is asked to let go: what is nearer is tapped. Ours, no source. */
	fewestRepeats: 4,
} as const);

/** Repeats that a hold may have come to when the key is up. */
export interface HoldRange {
	readonly least: number;
	readonly most: number;
}

/**
 * Where a hold may end that is to be let go when the display shows its nth repeat.
 * @param cue that repeat, from 1; 0 is a tap, which is over before anything repeats
 */
export function landingOf({ repeat }: KeyedPanel, cue: number): HoldRange {
	if (cue === 0) return { least: 0, most: 0 };
	const later = (ms: number): number => Math.floor(ms / repeat.every);
	return { least: cue + later(HAND.soonestMs), most: cue + later(HAND.latestMs) };
}

/** Milliseconds from the key going down to its coming up, for a hold let go at a cue that ended after so many repeats. */
export function heldMs(panel: KeyedPanel, cue: number, repeats: number): number {
	if (cue === 0) return 0;
	return holdFor(panel, cue) + Math.max(HAND.soonestMs, (repeats - cue) * panel.repeat.every);
}

/** Repeats at which a person may be asked to let go; empty where the panel is too slow for any. */
export function cuesOf(panel: KeyedPanel): readonly number[] {
	const cues: number[] = [];
	for (let cue = HAND.fewestRepeats; holdFor(panel, cue) + HAND.latestMs <= HAND.longestMs; cue++) cues.push(cue);
	return cues;
}
