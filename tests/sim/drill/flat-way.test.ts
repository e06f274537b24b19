import { describe, expect, it } from 'vitest';
import {
	bundledProfile,
	type KeyedPanel,
	type Profile,
	readProfile,
	type SettingKey,
} from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { makeDrill, markDrill, shortestWay } from '../../../sim/drill/index.ts';
import { panelWay, viewOf } from '../../../sim/drill/way/panel.ts';
import { allows, type SettingDomain, unmetKeys, type Wish } from '../../../sim/drill/wish.ts';
import { type FixtureState, inputFrom, startFixture, stepFixture } from '../../../sim/fixture/index.ts';
import { runs } from '../../runs.ts';

const thimble = bundledProfile('thimble-4') as Profile;
const panel = thimble.panel as KeyedPanel;
const SMALL = ['mode', 'loss', 'follow', 'held', 'lead', 'programme'];

/** The same with lists alone, so that taps are all there is and every state can be searched. */
const small = readProfile({
	...thimble,
	id: 'small-flat',
	panel: { ...panel, menu: panel.menu.filter(({ id }) => SMALL.includes(id)) },
});

const open = (settings: object): FixtureState =>
	startFixture(small, inputFrom(small, { settings, charge: 1, on: true }, true));

/** Taps to each state from one, breadth first on the machine; all that tells two apart is what a wish or a key may ask. */
function tapsFrom(start: FixtureState): Map<string, { readonly taps: number; readonly state: FixtureState }> {
	const mark = ({ context: { path, settings } }: FixtureState) => JSON.stringify([path, settings]);
	const found = new Map([[mark(start), { taps: 0, state: start }]]);
	const queue = [start];
	for (const state of queue) {
		const taps = (found.get(mark(state))?.taps ?? 0) + 1;
		for (const key of panel.keys) {
			const down = stepFixture(small, state, { type: 'key.down', key });
			const next = stepFixture(small, down, { type: 'key.up', key });
			if (found.has(mark(next))) continue;
			found.set(mark(next), { taps, state: next });
			queue.push(next);
		}
	}
	return found;
}

describe('the fewest presses on a flat panel', () => {
	it('are those that search finds on the machine, to every wish tried', () => {
		const random = makeRandom(3);
		const values: Record<string, readonly string[]> = {
			work: ['line', 'held', 'programme', 'follow'],
			mode: small.modes.map(({ id }) => id),
			loss: ['hold', 'dark', 'programme'],
			held: small.held.map(({ id }) => id).slice(0, 4),
			lead: ['off', 'on'],
		};
		const pick = (): [SettingKey, string][] =>
			Object.entries(values).flatMap(([key, all]) =>
				random.chance(0.6) ? [[key as SettingKey, random.pick(all)]] : [],
			);
		for (let n = 0; n < runs(2, 12); n++) {
			const start = open(Object.fromEntries(pick()));
			const found = [...tapsFrom(start).values()].sort((a, b) => a.taps - b.taps);
			for (let m = 0; m < 60; m++) {
				const wish: Wish = new Map(pick().map(([key, value]): [SettingKey, SettingDomain] => [key, { value }]));
				const fewest = found.find(({ state }) => unmetKeys(wish, state.context.settings).length === 0)?.taps;
				expect(panelWay(small, viewOf(start), wish).presses, JSON.stringify([...wish])).toBe(
					fewest ?? Number.POSITIVE_INFINITY,
				);
			}
		}
	});

	it('each first press leaves one fewer, on the whole panel too: drills are done by their own way', () => {
		for (const kind of ['other-law-address', 'other-law-colour', 'other-law-handover'] as const)
			for (let seed = 1; seed <= runs(12, 300); seed++) {
				const drill = makeDrill(kind, seed);
				const mark = markDrill(drill, shortestWay(drill));
				expect([mark.done, mark.presses], `${kind} ${seed}`).toEqual([true, mark.fewest]);
			}
	});

	it('a setting it has no function for cannot be had', () => {
		const wish: Wish = new Map([['limit', { value: 50 }]]);
		expect(allows({ value: 50 }, thimble.defaults.limit)).toBe(false);
		expect(panelWay(small, viewOf(open({})), wish).presses).toBe(Number.POSITIVE_INFINITY);
	});
});
