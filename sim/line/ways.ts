import { LINE_LIMITS } from './limits.ts';
import type { Drive, Leg, Tap, Wire } from './parts.ts';
import type { Reception } from './types.ts';

/** How the frames come to one tap, with sums from its source on. */
export interface FrameWay {
	readonly source: Drive;
	readonly tap: Tap;
	/** One step back, and the leg from there; null at the source itself. */
	readonly before: FrameWay | null;
	readonly leg: Leg | null;
	readonly steps: number;
	/** Its entry in a path; null for the contact of a bad socket. */
	readonly step: PathStep | null;
	/** Metres of cable, and of microphone cable, from the source. */
	readonly metres: number;
	readonly microphone: number;
	/** Metres since the last terminator (or the source), and the same with what the loads add. */
	readonly open: number;
	readonly openLoaded: number;
}

export type WaysToTaps = ReadonlyMap<Tap, FrameWay>;

type PathStep = Reception['path'][number];

/**
 * Walks out from all sources at once, as the copper goes: first both data wires together, then each wire alone where the other
 * is lost, then over what no wire passes; among equals by fewest steps, then cable id. So a way to a tap that hears something
 * is one its frames can come by. What a dead cable leads to is still on the way, so that the break can be named.
 */
export function grow(sources: readonly Drive[], ways: Map<Tap, FrameWay> = new Map()): Map<Tap, FrameWay> {
	let queue: Tap[] = [];
	let half: [Tap, Leg][] = [];
	let dead: [Tap, Leg][] = [];
	for (const source of sources) {
		if (ways.has(source.tap)) continue;
		ways.set(source.tap, {
			source,
			tap: source.tap,
			before: null,
			leg: null,
			steps: 0,
			step: { cable: null, device: source.tap.device },
			metres: 0,
			microphone: 0,
			open: 0,
			openLoaded: 0,
		});
		queue.push(source.tap);
	}
	spread();
	queue = strands(half, ways);
	do {
		spread();
		for (const [tap, leg] of half) visit(tap, leg);
		half = [];
		if (queue.length > 0) continue;
		for (const [tap, leg] of dead) visit(tap, leg);
		dead = [];
	} while (queue.length > 0);
	return ways;

	/** On by whole cables from all in the queue; what else hangs there is put by. */
	function spread(): void {
		for (const tap of queue) {
			for (const leg of tap.legs) {
				if (leg.joins.length === 2) visit(tap, leg);
				else (leg.joins.length === 1 ? half : dead).push([tap, leg]);
			}
		}
		queue = [];
	}

	function visit(from: Tap, leg: Leg): void {
		const tap = leg.from === from ? leg.to : leg.from;
		const before = ways.get(from);
		if (before === undefined || ways.has(tap)) return;
		ways.set(tap, onward(before, leg, tap));
		queue.push(tap);
	}
}

/**
 * Follows single wires on from where both come, and adds the ways to taps that had none. A tap may be reached by one wire and
 * then by the other apart, each going on by itself; so a way's `before` need not be the way that `ways` has for that tap.
 * @param half legs with one wire, each with a tap it hangs from
 * @returns the taps added
 */
function strands(half: readonly (readonly [Tap, Leg])[], ways: Map<Tap, FrameWay>): Tap[] {
	const added = new Set<Tap>();
	const known = new Set<Wire>();
	const byStep: [FrameWay, Wire][][] = [];
	for (const [tap, leg] of half) {
		const way = ways.get(tap);
		for (const wire of leg.joins.flat())
			if (way !== undefined && (wire === tap.minus || wire === tap.plus)) put(way, wire);
	}
	for (const here of byStep) {
		for (const [way, wire] of here ?? []) {
			for (const leg of way.tap.legs) {
				for (const [one, other] of leg.joins) {
					if (wire === one) reach(way, leg, leg.to, other);
					if (wire === other) reach(way, leg, leg.from, one);
				}
			}
		}
	}
	return [...added];

	function put(way: FrameWay, wire: Wire): void {
		known.add(wire);
		byStep[way.steps] ??= [];
		byStep[way.steps]?.push([way, wire]);
	}

	function reach(before: FrameWay, leg: Leg, tap: Tap, wire: Wire): void {
		if (known.has(wire) || (ways.has(tap) && !added.has(tap))) return;
		const way = onward(before, leg, tap);
		if (!ways.has(tap)) {
			ways.set(tap, way);
			added.add(tap);
		}
		put(way, wire);
	}
}

/** One step further along a leg, to the tap at its other end. */
function onward(before: FrameWay, leg: Leg, tap: Tap): FrameWay {
	const matched = tap.terminators > 0;
	return {
		source: before.source,
		tap,
		before,
		leg,
		steps: before.steps + 1,
		step: leg.cable === null ? null : { cable: leg.cable.id, device: tap.device },
		metres: before.metres + leg.metres,
		microphone: before.microphone + (leg.cable?.kind === 'microphone' ? leg.metres : 0),
		open: matched ? 0 : before.open + leg.metres,
		openLoaded: matched ? 0 : before.openLoaded + leg.metres + tap.loads * LINE_LIMITS.metresPerLoad,
	};
}

/** The ways from the source's own to this one, in order. */
export function along(way: FrameWay): FrameWay[] {
	const back: FrameWay[] = [];
	for (let at: FrameWay | null = way; at !== null; at = at.before) back.push(at);
	return back.reverse();
}

/**
 * Cables and devices from the talker to the end of this way, through any boxes; empty where nothing leads here. `wayTo`
 * gives the way to the input of a box.
 */
export function pathOf(way: FrameWay | undefined, wayTo: (input: Tap) => FrameWay | undefined): PathStep[] {
	const back: PathStep[] = [];
	const seen: Tap[] = [];
	let at = way;
	while (at !== undefined) {
		if (at.before !== null) {
			if (at.step !== null) back.push(at.step);
			at = at.before;
			continue;
		}
		const { input } = at.source;
		const earlier = input === null || seen.includes(input) ? undefined : wayTo(input);
		if (earlier === undefined && at.step !== null) back.push(at.step);
		if (input !== null) seen.push(input);
		at = earlier;
	}
	return back.reverse();
}
