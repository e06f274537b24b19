/** What the person can ask for; `system` follows the device. */
export const themes = ['system', 'light', 'dark'] as const;
export type Theme = (typeof themes)[number];

/** Where the choice is kept. `early.js` reads the same one. */
const key = 'prep-bay.theme';

type Store = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** The choice kept in a store; `system` where none is kept, what is kept is no theme, or the store may not be read. */
export function readTheme(store: () => Store): Theme {
	try {
		const kept = store().getItem(key);
		return themes.find((theme) => theme === kept) ?? 'system';
	} catch {
		return 'system';
	}
}

/** Keeps a choice. Returns false where the store refuses (private browsing, full): the choice then lasts for the page alone. */
export function writeTheme(store: () => Store, theme: Theme): boolean {
	try {
		if (theme === 'system') store().removeItem(key);
		else store().setItem(key, theme);
		return true;
	} catch {
		return false;
	}
}
