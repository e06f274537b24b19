import { describe, expect, it } from 'vitest';
import { INVENT_LEVELS, LAWS, type Law } from '../../../shared/invent/index.ts';
import {
	type DipPanel,
	type KeyedPanel,
	type LeafItem,
	lawOf,
	type MenuItem,
	type PanelKey,
	type Profile,
	readProfile,
	type SettingKey,
	type SettingValue,
} from '../../../shared/profile/index.ts';
import { makeRandom, type Random } from '../../../shared/random/index.ts';
import {
	fewestPresses,
	makeTask,
	seedInTurn,
	strangerPresses,
	UNSEEN_TURNS,
	unseenTurn,
} from '../../../sim/drill/index.ts';
import { dipWay } from '../../../sim/drill/way/dip.ts';
import { panelWay, viewOf } from '../../../sim/drill/way/panel.ts';
import { panelScript } from '../../../sim/drill/way/script.ts';
import { strangerWay } from '../../../sim/drill/way/stranger.ts';
import { type SettingDomain, unmetKeys, type Wish } from '../../../sim/drill/wish.ts';
import {
	ALL_DOWN,
	draftOf,
	type FixtureState,
	panelOf,
	settingsFromDip,
	stepFixture,
} from '../../../sim/fixture/index.ts';
import { openUnharmed } from '../../../sim/rig/trusted.ts';
import { invent } from '../../../src/features/invented/index.ts';
import { runs } from '../../runs.ts';
import { lawIn, levelOf } from '../../shared/invent/kit.ts';
import { makeDrill } from './made.ts';
import { anyWish, open, small } from './panels.ts';

const ofLaw = (law: Law, seed: number): Profile =>
	invent(seed, levelOf(seed), { laws: LAWS.filter((each) => each !== law) });

const KEYED = LAWS.filter((law) => law !== 'dip');

/** Items of a panel that hold no others. */
const leavesOf = ({ menu }: KeyedPanel): LeafItem[] =>
	menu.flatMap((item) => (item.kind === 'menu' ? item.items : [item]));

/** Values of an item to be come to: each of a list; of a number its ends, their neighbours and its middle. */
function valuesOf(item: LeafItem): readonly SettingValue[] {
	if (item.kind === 'choice') return item.options.map(({ value }) => value as SettingValue);
	if (item.kind !== 'number') return [];
	const { least, most } = item;
	return [...new Set([least, least + 1, (least + most) >> 1, most - 1, most])];
}

describe('an invented panel', () => {
	const SEEDS = runs(4, 250);
	it.each(KEYED)(
		`%s: every value of every setting is come to by its keys, pressed on the machine: ${SEEDS} seeds`,
		(law) => {
			for (let seed = 0; seed < SEEDS; seed++) {
				const profile = ofLaw(law, seed);
				const panel = profile.panel as KeyedPanel;
				const start = open(profile, {});
				const wishes = leavesOf(panel).flatMap((item): Wish[] => [
					...('setting' in item ? valuesOf(item).map((value): Wish => new Map([[item.setting, { value }]])) : []),
					...('work' in item && item.work ? [new Map([['work', { value: item.work }]]) as Wish] : []),
				]);
				const settings = new Set(wishes.flatMap((wish) => [...wish.keys()]));
				for (const key of ['work', 'lead', 'address', 'held', 'level', 'programme', 'speed'] as const)
					expect(settings, `${law} ${seed}`).toContain(key);
				expect(settings.has('mode')).toBe(profile.modes.length > 1);
				for (const wish of wishes) {
					const { steps, presses } = panelScript(profile, 'wash-1', start, 0, wish);
					let state = start;
					for (const { at, event } of steps) {
						if (event.type === 'key.tap') {
							state = stepFixture(profile, state, { type: 'key.down', key: event.key });
							state = stepFixture(profile, state, { type: 'key.up', key: event.key });
							continue;
						}
						state = stepFixture(profile, state, { type: 'clock.advance', now: Math.max(at, state.context.now) });
						if (event.type === 'key.down' || event.type === 'key.up') state = stepFixture(profile, state, event);
					}
					const told = `${law} ${seed} ${JSON.stringify([...wish])}`;
					expect(unmetKeys(wish, state.context.settings), told).toEqual([]);
					expect(presses, told).toBeLessThan(60);
				}
				for (const work of ['line', 'held', 'programme', 'follow'] as const)
					expect(panelWay(profile, viewOf(start), new Map([['work', { value: work }]])).presses).toBeLessThan(60);
			}
		},
	);

	it('dip: every choice of every field and slide is come to by switches', () => {
		for (let seed = 0; seed < runs(8, 150); seed++) {
			const profile = ofLaw('dip', seed);
			const panel = profile.panel as DipPanel;
			const down = panel.slides.map(() => 0);
			const said = [
				...panel.fields.flatMap(({ choices }) => choices.map(({ sets }) => sets)),
				...panel.slides.flatMap(({ positions }) => positions.map(({ sets }) => sets)),
				{ work: 'line', address: 300 } as const,
			];
			for (const sets of said) {
				const wish: Wish = new Map(
					Object.entries(sets).map(([key, value]) => [key as SettingKey, { value } as SettingDomain]),
				);
				const way = dipWay(profile, 'wash-1', ALL_DOWN, down, wish);
				expect(way, `${seed} ${JSON.stringify(sets)}`).not.toBeNull();
				const switches = [...ALL_DOWN];
				const slides = [...down];
				for (const event of way ?? []) {
					if (event.type === 'switch.flip') switches[event.switch - 1] = event.up;
					if (event.type === 'slide.move') slides[panel.slides.findIndex(({ id }) => id === event.slide)] = event.to;
				}
				expect(settingsFromDip(profile, panel, switches, slides)).toMatchObject(sets);
			}
		}
	});
});

