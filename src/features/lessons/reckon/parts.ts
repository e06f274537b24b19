import { calcWords as words } from '#words/lessons/index.ts';
import { locale } from '#words/locale/index.ts';
import type { Pick, Slider } from './kit.ts';

/** A number with so many decimals, and none that say nothing. */
export const round = (n: number, decimals = 1): string =>
	n === Number.POSITIVE_INFINITY ? words.endless : locale.number(Number(n.toFixed(decimals)));

export const slider = (
	id: keyof typeof words.sliders,
	least: number,
	most: number,
	step: number,
	start: number,
): Slider => ({
	id,
	...words.sliders[id],
	least,
	most,
	step,
	start,
});

export const pick = (id: keyof typeof words.picks, options: Pick['options']): Pick => ({
	id,
	label: words.picks[id],
	options,
});

export const named = (all: readonly { readonly id: string; readonly name: string }[]): Pick['options'] =>
	all.map(({ id, name }) => ({ value: id, words: name }));

export const chosen = <T extends { readonly id: string }>(all: readonly T[], id: string | undefined): T =>
	(all.find((each) => each.id === id) ?? all[0]) as T;
