import type { PanelKey, SettingKey } from '../../profile/index.ts';
import type { Place } from '../types.ts';

/** How a panel works, as a crew can tell by looking at it. Permanent. */
export const PANEL_WAYS = Object.freeze(['keys', 'knob', 'flat', 'switches'] as const);
export type PanelWay = (typeof PANEL_WAYS)[number];

/** Its display: four characters, or lines of text. Permanent. */
export const PANEL_DISPLAYS = Object.freeze(['code', 'text'] as const);

/** What an item of a menu can be: a setting, or something else. */
export type ItemSense =
	| SettingKey
	| 'follow'
	| 'defaults'
	| `info.${'charge' | 'hours' | 'signal' | 'footprint'}`
	| 'menu'
	| 'nothing';

/** Words for a thing: what we write for it, and what else panels call it. */
export interface Sense {
	readonly say: string;
	readonly known: readonly string[];
}

/** What is recognised on a panel, from `content/`. Values are keyed by setting and value: `loss.hold`. */
export interface PanelWords {
	readonly items: Readonly<Record<ItemSense, Sense>>;
	readonly values: Readonly<Record<string, Sense>>;
	/** Labels where a list does not give them, and what a reset asks: at most 4 signs on a display of four characters. */
	readonly labels: Readonly<Record<'on' | 'off' | 'ask', Readonly<Record<'code' | 'text', string>>>>;
}

/** What a mark in the list of a menu can say. Words for each are in `content/en/stock`. */
export interface PanelMarkFacts {
	/** No word of it is known: it does nothing here until somebody says what it is. */
	'item-unknown': { text: string };
	/** Part of it was known, and it was taken for that. */
	'item-guess': { text: string; sense: ItemSense };
	/** It could be two things or more: it does nothing here until somebody says which. */
	'item-two': { text: string; senses: readonly ItemSense[] };
	/** One of a range cannot be picked: it has to be written down by itself. */
	'value-unknown': { text: string; item: string; isOfRange: boolean };
	'value-guess': { text: string; item: string; value: string };
	'value-two': { text: string; item: string };
	/** Two values of one item come to the same here. */
	'value-twice': { text: string; other: string };
	/** A list by number, taken in the order of the chart. */
	'by-order': { item: string; count: number };
	/** Values that should be there and are not. */
	'values-missing': { text: string };
	/** More values that do nothing here than a list holds: it goes on without those past `most` values. */
	'values-many': { text: string; most: number };
	/** Fewer than two values that do something here. */
	'values-few': { text: string };
	'values-assumed': { text: string };
	'range-assumed': { text: string; least: number; most: number };
	/** A range that the simulated fixture does not have: it takes what both have. */
	'range-off': { text: string; from: number; to: number; least: number; most: number };
	'range-none': { text: string; least: number; most: number };
	'label-long': { text: string; room: number };
	'label-twice': { text: string };
	'setting-twice': { text: string };
	/** A third level of menus. */
	'too-deep': { text: string };
	'indent-off': { text: string };
	/** An item that a tree has no way to act on. */
	'not-acted': { text: string };
	'switch-count': { text: string; wanted: number; found: number };
	'switch-off': { text: string };
	/** What every list should have, and this one has not. */
	missing: { sense: ItemSense };
	'no-items': Record<never, never>;
	'key-missing': { key: PanelKey };
	'key-twice': { key: PanelKey };
	/** What was read makes no whole panel, whatever the cause. */
	'panel-off': Record<never, never>;
	'too-long': { lines: number };
}

export type PanelMarkCode = keyof PanelMarkFacts;

/** Where the words for a thing are written, and what it may be. */
export interface Pick {
	/** Columns from 1: what stands from one up to the other is replaced by ` = ` and the words. */
	readonly from: number;
	readonly to: number;
	/** Senses of an item, or values of a setting as `loss.hold`. */
	readonly of: readonly string[];
}

/** Something in the list of a menu that was not understood, or that a person should look at. */
export type PanelMark = {
	readonly [Code in PanelMarkCode]: {
		readonly code: Code;
		readonly place: Place;
		readonly facts: Readonly<PanelMarkFacts[Code]>;
		readonly pick: Pick | null;
	};
}[PanelMarkCode];

/** Marks with which there is no panel. */
export const PANEL_STOPS: ReadonlySet<PanelMarkCode> = new Set<PanelMarkCode>([
	'no-items',
	'key-missing',
	'key-twice',
	'panel-off',
]);

/** Marks that only say how something was read. */
export const PANEL_NOTES: ReadonlySet<PanelMarkCode> = new Set<PanelMarkCode>([
	'item-guess',
	'value-guess',
	'by-order',
	'values-assumed',
	'range-assumed',
	'label-twice',
	'missing',
]);

/** Collects marks. */
export class PanelMarks {
	readonly all: PanelMark[] = [];

	add<Code extends PanelMarkCode>(
		code: Code,
		place: Place,
		facts: PanelMarkFacts[Code],
		pick: Pick | null = null,
	): void {
		this.all.push({ code, place, facts, pick } as unknown as PanelMark);
	}
}
