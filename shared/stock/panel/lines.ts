import { linesOf } from '../rows.ts';
import type { Place } from '../types.ts';
import type { PanelMarks } from './types.ts';

/** Where words can be put in for a label: columns from 1. */
interface Slot {
	readonly from: number;
	readonly to: number;
}

/** A value as it is listed: what the display shows, and what it is called, where that is said. */
export interface ListedValue {
	readonly label: string;
	readonly words: string | null;
	readonly place: Place;
	/** Null for a number out of a range, which has no place of its own in the list. */
	readonly slot: Slot | null;
}

export interface Range {
	readonly from: number;
	readonly to: number;
	readonly unit: string;
	/** Digits that each number is written with, zeros before it. */
	readonly digits: number;
}

/** A line of a menu, with those that are set in under it. */
export interface MenuLine extends ListedValue {
	readonly slot: Slot;
	readonly range: Range | null;
	/** Values in the line itself. */
	readonly values: readonly ListedValue[];
	readonly under: MenuLine[];
}

/** Most lines and characters of a menu that are read: some ten times the longest. */
const MOST_MENU_LINES = 400;
export const MOST_MENU = 20_000;
const TAB = 4;

const RANGE = /(?:^|[\s([])(\d{1,5})\s*(?:-|–|—|to\b|\.{2,3}|~)\s*(\d{1,5})\s*(%|s|sec|seconds?|hz)?[)\]]?\s*$/i;
const BRACKETS = /\s*[([]([^()[\]]*[,/|;][^()[\]]*)[)\]]\s*$/;
const SLASHES = /\s(\S+(?:\s?\/\s?\S+)+)\s*$/;
const BULLET = /^(?:[-*•·–]\s+)/;

/**
 * A menu as an indented list: a line an item, what is inside it set in under it. `STRT = Start address 1-512` says what the display
 * shows and what that is; values stand after a colon, in brackets, or each on a line of its own.
 * @returns the lines on top, in their order. Never throws.
 */
export function readLines(text: string, marks: PanelMarks): MenuLine[] {
	const kept = text.slice(0, MOST_MENU);
	const all = linesOf(kept);
	if (text.length > MOST_MENU || all.length > MOST_MENU_LINES)
		marks.add('too-long', { line: 1, column: 1, length: 1 }, { lines: Math.min(all.length, MOST_MENU_LINES) });
	const top: MenuLine[] = [];
	const open: { readonly indent: number; readonly under: MenuLine[] }[] = [];
	for (const [i, { text: whole }] of all.slice(0, MOST_MENU_LINES).entries()) {
		if (!/[\p{L}\d]/u.test(whole)) continue;
		const before = /^\s*/.exec(whole)?.[0] ?? '';
		const indent = [...before].reduce((at, sign) => (sign === '\t' ? at + TAB - (at % TAB) : at + 1), 0);
		const bullet = BULLET.exec(whole.slice(before.length))?.[0] ?? '';
		const line = lineOf(whole, before.length + bullet.length, i + 1);
		const popped = open.filter((each) => each.indent >= indent);
		while (open.length > 0 && (open.at(-1)?.indent ?? 0) >= indent) open.pop();
		const isBetween = popped.length > 0 && popped[0]?.indent !== indent;
		if (isBetween || (open.length === 0 && indent > 0 && top.length > 0 && popped.length === 0))
			marks.add('indent-off', line.place, { text: line.label });
		(open.at(-1)?.under ?? top).push(line);
		open.push({ indent, under: line.under });
	}
	return top;
}

