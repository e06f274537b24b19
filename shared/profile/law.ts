import type { SettingKey } from './rules.ts';
import type { KeyedPanel, LeafItem, MenuItem, PanelKey, PanelLaw } from './schema.ts';

const TREE = { shape: 'tree', acts: 'stored', stores: 'enter', rests: null, long: null, opens: 'set' } as const;
const BY_DISPLAY = {
	code: Object.freeze({ ...TREE, unstored: 'value' }),
	text: Object.freeze({ ...TREE, unstored: 'arrow' }),
} as const;

/** The law a panel obeys: its own, or the tree that a panel without one obeys, where a value acts once it is stored by Set. */
export const lawOf = ({ kind, law }: Pick<KeyedPanel, 'kind' | 'law'>): PanelLaw => law ?? BY_DISPLAY[kind];

/**
 * Whether the light may change as a hand goes through the menu; null where nobody says. A law by which a value waits until it is stored
 * is no word on that by itself: a panel that its crew wrote down is played so until they answer.
 */
export function doesAct({ law, scrolling }: Pick<KeyedPanel, 'law' | 'scrolling'>): boolean | null {
	if (law?.acts === 'scrolling') return true;
	return scrolling === undefined ? null : scrolling === 'acts';
}

/** What a key can mean, whatever it is on a panel. */
export type Meaning = 'next' | 'previous' | 'higher' | 'lower' | 'enter' | 'back';

/** Which key of a panel does what when it is tapped, and null where none does. Along a flat panel's functions it only goes on. */
export function keysOf({ keys }: Pick<KeyedPanel, 'keys'>): Readonly<Record<Meaning, PanelKey | null>> {
	const first = (...wanted: readonly PanelKey[]): PanelKey | null => wanted.find((key) => keys.includes(key)) ?? null;
	return {
		next: first('page', 'down', 'right'),
		previous: keys.includes('page') ? null : first('up', 'left'),
		higher: first('up', 'right'),
		lower: first('down', 'left'),
		enter: first('set'),
		back: first('back'),
	};
}

/** Settings that can be made at a panel: those of its items, and who decides the light where its functions say that. */
export function settingsOn({ menu }: Pick<KeyedPanel, 'menu'>): ReadonlySet<SettingKey> {
	const items = menu.flatMap((item): readonly MenuItem[] => (item.kind === 'menu' ? item.items : [item]));
	return new Set(
		items.flatMap((item): SettingKey[] => [
			...('setting' in item ? [item.setting] : []),
			...('work' in item ? (['work'] as const) : []),
		]),
	);
}

/** A value of a list that the simulated fixture does nothing for. It is never one of a setting's own: those have no colon. */
const IDLE = 'idle:';
export const isIdle = (value: unknown): boolean => typeof value === 'string' && value.startsWith(IDLE);

type Choice = Extract<LeafItem, { kind: 'choice' }>;

/** All that an item's list shows, in its order: what sets something, and what does nothing here. */
export function listOf({ options, idle = [] }: Choice): Choice['options'] {
	const all = [...options];
	for (const { at, label } of idle.toSorted((a, b) => a.at - b.at)) all.splice(at, 0, { value: `${IDLE}${at}`, label });
	return all;
}
