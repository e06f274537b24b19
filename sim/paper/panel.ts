import { type Chance, type Draft, type Level, oneOf, type Say, say, type Wrong } from '../../shared/paper/index.ts';
import type { Key, KeyedPanel, LeafItem, MenuItem, Profile, SomeSettings } from '../../shared/profile/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import { valueText } from '../fixture/index.ts';
import { openUnharmed } from '../rig/trusted.ts';
import { nameAt, sheetFor, stand } from './stage.ts';

/** One key, pressed so many times in a row. */
export interface Press {
	readonly key: Key;
	readonly times: number;
}

/** Most steps that a value is moved. */
const MOST_STEPS = 5;

/** Draws before a menu is held to be too short. */
const DRAWS = 200;

type Editable = Extract<LeafItem, { kind: 'choice' | 'number' }>;
type Menu = Extract<MenuItem, { kind: 'menu' }>;

/** Whether it has a display, and a menu long enough to ask about. */
export const isKeyed = ({ panel }: Profile): boolean =>
	panel.kind !== 'dip' && panel.menu.length > 1 && editables(panel).length > 0;

/** Everything that can be set, with the menu it is in; null for one at the top. */
const editables = ({ menu }: KeyedPanel): { readonly menu: Menu | null; readonly item: Editable }[] =>
	menu.flatMap((top) =>
		(top.kind === 'menu' ? top.items : [top]).flatMap((item) =>
			item.kind === 'choice' || item.kind === 'number' ? [{ menu: top.kind === 'menu' ? top : null, item }] : [],
		),
	);

/** What a display says after some presses, from its first item on. */
export function askKeys(profile: Profile, panel: KeyedPanel, chance: Chance, level: Level): Draft {
	for (let n = 0; n < DRAWS; n++) {
		const { menu, item } = chance.pick(editables(panel));
		const presses = pressesFor(panel, chance, level, menu, item);
		const settings = startAt(chance, item);
		const placed = stand(profile, 1, settings);
		if (!placed) continue;
		const sheet = sheetFor(nameAt(profile, 1), [profile], { fixtures: [placed] });
		const shownAfter = panelOf(sheet);
		const right = shownAfter(presses);
		const wrongs = slips(presses).map(([mistake, slip]): Wrong<Say> => [mistake, label(shownAfter(slip))]);
		const draft = oneOf(
			chance,
			{
				facts: {
					fixture: profile.name,
					profile: profile.id,
					panel: panel.kind,
					shown: shownAfter([]),
					presses: presses.flatMap(({ key, times }) => [key, times]),
					top: panel.menu.map((each) => each.label),
					menu: presses.some(({ key }) => key === 'set') && menu ? menu.label : null,
					inside: presses.some(({ key }) => key === 'set') && menu ? menu.items.map((each) => each.label) : [],
					item: presses.filter(({ key }) => key === 'set').length > (menu ? 1 : 0) ? item.label : null,
					options: item.kind === 'choice' ? item.options.map((each) => each.label) : [],
					value: valueText(item, placed.settings[item.setting] ?? profile.defaults[item.setting]),
					steps: stepsOf(shownAfter, presses),
				},
				bench: sheet,
			},
			label(right),
			wrongs,
		);
		// fewer wrong ones than two: the menu is too short for these presses
		if (draft.mistakes.length >= 2) return draft;
	}
	throw new RangeError(`the menu of ${profile.id} is too short to ask about`);
}

const label = (lines: readonly string[]): Say =>
	lines.length > 1
		? say('two-lines', { first: lines[0] ?? '', second: lines[1] ?? '' })
		: say('one-line', { line: lines[0] ?? '' });

/** What a panel shows after some presses: its lines without the blanks around them. */
type Shown = (presses: readonly Press[]) => string[];

/** The panel of a sheet's one fixture. Its rig is opened once, and each row of presses goes to a fork: forks share what they pass. */
function panelOf(sheet: RigSheet): Shown {
	const opened = openUnharmed(sheet);
	const fixture = sheet.fixtures[0]?.id ?? '';
	return (presses) => {
		const rig = opened.fork();
		for (const { key, times } of presses) for (let n = 0; n < times; n++) rig.send({ type: 'key.tap', fixture, key });
		const { display } = rig.look(fixture);
		return display.kind === 'keyed' ? display.lines.map((line) => line.trim()) : [];
	};
}

/** What is shown after each key, as a fact: the key, how often it is pressed, and two lines. */
const stepsOf = (shownAfter: Shown, presses: readonly Press[]): (string | number)[] =>
	presses.flatMap(({ key, times }, i) => {
		const [first = '', second = ''] = shownAfter(presses.slice(0, i + 1));
		return [key, times, first, second];
	});

/** The way to an item, as far as the level goes. */
function pressesFor(panel: KeyedPanel, chance: Chance, level: Level, menu: Menu | null, item: Editable): Press[] {
	const along = (places: number, count: number): Press[] => {
		const up = count - places;
		return places === 0
			? []
			: up < places && chance.chance(0.7)
				? [{ key: 'up', times: up }]
				: [{ key: 'down', times: places }];
	};
	const set: Press = { key: 'set', times: 1 };
	const atTop = panel.menu.findIndex((each) => each === (menu ?? item));
	const toTop = along(atTop, panel.menu.length);
	if (level === 'easy')
		return toTop.length > 0 ? toTop : [{ key: 'down', times: chance.int(1, panel.menu.length - 1) }];
	const inside = menu ? [set, ...along(menu.items.indexOf(item), menu.items.length)] : [];
	const step: Press = {
		key: chance.pick(['up', 'down']),
		times: chance.int(1, item.kind === 'number' ? MOST_STEPS : 3),
	};
	if (level === 'middle' && menu && chance.chance(0.5)) return [...toTop, ...inside];
	const end: Press[] =
		level === 'hard' && panel.kind === 'text' && chance.chance(0.4)
			? [{ key: chance.pick(['set', 'back']), times: 1 }]
			: [];
	return [...toTop, ...inside, set, step, ...end];
}

/** What the item stands at: a value well inside its range, or one of its options. */
function startAt(chance: Chance, item: Editable): SomeSettings {
	// a panel that locks or sleeps says something else
	if (item.setting === 'lock' || item.setting === 'sleep') return {};
	if (item.kind === 'choice') return { [item.setting]: chance.pick(item.options).value };
	const room = item.most - item.least > 2 * MOST_STEPS ? MOST_STEPS : 0;
	return { [item.setting]: chance.int(item.least + room, item.most - room) };
}

/** The presses as they go wrong. */
function slips(presses: readonly Press[]): Wrong<readonly Press[]>[] {
	const last = presses.findLastIndex(({ key }) => key === 'up' || key === 'down');
	const lastSet = presses.findLastIndex(({ key }) => key === 'set');
	const put = (at: number, press: Press): Press[] => presses.map((each, i) => (i === at ? press : each));
	const moved = presses[last];
	const without = (at: number): Press[] => presses.filter((_, i) => i !== at);
	return [
		...(moved
			? ([
					['off-by-one-low', put(last, { ...moved, times: moved.times - 1 })],
					['off-by-one-high', put(last, { ...moved, times: moved.times + 1 })],
					['wrong-order', put(last, { ...moved, key: moved.key === 'up' ? 'down' : 'up' })],
				] as const)
			: []),
		...(lastSet >= 0 ? ([['other-setting', without(lastSet)]] as const) : []),
		['other-setting', [...presses, { key: 'set', times: 1 }]],
		['other-setting', [...presses, { key: 'down', times: 2 }]],
		['other-setting', [{ key: 'down', times: 1 }, ...presses]],
	];
}