// ---- the fewest presses, searched for on the machine -----------------------------------------

const SEARCHED: readonly string[] = ['work', 'lead', 'mode', 'loss'];

/** The same panel with a few lists alone, so that taps are all there is and every state can be searched. */
function lists(profile: Profile): Profile {
	const panel = profile.panel as KeyedPanel;
	const isKept = (item: MenuItem): boolean =>
		(item.kind === 'choice' && SEARCHED.includes(item.setting)) || item.id === 'follow';
	const menu = panel.menu.flatMap((item): MenuItem[] => {
		if (item.kind !== 'menu') return isKept(item) ? [item] : [];
		const items = item.items.filter(isKept);
		return items.length === 0 ? [] : [{ ...item, items }];
	});
	// a flat panel gives the light of a function only where it has one
	const others =
		lawOf(panel).shape === 'flat' ? panel.menu.filter((item) => ['held', 'programme'].includes(item.id)) : [];
	const few = others.map((item) =>
		item.kind === 'choice'
			? { ...item, options: item.options.filter(({ value }, i) => i < 1 || value === profile.defaults[item.setting]) }
			: item,
	);
	const { law } = panel;
	return readProfile({
		...profile,
		panel: {
			...panel,
			law: law && { ...law, rests: null },
			menu: [...menu, ...few.filter((item) => item.kind !== 'choice' || item.options.length > 1)],
		},
	});
}

/** Presses to each state from one, breadth first on the machine: taps, and the long press where a key has one. */
function pressesFrom(profile: Profile, start: FixtureState) {
	const panel = profile.panel as KeyedPanel;
	const { long } = lawOf(panel);
	const mark = (state: FixtureState) =>
		JSON.stringify([panelOf(state), state.context.path, draftOf(state), state.context.settings]);
	const press = (state: FixtureState, key: PanelKey, ms: number): FixtureState => {
		let next = stepFixture(profile, state, { type: 'key.down', key });
		if (ms > 0) next = stepFixture(profile, next, { type: 'clock.advance', now: next.context.now + ms });
		return stepFixture(profile, next, { type: 'key.up', key });
	};
	const found = new Map([[mark(start), { presses: 0, state: start }]]);
	const queue = [start];
	for (const state of queue) {
		const presses = (found.get(mark(state))?.presses ?? 0) + 1;
		const nexts = [
			...panel.keys.map((key) => press(state, key, 0)),
			...(long ? [press(state, long.key, long.after)] : []),
		];
		for (const next of nexts) {
			if (found.has(mark(next))) continue;
			found.set(mark(next), { presses, state: next });
			queue.push(next);
		}
	}
	return [...found.values()].sort((a, b) => a.presses - b.presses);
}

describe('the fewest presses on an invented panel', () => {
	const SEEDS = runs(2, 25);
	it.each(KEYED)(`%s: are those that search finds on the machine: ${SEEDS} seeds`, (law) => {
		for (let seed = 0; seed < SEEDS; seed++) {
			const profile = lists(ofLaw(law, seed));
			const panel = profile.panel as KeyedPanel;
			const random = makeRandom(seed).fork(law);
			const pick = (): [SettingKey, SettingValue][] => [
				...leavesOf(panel).flatMap((item): [SettingKey, SettingValue][] =>
					item.kind === 'choice' && item.setting !== 'work' && random.chance(0.5)
						? [[item.setting, random.pick(item.options).value as SettingValue]]
						: [],
				),
				...(random.chance(0.6) ? ([['work', random.pick(['line', 'follow'])]] as [SettingKey, SettingValue][]) : []),
			];
			const found = pressesFrom(profile, open(profile, Object.fromEntries(pick())));
			const start = found[0]?.state as FixtureState;
			for (let n = 0; n < 40; n++) {
				const wish: Wish = new Map(pick().map(([key, value]) => [key, { value }]));
				const fewest = found.find(({ state }) => unmetKeys(wish, state.context.settings).length === 0)?.presses;
				expect(panelWay(profile, viewOf(start), wish).presses, `${law} ${seed} ${JSON.stringify([...wish])}`).toBe(
					fewest ?? Number.POSITIVE_INFINITY,
				);
			}
		}
	});
});

