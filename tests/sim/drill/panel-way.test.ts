import { describe, expect, it } from 'vitest';
import { KEYS, type Profile, type SomeSettings } from '../../../shared/profile/index.ts';
import { makeRandom, type Random } from '../../../shared/random/index.ts';
import { panelScript } from '../../../sim/drill/way/script.ts';
import { unmetKeys, type Wish } from '../../../sim/drill/wish.ts';
import {
	type FixtureEvent,
	type FixtureState,
	nextDeadline,
	panelOf,
	stepFixture,
} from '../../../sim/fixture/index.ts';
import { runs } from '../../runs.ts';
import { anySettings, anyWish, later, needed, open, picket, small, tallow } from './panels.ts';

/** What a hand or the clock can do to a fixture in one go, and the presses it counts. */
type Move = { readonly event: FixtureEvent; readonly presses: 0 | 1 };

/** Every elementary move: each key down, each key up, the power switch, and waits to whatever comes next and past it. */
function movesOf(profile: Profile, state: FixtureState): Move[] {
	const { now, held, on } = state.context;
	const waits = new Set([1, 100, 120, 500, 1000, 2000, 5000, 16_000, 61_000, 130_000].map((ms) => now + ms));
	const deadline = nextDeadline(profile, panelOf(state), false, state.context);
	if (deadline !== null) waits.add(deadline);
	if (held && held.nextAt < 1e9) for (const repeats of [0, 1, 2, 9, 40]) waits.add(held.nextAt + repeats * 100);
	return [
		...KEYS.map((key): Move => ({ event: { type: 'key.down', key }, presses: 1 })),
		...KEYS.map((key): Move => ({ event: { type: 'key.up', key }, presses: 0 })),
		{ event: { type: 'power.switch', on: !on }, presses: 1 },
		...[...waits].map((at): Move => ({ event: { type: 'clock.advance', now: at }, presses: 0 })),
	];
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
			const isMet = state.context.on && unmetKeys(wish, state.context.settings).length === 0;
			expect(needed(profile, state, wish) === 0, `seed ${seed}`).toBe(isMet);
		}
	});

	// A count that no move brings down by more than the presses it takes, and that is 0 only at the goal, is never more than
	// what is truly needed: no way one press shorter can exist, by any mix of taps, holds, waits and switching off and on.
	it('fall by no more than the presses of any move: so no shorter way exists', () => {
		for (let seed = 0; seed < runs(250, 20_000); seed++) {
			const { profile, state, wish } = anyCase(seed);
			const before = needed(profile, state, wish);
			for (const { event, presses } of movesOf(profile, state)) {
				const after = needed(profile, stepFixture(profile, state, event), wish);
				expect(presses + after, `seed ${seed}, ${JSON.stringify(event)}: ${before} before`).toBeGreaterThanOrEqual(
					before,
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
