import { describe, expect, it } from 'vitest';
import { KEYS, type KeyedPanel } from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { unmetKeys, type Wish } from '../../../sim/drill/wish.ts';
import { type FixtureState, holdFor, nextDeadline, panelOf, stepFixture } from '../../../sim/fixture/index.ts';
import { runs } from '../../runs.ts';
import { anyWish, later, needed, open, small } from './panels.ts';

// An independent check of the fewest presses: a whole small menu walked on the machine, every state of it, and the
// distances counted by plain breadth-first search.

const panel = small.panel as KeyedPanel;
/** The most repeats after which any value of the small menu, or any item, has come round. */
const ROUND = panel.repeat.quickAfter + 5;

/** Once round everything a hand can do, key let go again; waits count nothing. */
function neighbours(state: FixtureState): { to: FixtureState; presses: 0 | 1 }[] {
	const found: { to: FixtureState; presses: 0 | 1 }[] = [];
	const hold = (key: (typeof KEYS)[number], ms: number): void => {
		const down = stepFixture(small, state, { type: 'key.down', key });
		found.push({ to: stepFixture(small, ms > 0 ? later(small, down, ms) : down, { type: 'key.up', key }), presses: 1 });
	};
	for (const key of KEYS) hold(key, 0);
	for (let repeats = 1; repeats <= ROUND; repeats++)
		for (const key of ['up', 'down'] as const) hold(key, holdFor(panel, repeats));
	hold('set', panel.unlockHold);
	found.push({ to: stepFixture(small, state, { type: 'power.switch', on: !state.context.on }), presses: 1 });
	const deadline = nextDeadline(small, panelOf(state), false, state.context);
	if (deadline !== null) found.push({ to: later(small, state, deadline - state.context.now), presses: 0 });
	return found;
}

const markOf = (state: FixtureState): string => {
	const { on, path, draft, settings } = state.context;
	// switched off, nothing is left of where the panel stood
	const at = on ? [panelOf(state), path, draft] : ['off'];
	return JSON.stringify([at, settings.code, settings.lock, settings.loss, settings.sensor]);
};

interface Walked {
	readonly states: ReadonlyMap<string, FixtureState>;
	/** By state: where it can be come to from, and the presses that takes. */
	readonly into: ReadonlyMap<string, readonly { readonly from: string; readonly presses: 0 | 1 }[]>;
}

function walk(): Walked {
	const first = open(small, {});
	const states = new Map([[markOf(first), first]]);
	const into = new Map<string, { from: string; presses: 0 | 1 }[]>();
	for (const [from, state] of states) {
		for (const { to, presses } of neighbours(state)) {
			const mark = markOf(to);
			if (!states.has(mark)) states.set(mark, to);
			const ways = into.get(mark) ?? [];
			ways.push({ from, presses });
			into.set(mark, ways);
		}
	}
	return { states, into };
}

/** Presses from every state to the nearest that meets the wish, by search from those. */
function distances({ states, into }: Walked, wish: Wish): Map<string, number> {
	const far = new Map<string, number>();
	let edge = [...states]
		.filter(([, { context }]) => context.on && unmetKeys(wish, context.settings).length === 0)
		.map(([mark]) => mark);
	for (let presses = 0; edge.length > 0; presses++) {
		const next: string[] = [];
		for (let i = 0; i < edge.length; i++) {
			const mark = edge[i] as string;
			if (far.has(mark)) continue;
			far.set(mark, presses);
			for (const way of into.get(mark) ?? []) if (!far.has(way.from)) (way.presses === 0 ? edge : next).push(way.from);
		}
		edge = next;
	}
	return far;
}

describe('every state of a small menu, walked on the machine', () => {
	const walked = walk();

	it('is reached: asleep, locked, edited, asked and switched off among them', () => {
		const kinds = new Map<string, number>();
		for (const state of walked.states.values()) kinds.set(panelOf(state), (kinds.get(panelOf(state)) ?? 0) + 1);
		expect(Object.fromEntries(kinds)).toMatchInlineSnapshot(`
			{
			  "asleep": 384,
			  "browsing": 384,
			  "confirming": 48,
			  "editing": 528,
			  "locked": 192,
			  "unlit": 48,
			}
		`);
	});

	it('needs exactly the presses that search finds', () => {
		const random = makeRandom(1);
		let furthest = 0;
		for (let n = 0; n < runs(60, 2000); n++) {
			const wish = anyWish(random, small, {});
			const far = distances(walked, wish);
			for (const [mark, state] of walked.states) {
				expect(needed(small, state, wish), `${mark} to ${JSON.stringify([...wish])}`).toBe(
					far.get(mark) ?? Number.POSITIVE_INFINITY,
				);
				furthest = Math.max(furthest, far.get(mark) ?? 0);
			}
		}
		expect(furthest).toBeGreaterThanOrEqual(12);
	});
});
