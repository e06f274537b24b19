import { type KeyedPanel, keysOf, lawOf, type Meaning, type PanelKey } from '../../../shared/profile/index.ts';
import type { ValuePress } from './values.ts';

/** One press: a key tapped (cue 0) or held and let go at the sight of a repeat (`hold.ts`), held for what a long press does, a key held until a lock opens, or the power switch put on. */
export type WayPress =
	| { readonly do: 'key'; readonly key: PanelKey; readonly cue: number }
	| { readonly do: 'long'; readonly key: PanelKey }
	| { readonly do: 'unlock' }
	| { readonly do: 'on' };

export interface PanelWay {
	/** Presses that are sure to do, and no fewer are; Infinity where hands on this fixture cannot do it. */
	readonly presses: number;
	/** A press after which, however it ends, at least one fewer is needed; null at 0 or Infinity. */
	readonly first: WayPress | null;
}

export const DONE: PanelWay = Object.freeze({ presses: 0, first: null });
export const STUCK: PanelWay = Object.freeze({ presses: Number.POSITIVE_INFINITY, first: null });

/** The press that means something on this panel: a tap, or the long press where no key of its own means it. */
export function pressFor(panel: KeyedPanel, meaning: Meaning): WayPress {
	const key = keysOf(panel)[meaning];
	if (key) return { do: 'key', key, cue: 0 };
	const { long } = lawOf(panel);
	// a key of no use here wakes a panel as well as any
	return long ? { do: 'long', key: long.key } : { do: 'key', key: panel.keys[0] as PanelKey, cue: 0 };
}

/** A press on the way to a value, by the keys of this panel. */
export function valuePress(panel: KeyedPanel, { key, cue }: ValuePress): WayPress {
	const { higher, lower } = keysOf(panel);
	return { do: 'key', key: (key === 'up' ? higher : lower) ?? key, cue };
}
