import { levelsShownAs } from '../dmx/index.ts';

/** How a pair of numbers was written. Two signs that could be decimal or hexadecimal are what the whole text has (`hexHabit`). */
export type Unit = 'decimal' | 'hexadecimal' | 'percent';

/** One value or a range of values found in a text. */
export interface Span {
	/** Where it stands in the text: first character, and the one after the last. */
	readonly start: number;
	readonly end: number;
	readonly from: number;
	readonly to: number;
	readonly unit: Unit;
	/** A number by itself. */
	readonly single: boolean;
	/** A unit follows it (Hz, seconds): it is part of a sentence. */
	readonly hasUnit: boolean;
	/** A word stands before it that is often counted: `cells 1-4`, `speed 1`. */
	readonly isCount: boolean;
}

const VALUE = String.raw`0x[0-9a-f]{1,4}|\$[0-9a-f]{1,4}|[0-9a-f]{1,4}h(?![a-z0-9])|\d{1,5}(?:\.\d{1,2})?[ \t]?%|\d{1,5}(?:\.\d{1,2}(?!\d|\.))?|[0-9a-f]{2}`;
const DASH = String.raw`[ \t]*(?:-{1,3}>?|[\u2010-\u2015\u2212~\u223c]|\.{2,3}|\u2026|\u2192)[ \t]*`;
const WORD = String.raw`[ \t]+(?:to|thru|through|until|up to)[ \t]+`;
const NOT_WITHIN = String.raw`(?<![\w.$])`;
const RANGE = new RegExp(`${NOT_WITHIN}(${VALUE})(?:${DASH}|${WORD})(${VALUE})(?![\\w$])`, 'gi');
/** A range with its unit stuck to it: `1-20Hz`. */
const STUCK = new RegExp(`${NOT_WITHIN}(\\d{1,5})(?:${DASH}|${WORD})(\\d{1,5})(?=[a-z])`, 'gi');
const SINGLE = new RegExp(
	`${NOT_WITHIN}(0x[0-9a-f]{1,4}|\\$[0-9a-f]{1,4}|\\d[0-9a-f]{0,3}h|\\d{1,5}[ \\t]?%|\\d{1,5})(?![\\w%]|\\.\\d)`,
	'gi',
);
const UNIT_AFTER =
	/^[ \t]?(?:[Hh][Zz]|hertz|ms|s(?! to)|secs?|seconds?|minutes?|rpm|bpm|BPM|RPM|K|kelvin|°|deg|degrees?|fps|bits?)(?![a-zA-Z])/;
const PART_BEFORE =
	/(?:cells?|pixels?|segments?|sections?|heads?|leds?|zones?|groups?|programmes?|programs?|steps?|speeds?|levels?|colou?rs?|macros?|patterns?|modes?|universes?|fixtures?)[ \t]*#?[ \t]*$/i;

/** Two signs that are only hexadecimal if a letter is in them: `0F`, `80`. Words of two letters are left alone. */
const isPair = (text: string): boolean => /^[0-9a-f]{2}$/i.test(text);
const hasLetter = (text: string): boolean => /[a-f]/i.test(text);
const isMarkedHex = (text: string): boolean => /^(?:0x|\$)|h$/i.test(text);

/** Whether a pair of values is written as hexadecimal with no sign for it: `0A-1F`. */
function isBareHex(one: string, other: string): boolean {
	if (!isPair(one) || !isPair(other)) return false;
	if (!hasLetter(one) && !hasLetter(other)) return false;
	return /\d/.test(one + other) || (one + other).toUpperCase() === one + other;
}

/**
 * Whether a text's ranges of two signs are hexadecimal: at least one of them has a letter, and none is written any other way.
 * `mixed` where both kinds are met, so that `10-20` could be either.
 */