function lineOf(whole: string, start: number, line: number): MenuLine {
	const colon = whole.indexOf(':', start);
	const headEnd = colon < 0 ? whole.length : colon;
	const head = named(whole, start, headEnd, line);
	let { words, label } = head;
	let range: Range | null = null;
	let values: ListedValue[] = [];
	if (colon >= 0) {
		const tail = whole.slice(colon + 1);
		range = rangeIn(tail.trim())?.range ?? null;
		if (range && !isRangeAlone(tail)) range = null;
		if (!range) values = valuesIn(whole, colon + 1, whole.length, line);
	}
	const said = words ?? label;
	let rest = said;
	if (!range && values.length === 0) {
		const found = rangeIn(said);
		const listed = BRACKETS.exec(said) ?? (words === null ? SLASHES.exec(said) : null);
		if (found) {
			range = found.range;
			rest = found.rest;
		} else if (listed?.[1] !== undefined) {
			rest = said.slice(0, listed.index);
			const at = whole.lastIndexOf(listed[1]);
			values = valuesIn(whole, at, at + listed[1].length, line);
		}
	}
	rest = rest.trim();
	if (words === null) label = rest;
	else words = rest === '' ? null : rest;
	const column = start + 1;
	// words go between the label and what stands after it
	const labelEnd = start + (label === '' ? 0 : whole.slice(start).indexOf(label) + label.length);
	const slotEnd = words === null ? labelEnd : whole.indexOf(words, labelEnd) + words.length;
	return {
		label,
		words,
		range,
		values,
		place: { line, column, length: Math.max(1, whole.trimEnd().length - start) },
		slot: { from: labelEnd + 1, to: slotEnd + 1 },
		under: [],
	};
}

/** A label and its words in a stretch of a line. */
function named(whole: string, from: number, to: number, line: number): ListedValue {
	const part = whole.slice(from, to);
	const equals = part.indexOf('=');
	const label = (equals < 0 ? part : part.slice(0, equals)).trim();
	const words = equals < 0 ? null : part.slice(equals + 1).trim() || null;
	const begin = from + Math.max(0, part.search(/\S/));
	return {
		label,
		words,
		place: { line, column: begin + 1, length: Math.max(1, part.trim().length) },
		slot: { from: begin + label.length + 1, to: from + part.trimEnd().length + 1 },
	};
}

function valuesIn(whole: string, from: number, to: number, line: number): ListedValue[] {
	const values: ListedValue[] = [];
	let at = from;
	for (const piece of whole.slice(from, to).split(/[,;|/]/)) {
		if (piece.trim() !== '') values.push(...spread(named(whole, at, at + piece.length, line)));
		at += piece.length + 1;
	}
	return values;
}

/** Most values that a range among others is spread to. */
const MOST_SPREAD = 128;

/** `off, 1-20`: the numbers of a range among other values, each by itself. */
export function spread(value: ListedValue): ListedValue[] {
	const found = value.words === null ? rangeIn(value.label) : null;
	if (found?.rest !== '' || found.range.to - found.range.from >= MOST_SPREAD) return [value];
	return labelsOf(found.range).map((label) => ({ ...value, label, slot: null }));
}

/** The numbers of a range, as they are written. */
export const labelsOf = ({ from, to, digits }: Range): string[] =>
	Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => `${from + i}`.padStart(digits, '0'));

function rangeIn(text: string): { readonly range: Range; readonly rest: string } | null {
	const found = RANGE.exec(text);
	const [, first = '', last = '', unit = ''] = found ?? [];
	if (!found || Number(first) >= Number(last)) return null;
	const range = {
		from: Number(first),
		to: Number(last),
		unit: /^%$/.test(unit) ? '%' : /^s/i.test(unit) ? 's' : '',
		digits: /^0\d/.test(first) ? first.length : 1,
	};
	return { range, rest: text.slice(0, found.index).trim() };
}

const isRangeAlone = (tail: string): boolean => rangeIn(tail.trim())?.rest === '';

/** A list of a menu with words put in for a label: `CURV` becomes `CURV = Dimmer curve`. @param columns as in a mark's pick */
export function withWords(
	text: string,
	line: number,
	{ from, to }: { readonly from: number; readonly to: number },
	words: string,
): string {
	const at = linesOf(text)[line - 1];
	if (!at) return text;
	const start = at.start;
	return `${text.slice(0, start + from - 1)} = ${words}${text.slice(start + to - 1)}`;
}

/** A name as it can stand in a list: signs that would part it into values, or a label from its words, are spaces. It reads as the same name. */
export const inList = (name: string): string =>
	name
		.replaceAll(/[,;|/:=()[\]~–—-]+/g, ' ')
		.replaceAll(/\s+/g, ' ')
		.trim();
