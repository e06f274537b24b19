import { type Draft, FIRST_DRAFT } from './draft.ts';

type Store = Pick<Storage, 'getItem' | 'setItem'>;

const DRAFT_KEY = 'prep-bay.papers.draft';
/** Characters of a draft that is read at all. */
const LONGEST = 2_000_000;

/** Keeps the boxes as they stand; a device that refuses loses nothing but these. */
export function keepDraft(store: () => Store, draft: Draft): void {
	try {
		store().setItem(DRAFT_KEY, JSON.stringify(draft));
	} catch {
		// the boxes are on the screen
	}
}

/**
 * The boxes as they were left. Each is taken only where it is of the kind that it should be, and what comes of them is held to the
 * recipe's schema when the paper is set: so a damaged one costs that box alone.
 */
export function keptDraft(store: () => Store): Draft {
	let found: unknown = null;
	try {
		const text = store().getItem(DRAFT_KEY);
		if (text !== null && text.length <= LONGEST) found = JSON.parse(text);
	} catch {
		// as if there were none
	}
	if (typeof found !== 'object' || found === null) return FIRST_DRAFT;
	const kept = found as Readonly<Record<string, unknown>>;
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
