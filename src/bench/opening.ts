import { benchWords } from '../../content/bench/index.ts';
import { isInputError } from '../../shared/error/index.ts';
import {
	BEFORE_KEY,
	findKept,
	holdsRig,
	type Kept,
	keep,
	type RigStore,
	readLink,
	rigStore,
	setAside,
} from '../rig/index.ts';
import { emptySheet, fourInLine } from './firstSheet.ts';

/** How a bench came to be on the page. */
export interface Opening {
	readonly store: RigStore;
	/** A link took its place, and the person's own stands kept beside it. */
	readonly ownAside: boolean;
	/** A sentence about what went wrong on the way, if anything. */
	readonly trouble: string | null;
}

type Keeping = () => Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/**
 * Opens the bench that a link holds, else the one kept on the device, else a ready-made one. A link that cannot be opened leaves
 * an empty bench and a sentence; a kept one that cannot is set aside and said.
 */
export async function openBench(fragment: string, storage: Keeping): Promise<Opening> {
	if (holdsRig(fragment)) return openLink(fragment, storage);
	const { kept, damaged } = await findKept(storage);
	if (kept) {
		try {
			return { store: storeOf(kept), ownAside: false, trouble: null };
		} catch (error) {
			if (!isInputError(error)) throw error;
			setAside(storage);
		}
	}
	const trouble = damaged || kept ? benchWords.notices.damagedStore : null;
	return { store: rigStore(fourInLine()), ownAside: false, trouble };
}

/** Opens what a link holds. What was kept on the device is kept on, under another name. */
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
	return own ? benchWords.notices.badLink(message) : benchWords.notices.noFit;
}
