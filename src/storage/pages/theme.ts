/** What the person can ask for; `system` follows the device, `backstage` is for eyes used to the dark. */
export const themes = ['system', 'light', 'dark', 'backstage'] as const;
export type Theme = (typeof themes)[number];

/** The early script reads the same one. This file shares nothing with what islands use: its script would come as a file. */
const key = 'prep-bay.theme';

type ThemeStore = () => Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;
const device: ThemeStore = () => localStorage;

/** The choice that is kept; `system` where none is, what is kept is no theme, or the store may not be read. */
export function readTheme(store = device): Theme {
	try {
		const kept = store().getItem(key);
		return themes.find((theme) => theme === kept) ?? 'system';
	} catch {
		return 'system';
	}
}

/** Keeps a choice. Returns false where the store refuses (private browsing, full): the choice then lasts for the page alone. */
export function writeTheme(theme: Theme, store = device): boolean {
	try {
		if (theme === 'system') store().removeItem(key);
		else store().setItem(key, theme);
		return true;
	} catch {
		return false;
	}
}