// ---- a careful stranger ----------------------------------------------------------------------

/** A wish for one to three settings that a panel has. */
function fewWishes(random: Random, profile: Profile): Wish {
	const leaves = leavesOf(profile.panel as KeyedPanel).filter((item) => valuesOf(item).length > 0);
	const some = random.shuffle(leaves).slice(0, random.int(1, 3));
	return new Map(
		some.flatMap((item): [SettingKey, SettingDomain][] =>
			'setting' in item ? [[item.setting, { value: random.pick(valuesOf(item)) }]] : [],
		),
	);
}

describe('a careful stranger', () => {
	it('reads on until the title fits: by hand, on a small panel', () => {
		const wish: Wish = new Map([['sensor', { value: 'shut' }]]);
		// on: Set, Down past Code and Lock, Back, Down past Loss and Charge, Set; back: Set, Up to Lock, Back, Up, Set; then Set, Up, Set
		const past = { forth: 1 + 1 + 1 + 3 + 1, back: 1 + 1 + 1 + 1 + 1 };
		expect(strangerWay(small, open(small, { sensor: 'open' }), 0, wish)).toEqual({
			forth: past.forth + 3,
			back: past.back + 3,
		});
		// locked: the hold that opens it besides
		expect(strangerWay(small, open(small, { sensor: 'open', lock: 'on' }), 0, wish)).toEqual({
			forth: past.forth + 4,
			back: past.back + 4,
		});
		expect(strangerWay(small, open(small, { sensor: 'shut' }), 0, wish)).toEqual({ forth: 0, back: 0 });
	});

	// symptom: begun inside a menu it read that menu twice. cause: out of it, it stands on its entry, and went in again
	it('reads the menu it begins in once: by hand, on the same panel', () => {
		const tap = (state: FixtureState, key: PanelKey) =>
			stepFixture(small, stepFixture(small, state, { type: 'key.down', key }), { type: 'key.up', key });
		const inside = tap(open(small, { sensor: 'open' }), 'set');
		expect(inside.context.path).toEqual([0, 0]);
		// on: Down to Lock, Back, Down past Loss and Charge to Two, Set; back: Up to Lock, Back, Up, Set; then Set, Up, Set
		expect(strangerWay(small, inside, 0, new Map([['sensor', { value: 'shut' }]]))).toEqual({
			forth: 1 + 1 + 3 + 1 + 3,
			back: 1 + 1 + 1 + 1 + 3,
		});
		// what is in that menu is done in it: Down or Up to Lock, Set, Up, Set
		expect(strangerWay(small, inside, 0, new Map([['lock', { value: 'on' }]]))).toEqual({ forth: 4, back: 4 });
	});

	const PANELS = runs(120, 1000);
	it(`does it on ${PANELS} invented panels, with no fewer presses than the fewest, and not many times them`, () => {
		const most = new Map<Law, number>();
		for (let seed = 0; seed < PANELS; seed++) {
			const law = KEYED[seed % KEYED.length] as Law;
			const profile = ofLaw(law, seed);
			const random = makeRandom(seed).fork('stranger');
			const start = open(profile, { work: random.pick(['line', 'held', 'programme'] as const) });
			const wish = random.chance(0.2) ? reachable(profile, anyWish(random, profile, {})) : fewWishes(random, profile);
			const { presses: fewest } = panelWay(profile, viewOf(start), wish);
			const read = strangerWay(profile, start, 0, wish);
			expect(read, `${law} ${seed}`).not.toBeNull();
			if (!read) continue;
			expect(Math.min(read.forth, read.back), `${law} ${seed}`).toBeGreaterThanOrEqual(fewest);
			const ratio = (read.forth + read.back) / 2 / Math.max(1, fewest);
			most.set(law, Math.max(most.get(law) ?? 0, ratio));
		}
		for (const [law, ratio] of most) expect(ratio, law).toBeLessThan(law === 'flat' ? 4 : 8);
	});

	it(`does it from wherever a few taps have come to as well, with no fewer presses: ${PANELS} panels`, () => {
		let inside = 0;
		for (let seed = 0; seed < PANELS; seed++) {
			const law = KEYED[seed % KEYED.length] as Law;
			const profile = ofLaw(law, seed);
			const random = makeRandom(seed).fork('stranger after taps');
			let start = open(profile, {});
			for (let taps = random.int(1, 6); taps > 0; taps--) {
				const key = random.pick((profile.panel as KeyedPanel).keys);
				start = stepFixture(profile, stepFixture(profile, start, { type: 'key.down', key }), { type: 'key.up', key });
			}
			if (start.context.path.length > 1) inside++;
			const wish = fewWishes(random, profile);
			const read = strangerWay(profile, start, start.context.now, wish);
			expect(read, `${law} ${seed}`).not.toBeNull();
			if (!read) continue;
			const { presses: fewest } = panelWay(profile, viewOf(start), wish);
			expect(Math.min(read.forth, read.back), `${law} ${seed}`).toBeGreaterThanOrEqual(fewest);
		}
		expect(inside).toBeGreaterThan(PANELS / 20);
	});

	it('has nothing to read where the panel has switches, and no press to spend where all is done', () => {
		const dip = ofLaw('dip', 1);
		const wish: Wish = new Map([['address', { value: 7 }]]);
		expect(strangerWay(dip, open(dip, {}), 0, wish)).toBeNull();
		const drill = makeDrill('address-dip', 3);
		expect(strangerPresses(drill, openUnharmed(drill.sheet))).toBeNull();
	});
});

