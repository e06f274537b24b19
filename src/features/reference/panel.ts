import { fixtureWords as words } from '#words/reference/index.ts';
import { addressOf, switchesUp, upSwitches } from '../../../shared/dmx/index.ts';
import {
	type DipPanel,
	isIdle,
	type KeyedPanel,
	type LeafItem,
	lawOf,
	listOf,
	type MenuItem,
	type PanelKey,
	type Profile,
	type SettingKey,
	type SomeSettings,
} from '../../../shared/profile/index.ts';
import { type FixtureState, itemAt, panelOf, startFixture, stepFixture } from '../../../sim/fixture/index.ts';
import { fill, itemTitle, keyName, settingTitle, settingValueText } from '../../wording/index.ts';
import type { ReferenceTable } from './types.ts';

/** Keys with runs drawn together: 'Set, Down × 2'. */
export function keysText(keys: readonly PanelKey[], panel?: KeyedPanel): string {
	const runs: { key: PanelKey; count: number }[] = [];
	for (const key of keys) {
		const last = runs.at(-1);
		if (last?.key === key) last.count++;
		else runs.push({ key, count: 1 });
	}
	const { times, next, here } = words.ways;
	const said = runs.map(({ key, count }) => {
		const called = keyName(panel, key);
		return count === 1 ? called : fill(times, { key: called, count });
	});
	return said.join(next) || here;
}

/** What can be chosen at an item, with what it comes set to in brackets. */
function choicesText(profile: Profile, item: LeafItem): string {
	const { ways } = words;
	if (item.kind === 'info') return item.shows === 'nothing' ? ways.idle : ways.shows;
	if (item.kind === 'action') return fill(ways.asks, { ask: item.ask });
	const now = profile.defaults[item.setting];
	if (item.kind === 'number') {
		const range = fill(ways.range, { least: `${item.least}`, most: item.most, now: `${now}`, unit: item.unit });
		return item.wraps ? range + ways.wraps : range;
	}
	return listOf(item)
		.map(({ label, value }) => {
			if (isIdle(value)) return fill(ways.label, { label, value: ways.idle });
			const meaning = settingValueText(profile, item.setting, value);
			const said = meaning.toLowerCase() === label.toLowerCase() ? label : fill(ways.label, { label, value: meaning });
			return value === now ? fill(ways.chosen, { value: said }) : said;
		})
		.join(ways.choices);
}

/** Every item of a panel with keys, and the way there. */
export function wayTable(profile: Profile, panel: KeyedPanel): ReferenceTable {
	return {
		caption: fill(words.ways.caption, { name: profile.name }),
		head: words.ways.head,
		look: 'cards',
		rows: waysOf(profile, panel).map(({ item, menu, keys }) => [
			itemTitle(item),
			menu ? `${menu.label} › ${item.label}` : item.label,
			keysText(keys, panel),
			choicesText(profile, item),
		]),
	};
}

/** Where those ways start. */
export function wayNote(panel: KeyedPanel): string {
	const label = panel.menu[0]?.label ?? '';
	const { shape, acts, stores } = lawOf(panel);
	const called = Object.fromEntries(panel.keys.map((key) => [key, keyName(panel, key)]));
	if (shape === 'flat')
		return fill(words.ways.flat, { ...called, label, seconds: stores === 'enter' ? 0 : stores.after / 1000 });
	return fill(words.ways.says, { ...called, label, acts: acts === 'scrolling' ? words.ways.acts : null });
}

const setsText = (profile: Profile, sets: SomeSettings): string =>
	(Object.entries(sets) as [SettingKey, SomeSettings[SettingKey]][])
		.flatMap(([key, value]) =>
			value === undefined ? [] : `${settingTitle(key)}: ${settingValueText(profile, key, value)}`,
		)
		.join('; ');

/** The slides of a panel without keys, and its switches with the tenth up. */
export function switchTables(profile: Profile, panel: DipPanel): ReferenceTable[] {
	return [
		{
			caption: fill(words.slides.caption, { name: profile.name }),
			head: words.slides.head,
			rows: panel.slides.flatMap(({ title, positions }) =>
				positions.map(({ label, sets }) => [title, label, setsText(profile, sets)]),
			),
		},
		{
			caption: fill(words.switches.caption, { name: profile.name }),
			head: words.switches.head,
			rows: panel.fields.flatMap(({ title, switches, choices }) =>
				choices.map(({ title: choice }, n) => [
					title,
					switches.length > 1 ? fill(words.switches.run, { from: switches[0], to: switches.at(-1) }) : `${switches[0]}`,
					upOf(switches, n),
					choice,
				]),
			),
		},
	];
}

/** Which of a field's switches stand for a number: the first listed is the lowest bit. */
function upOf(switches: readonly number[], value: number): string {
	const up = switches.filter((_, bit) => (value & (1 << bit)) !== 0);
	return upSwitches(switchesUp(up)).join(' ') || words.switches.none;
}

/** How the address switches are read. */
export const switchNote = ({ wiring }: DipPanel): string =>
	fill(words.switches.says, { wiring: words.switches.wiring[wiring], allDown: addressOf(switchesUp([]), wiring) });

/** A way through a panel: the fewest taps from where it stands when it is switched on. */
export interface MenuWay {
	readonly item: LeafItem;
	/** The menu it stands in; null at the top. */
	readonly menu: MenuItem | null;
	readonly keys: readonly PanelKey[];
}

/** Milliseconds between one tap and the next: too short to hold a key or to fall asleep. */
const TAP = 10;

/**
 * The ways to every item, found by pressing keys on the machine itself and looking where its panel then stands, nearest first.
 * Nothing is opened for editing on the way.
 */
export function waysOf(profile: Profile, panel: KeyedPanel): MenuWay[] {
	const { battery } = profile.power;
	const start = startFixture(profile, {
		now: 0,
		settings: profile.defaults,
		switches: [],
		slides: [],
		on: true,
		live: true,
		battery: battery && { wattHours: battery.wattHours, at: 0, capacity: battery.wattHours, takesCharge: true },
	});
	const found = new Map<string, MenuWay>();
	const queue: { state: FixtureState; keys: readonly PanelKey[] }[] = [{ state: start, keys: [] }];
	for (let at = 0; at < queue.length; at++) {
		const { state, keys } = queue[at] as (typeof queue)[number];
		const { path } = state.context;
		const place = path.join('.');
		if (!['browsing', 'scrolling'].includes(panelOf(state)) || found.has(place)) continue;
		const item = itemAt(panel, path);
		const menu = path.length > 1 ? itemAt(panel, path.slice(0, -1)) : null;
		found.set(place, { item: item as LeafItem, menu, keys });
		for (const key of panel.keys) queue.push({ state: tap(profile, state, key), keys: [...keys, key] });
	}
	// in the order of the menu, as one meets them
	const order = panel.menu.flatMap((item) => (item.kind === 'menu' ? item.items : [item]));
	return order.flatMap((item) => [...found.values()].find((way) => way.item === item) ?? []);
}

function tap(profile: Profile, state: FixtureState, key: PanelKey): FixtureState {
	const down = stepFixture(profile, state, { type: 'key.down', key });
	const up = stepFixture(profile, down, { type: 'key.up', key });
	return stepFixture(profile, up, { type: 'clock.advance', now: up.context.now + TAP });
}
