import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSheet } from '../../../shared/sheet/index.ts';
import {
	causesOf,
	DRILL_IDS,
	type DrillCondition,
	findingsOf,
	makeDrill,
	type Task,
} from '../../../sim/drill/index.ts';
import { hintAims, shortestWay } from '../../../sim/drill/trusted.ts';
import { openRig, type Rig } from '../../../sim/rig/index.ts';
import { runs } from '../../runs.ts';
import { play } from './wander.ts';

// Symptom: two outputs swapped at the desk were told as eleven things wrong, and a leader that garbled a running show was left to
// the last. Cause: findings stood side by side, whatever followed from what, and panels were worked by their patience alone.

const RUNS = runs(24, 2000);
const kind = fc.constantFrom(...DRILL_IDS);
const seed = fc.nat(100_000);

/** Five fixtures on output A and four on B, at their addresses and lit, with the outputs' universes the wrong way round. */
function swapped(): Task {
	const row = (output: string, from: number, count: number) =>
		Array.from({ length: count }, (_, i) => ({
			id: `wash-${from + i}`,
			before: i === 0 ? null : `wash-${from + i - 1}`,
			output,
			i,
		}));
	const all = [...row('a', 1, 5), ...row('b', 6, 4)];
	const universeOf = (output: string): number => (output === 'a' ? 1 : 2);
	const sheet = readSheet({
		version: 1,
		name: 'Lantern Row Hall',
		fixtures: all.map(({ id, i }, n) => ({
			id,
			name: id,
			profile: 'tallow-6',
			place: { x: n, y: 0, throw: 3 },
			settings: { work: 'line', mode: 'short', address: 1 + 6 * i },
		})),
		desk: {
			name: 'Desk',
			outputs: [
				{ id: 'a', universe: 2 },
				{ id: 'b', universe: 1 },
			],
			patch: all.map(({ id, output, i }) => ({
				fixture: id,
				universe: universeOf(output),
				address: 1 + 6 * i,
				mode: 'short',
			})),
			levels: all.map(({ output, i }) => ({ universe: universeOf(output), slot: 1 + 6 * i, level: 255 })),
		},
		cables: all.map(({ id, before, output }, n) => ({
			id: `cable-${n + 1}`,
			kind: 'data',
			length: 5,
			from: before ? `${before}:out` : `desk:${output}`,
			to: `${id}:in`,
		})),
		terminators: ['wash-5:out', 'wash-9:out'],
	});
	const goal: DrillCondition[] = [
		...all.map(
			({ id, output }): DrillCondition => ({
				is: 'data-from',
				fixture: id,
				source: { kind: 'desk', universe: universeOf(output) },
			}),
		),
		{ is: 'output', output: 'a', universe: 1 },
		{ is: 'output', output: 'b', universe: 2 },
	];
	return { scene: 'rig', sheet, goal, hands: ['desk'], cautions: [], disturbs: false };
}

const said = (drill: Task, rig: Rig) =>
	causesOf(drill, rig).map(({ causes, follows }) => ({
		causes: causes.map(({ place, what }) => `${place} ${what}`),
		follows: follows.map(({ place, what }) => `${place} ${what}`),
	}));

describe('what is wrong, causes first', () => {
	it('tells two swapped outputs as two causes, and the nine fixtures under them', () => {
		const drill = swapped();
		expect(said(drill, openRig(drill.sheet))).toEqual([
			{ causes: ['desk:a universe'], follows: [1, 2, 3, 4, 5].map((n) => `wash-${n} data`) },
			{ causes: ['desk:b universe'], follows: [6, 7, 8, 9].map((n) => `wash-${n} data`) },
		]);
	});

	it('puts together what only several causes bring about', () => {
		const drill = swapped();
		const rig = openRig(drill.sheet);
		rig.send({ type: 'desk.output', output: 'a', on: false });
		const [first] = said(drill, rig);
		expect(first?.causes).toEqual(['desk:a output', 'desk:a universe']);
		expect(first?.follows).toHaveLength(5);
	});

	it('names each finding once and only once, and leaves the rig as it is', () => {
		fc.assert(
			fc.property(kind, seed, fc.nat(100), (id, n, share) => {
				const drill = makeDrill(id, n);
				const rig = openRig(drill.sheet);
				const way = shortestWay(drill);
				for (const event of way.slice(0, Math.floor((way.length * share) / 100))) play(rig, event);
				const before = JSON.stringify([rig.now, rig.log]);
				const groups = causesOf(drill, rig);
				const named = groups.flatMap(({ causes, follows }) => [...causes, ...follows]);
				const sorted = (all: readonly unknown[]) => all.map((each) => JSON.stringify(each)).sort();
				expect(sorted(named)).toEqual(sorted(findingsOf(drill, rig)));
				expect(groups.every(({ causes }) => causes.length > 0)).toBe(true);
				expect(JSON.stringify([rig.now, rig.log])).toBe(before);
			}),
			{ numRuns: RUNS },
		);
	});
});

describe('the order of repair', () => {
	const collides = (rig: Rig): boolean =>
		[...rig.gear.receptions.values()].some(({ causes }) => causes.some(({ cause }) => cause === 'collision'));

	it('ends what garbles a running show before anything is done to another fixture', () => {
		fc.assert(
			fc.property(seed, (n) => {
				const drill = makeDrill('leader-left-on', n);
				const rig = openRig(drill.sheet);
				expect(collides(rig)).toBe(true);
				for (const event of shortestWay(drill)) {
					if ('fixture' in event && event.fixture !== drill.facts['leader']) {
						expect(collides(rig)).toBe(false);
						return;
					}
					play(rig, event);
				}
			}),
			{ numRuns: RUNS },
		);
	});
});

describe('what a hint aims at', () => {
	it('is something that is wrong now, as long as anything is', () => {
		fc.assert(
			fc.property(kind, seed, (id, n) => {
				const drill = makeDrill(id, n);
				const rig = openRig(drill.sheet);
				const aim = hintAims(drill, rig);
				expect(findingsOf(drill, rig)).toContainEqual(aim);
				for (const event of shortestWay(drill)) play(rig, event);
				expect(hintAims(drill, rig)).toBeNull();
			}),
			{ numRuns: RUNS },
		);
	});
});
