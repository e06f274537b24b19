import { describe, expect, it } from 'vitest';
import type { KeyedPanel, LeafItem, SettingKey, SettingValue } from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { unmetKeys, type Wish } from '../../../sim/drill/wish.ts';
import { draftOf, type FixtureState, panelOf, stepFixture } from '../../../sim/fixture/index.ts';
import { runs } from '../../runs.ts';
import { TREE_KEYS } from '../keys.ts';
import { needed, open, picket, small, tallow } from './panels.ts';

// The fewest presses come of a second model of the panel (`sim/drill/way/panel.ts`), since the machine itself is too dear to
// search while somebody waits for a hint. Here it is searched, breadth first by taps, on whole bundled menus, and the two must agree.

type ChoiceItem = Extract<LeafItem, { kind: 'choice' }>;

/** Presses past which a search is let go: each further one takes about half as many states again. */
const FURTHEST = 11;

/** The fewest taps from a state to a wish for lists, by the machine alone; null where it takes more than `FURTHEST`. */
function fewestTaps(profile: typeof tallow, from: FixtureState, wish: Wish): number | null {
	const markOf = (state: FixtureState): string =>
		JSON.stringify([panelOf(state), state.context.path, draftOf(state), state.context.settings]);
	const seen = new Set([markOf(from)]);
	let edge = [from];
	for (let taps = 0; taps <= FURTHEST; taps++) {
		if (edge.some(({ context }) => unmetKeys(wish, context.settings).length === 0)) return taps;
		const next: FixtureState[] = [];
		for (const state of edge) {
			for (const key of TREE_KEYS) {
				const down = stepFixture(profile, state, { type: 'key.down', key });
				const to = stepFixture(profile, down, { type: 'key.up', key });
				const mark = markOf(to);
				if (seen.has(mark)) continue;
				seen.add(mark);
				next.push(to);
			}
		}
		edge = next;
	}
	return null;
}

describe.each([tallow, picket, small].map((profile) => [profile.id, profile] as const))('%s', (_, profile) => {
	const lists = (profile.panel as KeyedPanel).menu
		.flatMap((item) => (item.kind === 'menu' ? item.items : [item]))
		// a lock is opened by no tap
		.filter((item) => item.kind === 'choice' && item.setting !== 'lock') as ChoiceItem[];

	it('needs as many presses as a search of its machine finds taps, for settings picked from lists', () => {
		let searched = 0;
		for (let seed = 0; seed < runs(40, 400) && searched < runs(6, 60); seed++) {
			const random = makeRandom(seed);
			const any = (): [SettingKey, SettingValue] => {
				const item = random.pick(lists);
				return [item.setting, random.pick(item.options).value as SettingValue];
			};
			const before = open(profile, Object.fromEntries([any(), any()]));
			const from = Array.from({ length: random.int(0, 5) }).reduce<FixtureState>((state) => {
				const key = random.pick(['set', 'down', 'up', 'back'] as const);
				return stepFixture(profile, stepFixture(profile, state, { type: 'key.down', key }), { type: 'key.up', key });
			}, before);
			const wish: Wish = new Map([any(), any()].map(([key, value]) => [key, { value }]));
			const told = needed(profile, from, wish);
			// nothing to do is told without a search, and what is far is not worth one
			if (told === 0 || told > FURTHEST) continue;
			searched++;
			expect(fewestTaps(profile, from, wish), `seed ${seed}`).toBe(told);
		}
		expect(searched).toBeGreaterThanOrEqual(6);
	});
});
