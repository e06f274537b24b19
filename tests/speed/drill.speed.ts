import { expect, it } from 'vitest';
import { makeRandom } from '../../shared/random/index.ts';
import { DRILL_KINDS, type Drill, markDrill, shortestWay } from '../../sim/drill/index.ts';
import type { RigEvent } from '../../sim/event/index.ts';
import { openRig } from '../../sim/rig/index.ts';
import { makeDrill } from '../sim/drill/made.ts';
import { wandered } from '../sim/drill/wander.ts';

const SEEDS = 60;
/** The bar, ms: the shortest way in the worst drill. */
const BAR = 100;

/** Milliseconds a call: the best of three, so that a busy machine tells on it least. */
function best(act: () => unknown): number {
	let least = Number.POSITIVE_INFINITY;
	for (let i = 0; i < 3; i++) {
		const start = performance.now();
		act();
		least = Math.min(least, performance.now() - start);
	}
	return least;
}

/** Somewhere a learner has got to in a dozen events, keys still held and all. */
function somewhere(drill: Drill): readonly RigEvent[] {
	return wandered(makeRandom(drill.seed).fork('somewhere'), drill, 12).log;
}

it('drills: the shortest way from the start, and from wherever a learner has got to', () => {
	const start = performance.now();
	shortestWay(makeDrill('leader-three', 0));
	console.log(`The very first drill and its way, nothing warm: ${(performance.now() - start).toFixed(0)} ms`);

	const rows = DRILL_KINDS.map(({ id }) => {
		const drills = Array.from({ length: SEEDS }, (_, seed) => makeDrill(id, seed));
		const logs = drills.map(somewhere);
		const ways = drills.map((drill) => best(() => shortestWay(drill)));
		const later = drills.map(
			(drill, i) => best(() => shortestWay(drill, logs[i])) - best(() => replayed(drill, logs[i])),
		);
		const marks = drills.map((drill) => best(() => markDrill(drill, shortestWay(drill))));
		const makes = drills.map((drill) => best(() => makeDrill(id, drill.seed)));
		const fewest = drills.map((drill) => markDrill(drill, []).fewest);
		const mean = (all: readonly number[]): string => (all.reduce((sum, each) => sum + each, 0) / SEEDS).toFixed(1);
		const worst = Math.max(...ways, ...later);
		return {
			kind: id,
			'way, worst ms': Math.max(...ways).toFixed(1),
			'mean ms': mean(ways),
			'on the way, worst ms': Math.max(...later).toFixed(1),
			[`worst of ${BAR} ms`]: (worst / BAR).toFixed(2),
			'make, mean ms': mean(makes),
			'way and mark, mean ms': mean(marks),
			'presses, mean': mean(fewest),
			most: Math.max(...fewest),
		};
	});
	console.table(rows);
	expect(rows).toHaveLength(DRILL_KINDS.length);
});

/** The log alone, which a page has played already when it asks for a hint. */
function replayed(drill: Drill, log: readonly RigEvent[] = []): void {
	const rig = openRig(drill.sheet);
	for (const event of log) event.type === 'clock.wait' ? rig.wait(event.ms) : rig.send(event);
}
