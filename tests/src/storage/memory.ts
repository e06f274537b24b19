import type { BrowserStore } from '../../../src/storage/index.ts';

/** A store in memory, and what lies in it. @param room characters that it takes in all: 0 for one that is full */
export function memory(
	start: Readonly<Record<string, string>> = {},
	room = Number.POSITIVE_INFINITY,
): { readonly held: Map<string, string>; readonly store: BrowserStore } {
	const held = new Map(Object.entries(start));
	const store: BrowserStore = () => ({
		getItem: (key: string) => held.get(key) ?? null,
		setItem(key: string, value: string) {
			const others = [...held].reduce((sum, [each, text]) => sum + (each === key ? 0 : each.length + text.length), 0);
			if (others + key.length + value.length > room) throw new DOMException('full', 'QuotaExceededError');
			held.set(key, value);
		},
		removeItem: (key: string) => void held.delete(key),
		key: (i: number) => [...held.keys()][i] ?? null,
		get length() {
			return held.size;
		},
	});
	return { held, store };
}

/** A browser that keeps nothing, and lets nothing be read. */
export const refuses: BrowserStore = () => {
	throw new DOMException('refused', 'SecurityError');
};
