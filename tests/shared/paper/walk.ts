import type { ItemFacts, Option, QuestionGround } from '../../../shared/paper/index.ts';
import type { Mode, Profile } from '../../../shared/profile/index.ts';

/** What the oracles walk: every value, every slot, every setting of the switches. Nothing of `shared/dmx` or `shared/paper` is called. */

const DIGITS = '0123456789ABCDEF';
export const VALUES = Array.from({ length: 256 }, (_, value) => value);
export const SLOTS = Array.from({ length: 512 }, (_, i) => i + 1);

export const alike = (a: unknown, b: unknown): boolean =>
	String(a).trim().toLowerCase() === String(b).trim().toLowerCase();
export const num = (facts: ItemFacts, key: string): number => facts[key] as number;

export function fixtureOf({ profiles, sheet }: QuestionGround, name: unknown): Profile {
	const own = sheet ? sheet.profiles : [];
	return [...profiles, ...own].find((each) => each.name === name) as Profile;
}
export const modeOf = (ground: QuestionGround, { fixture, mode }: ItemFacts): Mode =>
	fixtureOf(ground, fixture).modes.find((each) => each.name === mode) as Mode;

/** What each of the 256 values of a slot does, by name. */
export function doesOf(ground: QuestionGround, facts: ItemFacts): string[] {
	const slot = modeOf(ground, facts).slots.find(({ at }) => at === facts['n']);
	if (slot?.drives.kind !== 'bands') throw new Error('the question is about a slot with bands');
	const does: string[] = [];
	for (const { from, to, name } of slot.drives.bands) for (let value = from; value <= to; value++) does[value] = name;
	return does;
}

/** What stands at each number of a mode's footprint, from 1; 0 is left empty. */
export function numbered(mode: Mode): { name: string; part: string }[] {
	const chart: { name: string; part: string }[] = [];
	for (const { at, fine, name } of mode.slots) {
		chart[at] = { name, part: fine === undefined ? 'whole' : 'coarse' };
		if (fine !== undefined) chart[fine] = { name, part: 'fine' };
	}
	return chart;
}

export const widthOf = (mode: Mode): number => numbered(mode).filter((_, n) => n > 0).length;

/** The percents a value may be shown as: the nearest (of two the higher), and the highest that is not past it. */
export function shownAs(value: number): number[] {
	let nearest = 0;
	let below = 0;
	for (let percent = 0; percent <= 100; percent++) {
		if (Math.abs(100 * value - 255 * percent) <= Math.abs(100 * value - 255 * nearest)) nearest = percent;
		if (255 * percent <= 100 * value) below = percent;
	}
	return [nearest, below];
}

/** The values a typed percent may set: the nearest (of two the higher), and the highest not past it. */
export function typedAs(percent: number): number[] {
	let nearest = 0;
	let below = 0;
	for (const value of VALUES) {
		if (Math.abs(100 * value - 255 * percent) <= Math.abs(100 * nearest - 255 * percent)) nearest = value;
		if (100 * value <= 255 * percent) below = value;
	}
	return [nearest, below];
}

/** The values a percent may be set as, and all shown as it. */
export const setAs = (percent: number): number[] => [
	...typedAs(percent),
	...VALUES.filter((value) => shownAs(value).includes(percent)),
];

export const hexText = (value: number): string =>
	DIGITS.charAt((value - (value % 16)) / 16) + DIGITS.charAt(value % 16);

/** The address nine switches read as. */
export function readSwitches(up: readonly number[], wiring: unknown): number {
	let worth = 1;
	let sum = 0;
	for (let n = 1; n <= 9; n++) {
		if (up.includes(n)) sum += worth;
		worth += worth;
	}
	return wiring === 'sum' ? (sum === 0 ? 1 : sum) : sum + 1;
}

export const wiringOf = (ground: QuestionGround, { fixture }: ItemFacts): unknown => {
	const { panel } = fixtureOf(ground, fixture);
	return panel.kind === 'dip' ? panel.wiring : null;
};

/** Which slots of one universe a start and a width cover, past the end too. */
export const covered = (start: number, width: number): number[] => Array.from({ length: width }, (_, i) => start + i);

export const rows = (flat: unknown, width: number): (string | number)[][] => {
	const list = flat as (string | number)[];
	return Array.from({ length: list.length / width }, (_, i) => list.slice(i * width, (i + 1) * width));
};

/** How a kind's right answers are found: the set of right numbers, or whether an option is right. */
export interface Oracle {
	numbers?(facts: ItemFacts, ground: QuestionGround): readonly number[];
	option?(label: Option['label'], facts: ItemFacts, ground: QuestionGround, all: readonly Option[]): boolean;
	order?(names: readonly string[], facts: ItemFacts, ground: QuestionGround): string[];
	pair?(left: Option['label'], right: Option['label'], facts: ItemFacts, ground: QuestionGround): boolean;
	switches?(up: readonly number[], facts: ItemFacts, ground: QuestionGround): boolean;
}
