import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeRandom } from '../../../shared/random/index.ts';
import { type Drill, makeDrill, markDrill, pressesOf, shortestWay } from '../../../sim/drill/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { hasMains } from '../../../sim/fixture/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { runs } from '../../runs.ts';
import { play, wandered } from './wander.ts';

/*
 * Symptom: the drill on power along a row, and its own shortest way, had the first plug put into the wall and then the others linked on,
 * one live link after another, overhead. Cause: the order was from the wall outwards, and nothing knew which links were live.
 */

const SEEDS = runs(500, 5000);
/** Seeds on which any two steps are put the other way round. */
const SWAPPED = runs(60, 1000);

type Plug = Extract<RigEvent, { type: 'mains.plug' }>;
const isPlug = (event: RigEvent): event is Plug => event.type === 'mains.plug';

/** Live makes and breaks of links, told a second way: by whether the machine of the fixture that feeds has mains just then. */
function liveLinks(drill: Drill, log: readonly RigEvent[]): string[] {
	const rig = openRig(drill.sheet);
	const live = (fixture: string): boolean =>
		[...rig.gear.units].some(([id, { state }]) => id === fixture && hasMains(state));
	return log.flatMap((event, at) => {
		const found: string[] = [];
		if (isPlug(event)) {
			const was = rig.gear.units.get(event.fixture)?.plug ?? 'none';
			if (was !== event.into && live(was)) found.push(`${at} broken ${event.fixture} ${was}`);
			if (was !== event.into && live(event.into)) found.push(`${at} made ${event.fixture} ${event.into}`);
		}
		if (!play(rig, event)) throw new Error(`does not fit: ${JSON.stringify(event)}`);
		return found;
	});
}

const told = (drill: Drill, log: readonly RigEvent[]): string[] =>
	markDrill(drill, log).harm.map(({ event, did, fixture, feeder }) => `${event} ${did} ${fixture} ${feeder}`);

/** Fixtures that hang by a link that was live when it was made. */
function madeLive(drill: Drill, log: readonly RigEvent[]): string[] {
	const made = new Set<string>();
	const live = liveLinks(drill, log);
	const rig = openRig(drill.sheet);
	for (const [at, event] of log.entries()) {
		if (isPlug(event) && rig.gear.units.get(event.fixture)?.plug !== event.into) {
			made.delete(event.fixture);
			if (live.includes(`${at} made ${event.fixture} ${event.into}`)) made.add(event.fixture);
		}
		play(rig, event);
	}
	return [...made].sort();
}

/** The same plugs from the wall outwards, one press each: how it was. */
function oldWay(drill: Drill, way: readonly RigEvent[]): RigEvent[] {
	const plugs = new Map(drill.sheet.fixtures.map(({ id, plug }) => [id, plug]));
	const fed = drill.goal.flatMap((it) => (it.is === 'fed' ? [it] : []));
	const moves = fed
		.filter(({ fixture, from }) => plugs.get(fixture) !== from)
		.map(({ fixture, from }): RigEvent => ({ type: 'mains.plug', fixture, into: from }));
	return [...moves, ...way.filter((event) => !isPlug(event))];
}

const drills = Array.from({ length: SEEDS }, (_, seed) => makeDrill('mains-row', seed));
const ways = drills.map((drill) => shortestWay(drill));

