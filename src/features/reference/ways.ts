import type { Key, KeyedPanel, LeafItem, MenuItem, Profile } from '../../../shared/profile/index.ts';
import { type FixtureState, itemAt, panelOf, startFixture, stepFixture } from '../../../sim/fixture/index.ts';

/** A way through a panel: the fewest taps from where it stands when it is switched on. */
export interface Way {
	readonly item: LeafItem;
	/** The menu it stands in; null at the top. */
	readonly menu: MenuItem | null;
	readonly keys: readonly Key[];
}

/** Milliseconds between one tap and the next: too short to hold a key or to fall asleep. */
const TAP = 10;

/**
 * The ways to every item, found by pressing keys on the machine itself and looking where its panel then stands, nearest first.
 * Nothing is opened for editing on the way.
 */
export function waysOf(profile: Profile, panel: KeyedPanel): Way[] {
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
	const found = new Map<string, Way>();
	const queue: { state: FixtureState; keys: readonly Key[] }[] = [{ state: start, keys: [] }];
	for (let at = 0; at < queue.length; at++) {
		const { state, keys } = queue[at] as (typeof queue)[number];
		const { path } = state.context;
		const place = path.join('.');
		if (panelOf(state) !== 'browsing' || found.has(place)) continue;
		const item = itemAt(panel, path);
		const menu = path.length > 1 ? itemAt(panel, path.slice(0, -1)) : null;
		found.set(place, { item: item as LeafItem, menu, keys });
		for (const key of panel.keys) queue.push({ state: tap(profile, state, key), keys: [...keys, key] });
	}
	// in the order of the menu, as one meets them
	const order = panel.menu.flatMap((item) => (item.kind === 'menu' ? item.items : [item]));
	return order.flatMap((item) => [...found.values()].find((way) => way.item === item) ?? []);
}

function tap(profile: Profile, state: FixtureState, key: Key): FixtureState {
	const down = stepFixture(profile, state, { type: 'key.down', key });
	const up = stepFixture(profile, down, { type: 'key.up', key });
	return stepFixture(profile, up, { type: 'clock.advance', now: up.context.now + TAP });
}
