import { byText, type Drive, type Plant, root, sortedBy, type Tap, type Wire } from './parts.ts';
import type { Box, DataSource, Wiring } from './types.ts';

export interface Drives {
	/** What sends, sorted by socket. */
	readonly active: readonly Drive[];
	/** Outputs of boxes that do not: no power, or nothing at the input. Sorted by socket. */
	readonly idle: readonly Drive[];
}

/**
 * Settles who sends, and marks the wires each one drives. A box that is on sends on at an output once the input behind it hears
 * something, be it spoiled; so this goes round until no more outputs wake. More drives never silence an input, so the end is the
 * same whatever the order.
 */
export function settle(plant: Plant, wiring: Wiring): Drives {
	const active: Drive[] = [];
	for (const talker of wiring.talkers) {
		const tap = plant.taps.get(talker.kind === 'leader' ? talker.fixture : talker.port);
		if (tap !== undefined) active.push(wake({ port: talker.port, tap, talker, box: null, input: null }));
	}
	let asleep = wiring.boxes.flatMap((box) => outputsOf(plant, box));
	let woke = true;
	while (woke) {
		const still: Drive[] = [];
		for (const drive of asleep) {
			if (drive.box?.on && drive.input !== null && hearsSomething(drive.input)) active.push(wake(drive));
			else still.push(drive);
		}
		woke = still.length < asleep.length;
		asleep = still;
	}
	const byPort = (a: Drive, b: Drive) => byText(a.port, b.port);
	return { active: active.sort(byPort), idle: asleep.sort(byPort) };
}

/** A box's outputs that have a plug in them. */
function outputsOf(plant: Plant, box: Box): Drive[] {
	return box.outputs.flatMap(({ port, from }) => {
		const tap = plant.taps.get(port);
		return tap === undefined ? [] : [{ port, tap, talker: null, box, input: plant.taps.get(from) ?? null }];
	});
}

function wake(drive: Drive): Drive {
	const minus = root(drive.tap.minus);
	const plus = root(drive.tap.plus);
	for (const wire of minus === plus ? [minus] : [minus, plus]) {
		wire.drives ??= [];
		wire.drives.push(drive);
	}
	return drive;
}

/** Whose frames come out of these drives in the end, through any boxes, sorted by socket. */
export function sourcesBehind(drives: readonly Drive[]): DataSource[] {
	const seen = new Set<Drive>();
	const talkers = new Set<DataSource>();
	const left = [...drives];
	for (let drive = left.pop(); drive !== undefined; drive = left.pop()) {
		if (seen.has(drive)) continue;
		seen.add(drive);
		if (drive.talker !== null) talkers.add(drive.talker);
		if (drive.input === null) continue;
		const feed = reach(drive.input);
		if (feed.kind === 'many') left.push(...feed.drives);
		if (feed.kind === 'one') left.push(feed.drive);
	}
	return sortedBy(talkers, (talker) => talker.port);
}

/**
 * Which drives a tap is joined to, by copper alone.
 * - `one`: a single drive. `pair` says how its two wires come in: straight, crossed (swapped), shorted together,
 *   half (one came, on its own pin) or half-crossed (one came, on the other's pin). `lost` is the wire that did not come,
 *   by its name at the talker; `loose` is this tap's conductor that hangs on nothing.
 */
export type Reach =
	| { readonly kind: 'none' }
	| { readonly kind: 'many'; readonly drives: readonly Drive[] }
	| {
			readonly kind: 'one';
			readonly drive: Drive;
			readonly pair: 'straight' | 'crossed' | 'shorted' | 'half' | 'half-crossed';
			readonly lost: 'minus' | 'plus' | null;
			readonly loose: Wire | null;
	  };

/** A reach of a single drive. */
export type One = Extract<Reach, { kind: 'one' }>;

const NONE: Reach = { kind: 'none' };

export function reach(tap: Tap): Reach {
	const minus = root(tap.minus);
	const plus = root(tap.plus);
	const drive = minus.drives?.[0] ?? plus.drives?.[0];
	if (drive === undefined) return NONE;
	if (isShared(minus, drive) || isShared(plus, drive)) {
		return { kind: 'many', drives: [...new Set([...(minus.drives ?? []), ...(plus.drives ?? [])])] };
	}
	const one = (pair: One['pair'], lost: One['lost'] = null, loose: Wire | null = null): One => {
		return { kind: 'one', drive, pair, lost, loose };
	};
	const sentMinus = root(drive.tap.minus);
	const sentPlus = root(drive.tap.plus);
	if (sentMinus === sentPlus) return one('shorted');
	if (minus === plus) return one('shorted', minus === sentMinus ? 'plus' : 'minus');
	if (minus === sentMinus) return plus === sentPlus ? one('straight') : one('half', 'plus', plus);
	if (plus === sentPlus) return one('half', 'minus', minus);
	if (minus === sentPlus) return plus === sentMinus ? one('crossed') : one('half-crossed', 'minus', plus);
	return one('half-crossed', 'plus', minus);
}

/** Whether anyone but this one drives the wire. */
function isShared(wire: Wire, drive: Drive): boolean {
	return wire.drives !== null && (wire.drives.length > 1 || wire.drives[0] !== drive);
}

/** Whether anything comes in that a receiver would take for frames, whole or spoiled. */
function hearsSomething(tap: Tap): boolean {
	const what = reach(tap);
	if (what.kind === 'one') return what.pair === 'straight' || what.pair === 'half';
	return what.kind === 'many';
}