describe('power along a row', () => {
	it(`its shortest way makes and breaks no link live, and is done: ${SEEDS} seeds`, () => {
		for (const [seed, drill] of drills.entries()) {
			const way = ways[seed] ?? [];
			expect(liveLinks(drill, way), `seed ${seed}`).toEqual([]);
			expect(markDrill(drill, way), `seed ${seed}`).toMatchObject({ done: true, harm: [], wrong: [] });
		}
	});

	it('puts the plug at the wall in last', () => {
		for (const [seed, way] of ways.entries()) {
			const plugs = way.filter(isPlug);
			const walls = plugs.filter(({ into }) => into === 'wall');
			if (plugs.length > 0 && walls.length > 0) expect(plugs.at(-1)?.into, `seed ${seed}`).toBe('wall');
		}
	});

	it(`the same plugs in the old order are harm and not done, wherever a link is live: ${SEEDS} seeds`, () => {
		let live = 0;
		for (const [seed, drill] of drills.entries()) {
			const old = oldWay(drill, ways[seed] ?? []);
			const made = madeLive(drill, old);
			if (made.length === 0) continue;
			live++;
			const mark = markDrill(drill, old);
			expect(mark.done, `seed ${seed}`).toBe(false);
			expect(told(drill, old), `seed ${seed}`).toEqual(liveLinks(drill, old));
			const isolated = mark.wrong.filter(({ what }) => what === 'isolated').map(({ place }) => place);
			expect(isolated.sort(), `seed ${seed}`).toEqual(made);
		}
		expect(live).toBeGreaterThan(SEEDS / 2);
	});

	it('any two of its steps the other way round are caught where that makes a live link', () => {
		let caught = 0;
		for (const [seed, drill] of drills.slice(0, SWAPPED).entries()) {
			const way = ways[seed] ?? [];
			for (let i = 0; i < way.length; i++)
				for (let j = i + 1; j < way.length; j++) {
					const swapped = way.with(i, way[j] as RigEvent).with(j, way[i] as RigEvent);
					const rig = openRig(drill.sheet);
					if (!swapped.every((event) => play(rig, event))) continue;
					const live = liveLinks(drill, swapped);
					const mark = markDrill(drill, swapped);
					expect(told(drill, swapped), `seed ${seed}, ${i} and ${j}`).toEqual(live);
					const made = madeLive(drill, swapped);
					expect(
						mark.wrong
							.filter(({ what }) => what === 'isolated')
							.map(({ place }) => place)
							.sort(),
					).toEqual(made);
					if (made.length === 0) continue;
					expect(mark.done, `seed ${seed}, ${i} and ${j}`).toBe(false);
					caught++;
				}
		}
		expect(caught).toBeGreaterThan(SWAPPED);
	});

	it('from wherever a learner has wandered, the way asks for no harm, and harm done stays in the mark', () => {
		let cured = 0;
		for (const [seed, drill] of drills.entries()) {
			const random = makeRandom(seed).fork('harm');
			const { log } = wandered(random, drill, random.int(1, 20));
			const before = told(drill, log);
			expect(before, `seed ${seed}`).toEqual(liveLinks(drill, log));
			const whole = [...log, ...shortestWay(drill, log)];
			expect(liveLinks(drill, whole), `seed ${seed}`).toEqual(before);
			const mark = markDrill(drill, whole);
			expect(mark, `seed ${seed}`).toMatchObject({ done: true, wrong: [] });
			expect(mark.harm, `seed ${seed}`).toHaveLength(before.length);
			if (before.length > 0) cured++;
		}
		expect(cured).toBeGreaterThan(SEEDS / 4);
	});

	it('a live link is told once the wall plug is out, the link is pulled and made again, and the plug goes back', () => {
		const drill = rowOf(['wall', 'none']);
		const live: RigEvent[] = [{ type: 'mains.plug', fixture: 'f-2', into: 'f-1' }];
		expect(markDrill(drill, live)).toMatchObject({
			done: false,
			harm: [{ event: 0, did: 'made', fixture: 'f-2', feeder: 'f-1', wall: 'f-1' }],
			wrong: [{ place: 'f-2', what: 'isolated', found: 'f-1', wanted: 'none' }],
		});
		expect(shortestWay(drill, live)).toEqual([
			{ type: 'mains.plug', fixture: 'f-1', into: 'none' },
			{ type: 'mains.plug', fixture: 'f-2', into: 'none' },
			{ type: 'mains.plug', fixture: 'f-2', into: 'f-1' },
			{ type: 'mains.plug', fixture: 'f-1', into: 'wall' },
		]);
	});

	it('the wall plug out first and in last is no harm, nor is a plug put where it is already', () => {
		const drill = rowOf(['wall', 'f-1']);
		const down: RigEvent[] = [
			{ type: 'mains.plug', fixture: 'f-2', into: 'f-1' },
			{ type: 'mains.plug', fixture: 'f-1', into: 'none' },
			{ type: 'mains.plug', fixture: 'f-2', into: 'none' },
		];
		expect(markDrill(drill, down).harm).toEqual([]);
		const live = markDrill(drill, [{ type: 'mains.plug', fixture: 'f-2', into: 'none' }]);
		expect(live.harm).toEqual([{ event: 0, did: 'broken', fixture: 'f-2', feeder: 'f-1', wall: 'f-1' }]);
	});
});

