import {
	isRecord,
	KEPT,
	moveAside,
	putInPlace,
	readJson,
	type Store,
	setAside,
	textAt,
} from '../../../storage/index.ts';
import { type Draft, FIRST_DRAFT } from './draft.ts';

const { draft: boxes } = KEPT;

/** Keeps the boxes as they stand; a device that refuses loses nothing but these. */
export function keepDraft(store: Store, draft: Draft): void {
	putInPlace(store, boxes, JSON.stringify(draft));
}

/**
 * The boxes as they were left. Each is taken only where it is of the kind that it should be, and what comes of them is held to the
 * recipe's schema when the paper is set: so a damaged one costs that box alone, and all of them are set aside as they were.
 */
export function keptDraft(store: Store): Draft {
	const text = textAt(store, boxes.key);
	if (text === null) return FIRST_DRAFT;
	const found = readJson(text, boxes.bounds);
	const kept = typeof found === 'string' ? null : found.value;
	if (!isRecord(kept)) {
		moveAside(store, boxes.key, text, 'damaged', Date.now());
		return FIRST_DRAFT;
	}
	const isDamaged = Object.keys(FIRST_DRAFT).some((key) => key in kept && !fits(key, kept[key]));
	if (isDamaged) setAside(store, boxes.key, text, 'damaged', Date.now());
	return Object.fromEntries(
		Object.entries(FIRST_DRAFT).map(([key, first]) => [key, fits(key, kept[key]) ? kept[key] : first]),
	) as unknown as Draft;
}

function fits(key: string, value: unknown): boolean {
	if (key === 'pasted') return value === null || isPasted(value);
	if (key === 'own') return Array.isArray(value);
	if (key === 'seed') return Number.isSafeInteger(value) && Number(value) >= 0 && Number(value) <= 0xffffffff;
	if (key === 'about') return value === 'fixtures' || value === 'rig' || value === 'own';
	if (key === 'order') return value === 'mixed' || value === 'by-topic' || value === 'easy-first';
	if (key === 'feedback') return value === 'each' || value === 'end';
	const first = FIRST_DRAFT[key as keyof Draft];
	if (Array.isArray(first)) return Array.isArray(value) && value.every((each) => typeof each === 'string');
	return typeof value === 'string' && value.length <= 100;
}

function isPasted(value: unknown): boolean {
	const { name, fixtures, sheet } = (value ?? {}) as Readonly<Record<string, unknown>>;
	return typeof name === 'string' && typeof fixtures === 'number' && typeof sheet === 'object' && sheet !== null;
}
