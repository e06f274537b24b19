import { stockNames } from '#words/stock/index.ts';
import {
	footprintOf,
	type KeyedPanel,
	type LeafItem,
	listOf,
	type MenuItem,
	type Profile,
} from '../../../../shared/profile/index.ts';
import type { ItemSense, PanelEntry } from '../../../../shared/stock/index.ts';

const { items, values } = stockNames.ownPanel;

/** What an item is, as the words for it are keyed. */
export function senseOf(item: LeafItem): ItemSense {
	if (item.kind === 'info')
		return item.shows === 'nothing' ? 'nothing' : item.work === 'follow' ? 'follow' : `info.${item.shows}`;
	return item.kind === 'action' ? 'defaults' : item.setting;
}

/** What a value is in our words: a name of the fixture's own, a number, or the words for it. */
function valueWords(profile: Profile, item: Extract<LeafItem, { kind: 'choice' }>, value: string | number): string {
	const { setting } = item;
	if (setting === 'mode')
		return `${footprintOf(profile.modes.find(({ id }) => id === value) as Profile['modes'][number])} channels`;
	if (setting === 'held') return profile.held.find(({ id }) => id === value)?.name ?? '';
	if (setting === 'programme') return profile.programmes.find(({ id }) => id === value)?.name ?? '';
	if (setting === 'sleep') return value === 0 ? values['sleep.never'].say : `${value} seconds`;
	return values[`${setting}.${value}` as keyof typeof values]?.say ?? `${value}`;
}

/** A leaf as a line of a menu: what the display shows, and where `said`, what that is. */
function leafText(profile: Profile, item: LeafItem, isSaid: boolean): string {
	const { label } = item;
	const head = isSaid ? `${label} = ${items[senseOf(item)].say}` : label;
	if (item.kind === 'number') return `${head} ${item.least}-${item.most}${item.unit}`;
	if (item.kind !== 'choice') return head;
	const list = listOf(item).map((option) =>
		isSaid ? `${option.label} = ${valueWords(profile, item, option.value)}` : option.label,
	);
	return `${head}: ${list.join(', ')}`;
}

/** A menu as its crew would write it down. @param isSaid whether they say what each thing is, or only what the display shows */
const menuText = (profile: Profile, panel: KeyedPanel, isSaid: boolean): string =>
	panel.menu
		.flatMap((item: MenuItem) =>
			item.kind === 'menu'
				? [
						`${item.label}${isSaid ? ` = ${items.menu.say}` : ''}`,
						...item.items.map((leaf) => `\t${leafText(profile, leaf, isSaid)}`),
					]
				: [leafText(profile, item, isSaid)],
		)
		.join('\n');

/** The panel of a profile as its crew would put it in, with every question answered. */
export function panelEntryOf(profile: Profile, panel: KeyedPanel, isSaid: boolean): PanelEntry {
	const { law, keys } = panel;
	const way = law?.shape === 'flat' ? 'flat' : keys.includes('left') ? 'knob' : 'keys';
	const wraps = panel.menu
		.flatMap((item) => (item.kind === 'menu' ? item.items : [item]))
		.some((item) => item.kind === 'number' && item.setting === 'address' && item.wraps);
	return {
		way,
		display: panel.kind,
		keys: keys.map((key) => ({ key, name: '' })),
		menu: menuText(profile, panel, isSaid),
		answers: {
			acts: law?.acts ?? 'stored',
			stores: 'key',
			held: law?.long ? 'back' : 'nothing',
			rests: law?.rests?.on ?? 'stays',
			ends: wraps ? 'round' : 'stops',
			opens: law?.opens ?? 'set',
		},
	};
}
