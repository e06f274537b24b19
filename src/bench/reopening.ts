import { noticeWords } from '../../content/bench/index.ts';
import { isInputError } from '../../shared/error/index.ts';
import { BEFORE_KEY, findKept, type Kept, keep, type RigStore, readLink, rigStore, setAside } from '../rig/index.ts';
import { emptySheet } from './firstSheet.ts';
import { firstBench, type Keeping, type Opening } from './opened.ts';

/** Opens the bench kept on the device; one that cannot be read or played is set aside, and said. */
export async function openKept(storage: Keeping): Promise<Opening> {
	const { kept } = await findKept(storage);
	try {
		if (kept) return { store: storeOf(kept), ownAside: false, trouble: null };
	} catch (error) {
		if (!isInputError(error)) throw error;
		setAside(storage);
	}
	return { store: firstBench(), ownAside: false, trouble: noticeWords.damagedStore };
}

/**
 * Opens what a link holds, or an empty bench with a sentence where it holds nothing that can be opened. What was kept on the
 * device is kept on, under another name.
 */
export async function openLink(fragment: string, storage: Keeping): Promise<Opening> {
	const { kept: own } = await findKept(storage);
	const ownAside = own !== null && keep(storage, own, BEFORE_KEY);
	try {
		return { store: storeOf(await readLink(fragment)), ownAside, trouble: null };
	} catch (error) {
		if (!isInputError(error)) throw error;
		return { store: rigStore(emptySheet()), ownAside, trouble: troubleOf(error) };
	}
}

const storeOf = ({ sheet, log }: Kept): RigStore => rigStore(sheet, log);

/** One sentence about a link: its own where the link itself is off, a plain one where its insides do not fit. */
function troubleOf({ code, message }: { code: string; message: string }): string {
	const own = code.startsWith('link.') || code === 'log.slow';
	return own ? noticeWords.badLink(message) : noticeWords.noFit;
}
