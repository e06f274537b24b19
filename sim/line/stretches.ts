import { LINE_LIMITS, LINE_RATES, ramp } from './limits.ts';
import {
	type Drive,
	type FrameTrouble,
	type Leg,
	type Plant,
	root,
	type Stretch,
	sortedBy,
	type Tap,
	thousandths,
} from './parts.ts';
import { farSocket, pluggedIn } from './plant.ts';
import type { WaysToTaps } from './ways.ts';

/** Sorts all taps into stretches: those that share both data wires. */
export function stretch(plant: Plant): void {
	const known = new Map<number, Stretch>();
	for (const tap of plant.all) {
		const minus = root(tap.minus);
		const plus = root(tap.plus);
		const key = Math.min(minus.id, plus.id) * 2 ** 26 + Math.max(minus.id, plus.id);
		let its = known.get(key);
		if (its === undefined) {
			its = { taps: [], legs: [], splits: new Set(), shorted: minus === plus, troubles: null, ring: null };
			known.set(key, its);
		}
		its.taps.push(tap);
		tap.stretch = its;
	}
	for (const leg of plant.legs) {
		const its = leg.from.stretch;
		if (leg.joins.length === 0 || its === null || its !== leg.to.stretch) continue;
		its.legs.push(leg);
		leg.from.degree += 1;
		leg.to.degree += 1;
	}
	for (const [port, count] of plant.plugs) if (count > 1) plant.tapOf(port)?.stretch?.splits.add(port);
}

/** Cables by which a stretch closes on itself, sorted; none on a plain line. */
export function ringOf(its: Stretch, plant: Plant): readonly string[] {
	if (its.ring === null) {
		const legs = its.shorted ? legsAlong(its, plant) : its.legs.length < its.taps.length ? [] : its.legs;
		its.ring = sortedBy(closing(legs), (id) => id);
	}
	return its.ring;
}

/** Legs that touch a shorted stretch's wire at both ends: its ring may run through taps that have only one end of the pair on it. */
function legsAlong(its: Stretch, plant: Plant): Leg[] {
	const wire = its.taps[0] === undefined ? null : root(its.taps[0].minus);
	const on = (tap: Tap) => root(tap.minus) === wire || root(tap.plus) === wire;
	return plant.legs.filter((leg) => leg.joins.length > 0 && on(leg.from) && on(leg.to));
}

/** One step of a tree laid over legs: the leg it was reached by, from which tap, and how many steps from the first. */
interface ReachedTap {
	readonly leg: Leg | null;
	readonly from: Tap | null;
	readonly steps: number;
}

/**
 * Cables without which these legs hang together just as well. Each leg left out of a tree over them closes one ring: with the
 * tree's own ways back from its two ends to where they meet. All such rings together are the same whatever the tree.
 */
function closing(legs: readonly Leg[]): Set<string> {
	const tree = treeOver(legs);
	const found = new Set<string>();
	const take = (leg: Leg | null) => {
		if (leg?.cable) found.add(leg.cable.id);
	};
	for (const leg of legs) {
		let one: Tap | null = leg.from;
		let other: Tap | null = leg.to;
		if (tree.get(one)?.leg === leg || tree.get(other)?.leg === leg) continue;
		take(leg);
		while (one !== null && other !== null && one !== other) {
			const a: ReachedTap | undefined = tree.get(one);
			const b: ReachedTap | undefined = tree.get(other);
			if (a === undefined || b === undefined) break;
			if (a.steps >= b.steps) {
				take(a.leg);
				one = a.from;
			} else {
				take(b.leg);
				other = b.from;
			}
		}
	}
	return found;
}

function treeOver(legs: readonly Leg[]): Map<Tap, ReachedTap> {
	const at = new Map<Tap, Leg[]>();
	for (const leg of legs) for (const tap of [leg.from, leg.to]) at.set(tap, [...(at.get(tap) ?? []), leg]);
	const tree = new Map<Tap, ReachedTap>();
	for (const start of at.keys()) {
		if (tree.has(start)) continue;
		tree.set(start, { leg: null, from: null, steps: 0 });
		const queue = [start];
		for (const tap of queue) {
			const steps = (tree.get(tap)?.steps ?? 0) + 1;
			for (const leg of at.get(tap) ?? []) {
				const other = leg.from === tap ? leg.to : leg.from;
				if (tree.has(other)) continue;
				tree.set(other, { leg, from: tap, steps });
				queue.push(other);
			}
		}
	}
	return tree;
}

/** What is wrong with the one line that `drive` feeds, for everyone on it. Worked out once a stretch. */
export function troublesOf(drive: Drive, ways: WaysToTaps, plant: Plant): readonly FrameTrouble[] {
	const its = drive.tap.stretch;
	if (its === null) return [];
	its.troubles ??= [
		...openEnds(its, ways, plant),
		...tooManyLoads(its),
		...splits(its),
		...ring(its, plant),
		...extra(its),
	];
	return its.troubles;
}

function openEnds(its: Stretch, ways: WaysToTaps, plant: Plant): FrameTrouble[] {
	const found: { port: string; metres: number; loaded: number }[] = [];
	for (const tap of its.taps) {
		if (tap.degree !== 1) continue;
		const way = ways.get(tap);
		if (way === undefined || way.openLoaded <= LINE_LIMITS.openMetres) continue;
		found.push({
			port: way.leg === null ? tap.port : farSocket(tap, way.leg),
			metres: thousandths(way.open),
			loaded: way.openLoaded,
		});
	}
	return sortedBy(found, (end) => end.port).map(({ port, metres, loaded }) => ({
		cause: { cause: 'no-terminator', port, metres, plugged: pluggedIn(plant, port) },
		rate: ramp(loaded, LINE_LIMITS.openMetres, LINE_LIMITS.openMetresWorst, LINE_RATES.openEnd),
	}));
}

function tooManyLoads(its: Stretch): FrameTrouble[] {
	let loads = 0;
	for (const tap of its.taps) loads += tap.loads;
	loads = thousandths(loads);
	const rate = ramp(loads, LINE_LIMITS.unitLoads, LINE_LIMITS.unitLoadsWorst, LINE_RATES.tooManyLoads);
	return rate > 0 ? [{ cause: { cause: 'too-many-loads', loads }, rate }] : [];
}

function splits(its: Stretch): FrameTrouble[] {
	return sortedBy(its.splits, (port) => port).map((port) => ({
		cause: { cause: 'split', port },
		rate: LINE_RATES.split,
	}));
}

function ring(its: Stretch, plant: Plant): FrameTrouble[] {
	const cables = ringOf(its, plant);
	return cables.length > 0 ? [{ cause: { cause: 'ring', cables }, rate: LINE_RATES.ring }] : [];
}

function extra(its: Stretch): FrameTrouble[] {
	let count = 0;
	for (const tap of its.taps) count += tap.terminators;
	const over = count - LINE_LIMITS.terminators;
	if (over <= 0) return [];
	return [{ cause: { cause: 'extra-terminators', count }, rate: 1 - (1 - LINE_RATES.extraTerminator) ** over }];
}
