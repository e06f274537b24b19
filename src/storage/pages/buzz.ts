/** Kept only where a person switched it off. This file shares nothing with what islands use: its script would come as a file. */
const key = 'prep-bay.buzz';

type BuzzStore = () => Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;
const device: BuzzStore = () => localStorage;

/** Whether keys and ticks may buzz: yes, unless it was switched off and the store says so. */
export function readBuzz(store = device): boolean {
	try {
		return store().getItem(key) !== 'off';
	} catch {
		return true;
	}
}

/** Keeps the choice. Returns false where the store refuses (private browsing, full): the choice then lasts for the page alone. */
export function writeBuzz(on: boolean, store = device): boolean {
	try {
		if (on) store().removeItem(key);
		else store().setItem(key, 'off');
		return true;
	} catch {
		return false;
	}
}
