import { describe, expect, it } from 'vitest';
import type { KeyedPanel } from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { unmetKeys, type Wish } from '../../../sim/drill/wish.ts';
import {
	draftOf,
	type FixtureState,
	holdFor,
	isSwitchedOn,
	itemAt,
	nextDeadline,
	panelOf,
	stepFixture,
} from '../../../sim/fixture/index.ts';
import { runs } from '../../runs.ts';
import { TREE_KEYS } from '../keys.ts';
import { anyWish, later, needed, open, small } from './panels.ts';

// An independent check of the fewest presses: a whole small menu walked on the machine, every state of it, and the
// presses that are sure to do counted by plain search, where each hold ends as late as is worst.

const panel = small.panel as KeyedPanel;
/** When a person lets go, ms after the sight of what they wait for: tried a hundredth of a second apart. */
const REACTIONS = Array.from({ length: 26 }, (_, i) => 100 + 10 * i);
const LONGEST_MS = 4000;

/** One thing a hand can do, and all it may come to. */
interface Move {
	readonly presses: 0 | 1;
	readonly to: readonly FixtureState[];
}

/** Taps of every key, Set held on a lock, holds of Up and Down on a number, the power switch put on, and what waiting comes to. */
function movesFrom(state: FixtureState): Move[] {
	const found: Move[] = [];
	const held = (key: (typeof TREE_KEYS)[number], ms: number): FixtureState => {
		const down = stepFixture(small, state, { type: 'key.down', key });
		return stepFixture(small, ms > 0 ? later(small, down, ms) : down, { type: 'key.up', key });
	};
	for (const key of TREE_KEYS) found.push({ presses: 1, to: [held(key, 0)] });
	if (panelOf(state) === 'locked') found.push({ presses: 1, to: [held('set', panel.unlockHold)] });
	if (panelOf(state) === 'editing' && itemAt(panel, state.context.path).kind === 'number')
		for (let repeats = 4; holdFor(panel, repeats) + 350 <= LONGEST_MS; repeats++)
			for (const key of ['up', 'down'] as const)
				found.push({ presses: 1, to: REACTIONS.map((ms) => held(key, holdFor(panel, repeats) + ms)) });
	if (!isSwitchedOn(state))
		found.push({ presses: 1, to: [stepFixture(small, state, { type: 'power.switch', on: true })] });
	const deadline = nextDeadline(small, state);
	if (deadline !== null) found.push({ presses: 0, to: [later(small, state, deadline - state.context.now)] });
	return found;
}

const markOf = (state: FixtureState): string => {
	const { path, settings } = state.context;
	// switched off, nothing is left of where the panel stood
	const at = isSwitchedOn(state) ? [panelOf(state), path, draftOf(state)] : ['off'];
	return JSON.stringify([at, settings.code, settings.lock, settings.loss, settings.sensor]);
};

interface Walked {
	readonly states: ReadonlyMap<string, FixtureState>;
	/** By state: each move, as the states it may come to. */
	readonly moves: ReadonlyMap<string, readonly { readonly presses: 0 | 1; readonly to: readonly string[] }[]>;
}

function walk(): Walked {
	const first = open(small, {});
	// nothing leads to a fixture switched off but a hand that is not asked to
	const off = stepFixture(small, first, { type: 'power.switch', on: false });
	const states = new Map([first, off].map((state) => [markOf(state), state]));
	const moves = new Map<string, { presses: 0 | 1; to: string[] }[]>();
	for (const [from, state] of states) {
		if (isSwitchedOn(state)) {
			const dark = stepFixture(small, state, { type: 'power.switch', on: false });
			if (!states.has(markOf(dark))) states.set(markOf(dark), dark);
		}
		const found = movesFrom(state).map(({ presses, to }) => {
			for (const each of to) if (!states.has(markOf(each))) states.set(markOf(each), each);
			return { presses, to: [...new Set(to.map(markOf))] };
		});
		moves.set(from, found);
	}
	return { states, moves };
}

/** Presses that are sure to do from every state, by search from those that meet the wish. */
function distances({ states, moves }: Walked, wish: Wish): Map<string, number> {
	const far = new Map(
		[...states]
			.filter(([, state]) => isSwitchedOn(state) && unmetKeys(wish, state.context.settings).length === 0)
			.map(([mark]) => [mark, 0]),
	);
	const isIn = (mark: string, most: number): boolean => (far.get(mark) ?? Number.POSITIVE_INFINITY) <= most;
	for (let round = 1, quiet = 0; quiet < 2; round++) {
		const before = far.size;
		for (const presses of [1, 0] as const)
			for (let size = -1; size !== far.size; ) {
				size = far.size;
				const found = [...states.keys()].filter(
					(mark) =>
						!far.has(mark) &&
						moves
							.get(mark)
							?.some((move) => move.presses === presses && move.to.every((to) => isIn(to, round - presses))),
				);
				for (const mark of found) far.set(mark, round);
				if (presses === 1) break;
			}
		quiet = far.size === before ? quiet + 1 : 0;
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
