import { describe, expect, it } from 'vitest';
import type { KeyedPanel, PanelKey, Profile, SomeSettings } from '../../../shared/profile/index.ts';
import { makeRandom, type Random } from '../../../shared/random/index.ts';
import { panelScript } from '../../../sim/drill/way/script.ts';
import { unmetKeys, type Wish } from '../../../sim/drill/wish.ts';
import {
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
import { anySettings, anyWish, goesTowards, later, needed, open, picket, small, tallow } from './panels.ts';

/** What a hand or the clock can do to a fixture in one go, all it may come to, and the presses it counts. */
interface Move {
	readonly what: string;
	readonly to: readonly FixtureState[];
	readonly presses: 0 | 1;
}

/** When a person lets go, ms after the sight of what they wait for. */
const REACTIONS = Array.from({ length: 26 }, (_, i) => 100 + 10 * i);

/** From where no key is held: each key tapped, the power switch put on, waits to whatever comes next and past it, and on a number some holds, each let go as late as may be. */
function movesOf(random: Random, profile: Profile, state: FixtureState, wish: Wish): Move[] {
	const { now, path } = state.context;
	const waits = new Set([1, 100, 120, 500, 1000, 2000, 5000, 16_000, 61_000, 130_000]);
	const deadline = nextDeadline(profile, state);
	if (deadline !== null) waits.add(deadline - now);
	const held = (key: PanelKey, ms: number): FixtureState => {
		const down = stepFixture(profile, state, { type: 'key.down', key });
		return stepFixture(profile, ms > 0 ? later(profile, down, ms) : down, { type: 'key.up', key });
	};
	const moves: Move[] = [
		...TREE_KEYS.filter((key) => goesTowards(profile, state, wish, key)).map(
			(key): Move => ({ what: key, to: [held(key, 0)], presses: 1 }),
		),
		...[...waits].map((ms): Move => ({ what: `${ms} ms`, to: [later(profile, state, ms)], presses: 0 })),
	];
	if (!isSwitchedOn(state))
		moves.push({ what: 'on', to: [stepFixture(profile, state, { type: 'power.switch', on: true })], presses: 1 });
	const panel = profile.panel as KeyedPanel;
	moves.push({ what: 'unlock', to: [held('set', panel.unlockHold)], presses: 1 });
	if (panelOf(state) !== 'editing' || itemAt(panel, path).kind !== 'number') return moves;
	for (const key of (['up', 'down'] as const).filter((each) => goesTowards(profile, state, wish, each)))
		for (let n = 0; n < 3; n++) {
			const repeats = random.int(4, 25);
			const ms = holdFor(panel, repeats);
			const to = REACTIONS.map((reaction) => held(key, ms + reaction));
			moves.push({ what: `${key} to repeat ${repeats}`, to, presses: 1 });
		}
	return moves;
}

function wander(random: Random, profile: Profile, from: FixtureState, steps: number): FixtureState {
	let state = from;
	for (let n = 0; n < steps; n++) {
		if (random.chance(0.15)) state = later(profile, state, random.pick([10, 700, 3000, 16_000, 61_000]));
		else if (random.chance(0.04)) state = stepFixture(profile, state, { type: 'power.switch', on: random.chance(0.7) });
		else {
			// Set and Down get furthest into a menu
			const key = random.pick(['set', 'set', 'down', 'down', 'up', 'back'] as const);
			state = stepFixture(profile, state, { type: 'key.down', key });
			if (random.chance(0.4)) state = later(profile, state, random.int(1, 3000));
			if (random.chance(0.85)) state = stepFixture(profile, state, { type: 'key.up', key });
		}
	}
	return state;
}

/** A profile, a state somebody may have left it in, and a wish. */
function anyCase(seed: number): { profile: Profile; state: FixtureState; wish: Wish; random: Random } {
	const random = makeRandom(seed);
	const profile = random.pick([tallow, picket, small]);
	const settings: SomeSettings = anySettings(random, profile);
	const state = wander(random, profile, open(profile, settings), random.int(0, 14));
	return { profile, state, wish: anyWish(random, profile, settings), random };
}

describe('the presses a panel still needs', () => {
	it('are none exactly where the wish is met and the fixture is on', () => {
		for (let seed = 0; seed < runs(400, 20_000); seed++) {
			const { profile, state, wish } = anyCase(seed);
			const isMet = isSwitchedOn(state) && unmetKeys(wish, state.context.settings).length === 0;
			expect(needed(profile, state, wish) === 0, `seed ${seed}`).toBe(isMet);
		}
	});

	// A count that no move brings down by more than the presses it takes, however a hold ends at the worst, and that is 0 only at
	// the goal, is never more than what is truly needed to be sure: no surer way exists, by any mix of taps, holds and waits.
	it('fall by no more than the presses of any move at its worst: so no surer way exists without a detour', () => {
		for (let seed = 0; seed < runs(250, 20_000); seed++) {
			const { profile, state: left, wish, random } = anyCase(seed);
			const { held } = left.context;
			const state = held ? stepFixture(profile, left, { type: 'key.up', key: held.key }) : left;
			const before = needed(profile, state, wish);
			for (const { what, to, presses } of movesOf(random, profile, state, wish)) {
				const after = Math.max(...to.map((each) => needed(profile, each, wish)));
				expect(presses + after, `seed ${seed}, ${what}: ${before} before`).toBeGreaterThanOrEqual(before);
			}
		}
	});

	// A key somebody is still holding is let go at once or later: holding on for a sight that is asked for costs nothing.
	it('are no more with a key held down than had it just been pressed', () => {
		for (let seed = 0; seed < runs(250, 20_000); seed++) {
			const { profile, state: left, wish } = anyCase(seed);
			const { held } = left.context;
			const state = held ? stepFixture(profile, left, { type: 'key.up', key: held.key }) : left;
			for (const key of TREE_KEYS.filter((each) => goesTowards(profile, state, wish, each))) {
				const down = stepFixture(profile, state, { type: 'key.down', key });
				expect(1 + needed(profile, down, wish), `seed ${seed}, ${key}`).toBeGreaterThanOrEqual(
					needed(profile, state, wish),
				);
			}
		}
	});

	it('are as many as the way on the machine itself takes', () => {
		for (let seed = 0; seed < runs(250, 20_000); seed++) {
			const { profile, state, wish } = anyCase(seed);
			const before = needed(profile, state, wish);
			if (before === Number.POSITIVE_INFINITY) continue;
			// throws where a press does not bring the count down by one
			const script = panelScript(profile, 'it', state, state.context.now, wish);
			expect(script.presses, `seed ${seed}`).toBe(before);
			expect(script.steps.filter(({ event }) => event.type !== 'key.up')).toHaveLength(before);
		}
	});

	it('cannot be had where the panel has no item for what is wished', () => {
		const state = open(picket, {});
		expect(needed(picket, state, new Map([['code', { value: 3 }]]))).toBe(Number.POSITIVE_INFINITY);
		expect(needed(picket, state, new Map([['code', { value: 1 }]]))).toBe(0);
	});
});
