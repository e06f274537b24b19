import type { KeyedPanel, MenuItem, SettingKey } from '../../../shared/profile/index.ts';
import type { EditableItem } from './values.ts';

/** An item of the menu and where it stands. */
export interface Place<Item = MenuItem> {
	readonly path: readonly number[];
	readonly item: Item;
}

/** A panel's menu, looked up by what can be done there. */
export interface MenuMap {
	readonly bySetting: ReadonlyMap<SettingKey, Place<EditableItem>>;
	/** The item that sets all back, if the panel has one. */
	readonly defaults: Place | null;
	/** Items beside each other: of the top, then of each menu of the top; 0 where there is none. */
	readonly tops: number;
	readonly insides: readonly number[];
}

const made = new WeakMap<KeyedPanel, MenuMap>();

export function menuMap(panel: KeyedPanel): MenuMap {
	let map = made.get(panel);
	if (!map) {
		const all: Place[] = panel.menu.flatMap((item, i): Place[] =>
			item.kind === 'menu' ? item.items.map((leaf, n) => ({ path: [i, n], item: leaf })) : [{ path: [i], item }],
		);
		const bySetting = new Map<SettingKey, Place<EditableItem>>();
		for (const { path, item } of all)
			if ((item.kind === 'choice' || item.kind === 'number') && !bySetting.has(item.setting))
				bySetting.set(item.setting, { path, item });
		map = {
			bySetting,
			defaults: all.find(({ item }) => item.kind === 'action') ?? null,
			tops: panel.menu.length,
			insides: panel.menu.map((item) => (item.kind === 'menu' ? item.items.length : 0)),
		};
		made.set(panel, map);
	}
	return map;
}