/** A row to be fed in order, as it hangs now. */
function rowOf(plugs: readonly string[], wanted: readonly string[] = plugs.map((_, i) => (i ? `f-${i}` : 'wall'))) {
	const drill = makeDrill('mains-row', 1);
	const [first] = drill.sheet.fixtures;
	if (!first) throw new Error('a row has fixtures');
	const fixtures = plugs.map((plug, i) => ({ ...first, id: `f-${i + 1}`, name: `F ${i + 1}`, plug, on: true }));
	const goal = wanted.map((from, i) => ({ is: 'fed' as const, fixture: `f-${i + 1}`, from }));
	return { ...drill, sheet: { ...drill.sheet, fixtures }, goal };
}

describe('the fewest plugs to move with no live link', () => {
	/** Where plugs are, and which links were made live; by breadth, over every move a hand can make that harms nobody. */
	function fewestByBreadth(plugs: readonly string[], wanted: readonly string[]): number {
		const count = plugs.length;
		const live = (state: readonly string[], at: number): boolean => {
			for (let n = at, hops = 0; hops <= count; hops++) {
				const plug = state[n] as string;
				if (plug === 'wall' || plug === 'none') return plug === 'wall';
				n = Number(plug.slice(2)) - 1;
			}
			return true;
		};
		const circles = (state: readonly string[]): boolean =>
			state.some((_, at) => {
				let n = at;
				for (let hops = 0; hops <= count; hops++) {
					const plug = state[n] as string;
					if (plug === 'wall' || plug === 'none') return false;
					n = Number(plug.slice(2)) - 1;
				}
				return true;
			});
		const sockets = ['wall', 'none', ...plugs.map((_, i) => `f-${i + 1}`)];
		const goal = wanted.join();
		let edge: (readonly string[])[] = [plugs];
		const seen = new Set([plugs.join()]);
		for (let presses = 0; edge.length > 0; presses++) {
			if (edge.some((state) => state.join() === goal)) return presses;
			const next: (readonly string[])[] = [];
			for (const state of edge)
				for (const [at, was] of state.entries())
					for (const into of sockets) {
						if (into === was) continue;
						const index = (plug: string): number => Number(plug.slice(2)) - 1;
						if (was.startsWith('f-') && live(state, index(was))) continue;
						if (into.startsWith('f-') && live(state, index(into))) continue;
						const to = state.with(at, into);
						if (circles(to) || seen.has(to.join())) continue;
						seen.add(to.join());
						next.push(to);
					}
			edge = next;
		}
		throw new Error('there is no way');
	}

	const rows = (count: number) =>
		fc
			.array(fc.constantFrom('wall', 'none', ...Array.from({ length: count }, (_, i) => `f-${i + 1}`)), {
				minLength: count,
				maxLength: count,
			})
			.filter((plugs) => {
				const ends = plugs.map((_, at) => {
					let n = at;
					for (let hops = 0; hops <= count; hops++) {
						const plug = plugs[n] as string;
						if (plug === 'wall' || plug === 'none') return true;
						n = Number(plug.slice(2)) - 1;
					}
					return false;
				});
				return ends.every(Boolean);
			});

	it('a row fed in order, from however it hangs', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 2, max: 4 }).chain((count) => rows(count)),
				(plugs) => {
					const drill = rowOf(plugs);
					const way = shortestWay(drill);
					expect(liveLinks(drill, way)).toEqual([]);
					expect(markDrill(drill, way).wrong).toEqual([]);
					expect(pressesOf(way)).toBe(
						fewestByBreadth(
							plugs,
							plugs.map((_, i) => (i ? `f-${i}` : 'wall')),
						),
					);
				},
			),
			{ numRuns: runs(200) },
		);
	});

	it('any forest of leads from any other', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 1, max: 4 }).chain((count) => fc.tuple(rows(count), rows(count))),
				([plugs, wanted]) => {
					const drill = rowOf(plugs, wanted);
					const way = shortestWay(drill);
					expect(liveLinks(drill, way)).toEqual([]);
					expect(markDrill(drill, way).wrong).toEqual([]);
					expect(pressesOf(way)).toBe(fewestByBreadth(plugs, wanted));
				},
			),
			{ numRuns: runs(200) },
		);
	});
});