/** What of a wish the panel can be set to. */
function reachable(profile: Profile, wish: Wish): Wish {
	const leaves = leavesOf(profile.panel as KeyedPanel);
	return new Map(
		[...wish].filter(([key]) => key !== 'work' && leaves.some((item) => 'setting' in item && item.setting === key)),
	);
}

// ---- the drill -------------------------------------------------------------------------------

describe('a panel you never saw', () => {
	it('goes from law to law and from goal to goal, never two of one running, each with each in sixteen', () => {
		const turns = Array.from({ length: 64 }, (_, seed) => unseenTurn(1000 + seed));
		for (const [i, turn] of turns.entries()) {
			const next = turns[i + 1];
			expect(next?.law).not.toBe(turn.law);
			expect(next?.goal).not.toBe(turn.goal);
		}
		const running = turns.slice(3, 3 + UNSEEN_TURNS).map(({ law, goal }) => `${law} ${goal}`);
		expect(new Set(running).size).toBe(UNSEEN_TURNS);
		for (const drawn of [0, 5, 2 ** 32 - 1, 2 ** 32 - 16])
			for (const turn of [0, 3, 15, 16, 299]) {
				expect(unseenTurn(seedInTurn(drawn, turn))).toEqual(unseenTurn(turn));
				expect(seedInTurn(drawn, turn)).toBeLessThanOrEqual(2 ** 32 - 1);
			}
	});

	it('has a new fixture of that law each time, carried in its sheet, and asks that goal of it', () => {
		const ids = new Set<string>();
		const SEEDS = runs(32, 400);
		for (let seed = 0; seed < SEEDS; seed++) {
			const { sheet, facts } = makeDrill('panel-unseen', seed);
			const { law, goal } = unseenTurn(seed);
			expect(sheet.profiles).toHaveLength(1);
			const [profile] = sheet.profiles as [Profile];
			expect([lawIn(profile), facts['goal']]).toEqual([law, goal]);
			ids.add(profile.id);
		}
		expect(ids.size).toBe(SEEDS);
	});

	it('is never asked of a stranger with fewer presses than of who knows it', () => {
		for (let seed = 0; seed < runs(32, 400); seed++) {
			const drill = makeDrill('panel-unseen', seed);
			const rig = openUnharmed(drill.sheet);
			expect(strangerPresses(drill, rig), `seed ${seed}`).toBeGreaterThanOrEqual(fewestPresses(drill, rig));
		}
	});

	it('can be set as a task of its own on any invented fixture', () => {
		for (const level of INVENT_LEVELS) {
			const profile = invent(9, level, { laws: ['dip'] });
			const { sheet } = makeDrill('panel-unseen', 1);
			const [placed] = sheet.fixtures;
			if (!placed) throw new Error('no fixture');
			const task = makeTask({
				scene: 'bench',
				rig: { fixtures: [{ ...placed, profile: profile.id, settings: { sleep: 0 } }], profiles: [profile] },
				goal: [{ is: 'setting', fixture: placed.id, key: 'address', value: 77 }],
				hands: ['panel', 'power'],
			});
			expect(fewestPresses(task, openUnharmed(task.sheet))).toBeGreaterThan(0);
		}
	});
});