export function hexHabit(text: string): 'hexadecimal' | 'decimal' | 'mixed' {
	let bare = 0;
	let other = 0;
	for (const [, one = '', two = ''] of text.matchAll(RANGE)) {
		if (isMarkedHex(one) || isMarkedHex(two) || one.includes('%') || two.includes('%')) continue;
		if (isBareHex(one, two)) bare++;
		else if (!(isPair(one) && isPair(two))) other++;
	}
	if (bare === 0) return 'decimal';
	return other === 0 ? 'hexadecimal' : 'mixed';
}

const plain = (text: string): string =>
	text
		.replace(/^(?:0x|\$)/i, '')
		.replace(/h$/i, '')
		.replace(/[ \t]?%$/, '');

/** The value at which a percent begins to be shown, or where it ends: `first` and `last` level of the percent; past 100 as it stands. */
function levelAt(percent: number, edge: 'first' | 'last'): number {
	if (percent > 100) return Math.round(percent * 2.55);
	if (!Number.isInteger(percent)) return edge === 'first' ? Math.ceil(percent * 2.55) : Math.floor(percent * 2.55);
	const shown = levelsShownAs(percent);
	return (edge === 'first' ? shown[0] : shown.at(-1)) as number;
}

/** Two written values as levels. Null where they are none: a pair of letters that is a word, or decimals without a percent. */
function levelsOf(one: string, two: string, isHex: boolean): Pick<Span, 'from' | 'to' | 'unit'> | null {
	if (one.includes('%') || two.includes('%')) {
		if (hasLetter(one) || hasLetter(two)) return null;
		return { from: levelAt(Number(plain(one)), 'first'), to: levelAt(Number(plain(two)), 'last'), unit: 'percent' };
	}
	if (isMarkedHex(one) || isMarkedHex(two) || (isHex && isPair(one) && isPair(two)))
		return { from: Number.parseInt(plain(one), 16), to: Number.parseInt(plain(two), 16), unit: 'hexadecimal' };
	if (!/^\d+$/.test(one) || !/^\d+$/.test(two)) return null;
	return { from: Number(one), to: Number(two), unit: 'decimal' };
}

/** How the numbers of a text or a column are to be taken. */
export interface Habit {
	/** Pairs of two signs are hexadecimal. */
	readonly isHex: boolean;
	/** Every number is a percent, whether the sign stands there or not. */
	readonly isPercent?: boolean;
}

/** Every range and every number by itself in a text, in order, none within another. */
export function spansIn(text: string, { isHex, isPercent = false }: Habit): Span[] {
	const found: Span[] = [];
	const put = (match: RegExpMatchArray, one: string, two: string, single: boolean, stuck = false): void => {
		const start = match.index ?? 0;
		const end = start + match[0].length;
		if (found.some((span) => start < span.end && span.start < end)) return;
		const percent = isPercent && /^[\d.]+$/.test(one + two) ? '%' : '';
		const levels = levelsOf(one + percent, two + percent, isHex);
		if (!levels) return;
		const hasUnit = stuck || UNIT_AFTER.test(text.slice(end, end + 12));
		const isCount = PART_BEFORE.test(text.slice(Math.max(0, start - 16), start));
		found.push({ start, end, ...levels, single, hasUnit, isCount });
	};
	for (const match of text.matchAll(RANGE)) put(match, match[1] ?? '', match[2] ?? '', false);
	for (const match of text.matchAll(STUCK)) put(match, match[1] ?? '', match[2] ?? '', false, true);
	for (const match of text.matchAll(SINGLE)) put(match, match[1] ?? '', match[1] ?? '', true);
	return found.sort((a, b) => a.start - b.start);
}

/** Ranges in a text that read as hexadecimal only by guess, for a text that has decimal ones as well. */
export function bareHexIn(text: string): { readonly start: number; readonly end: number }[] {
	return [...text.matchAll(RANGE)]
		.filter(([, one = '', two = '']) => isBareHex(one, two))
		.map((match) => ({ start: match.index, end: match.index + match[0].length }));
}
