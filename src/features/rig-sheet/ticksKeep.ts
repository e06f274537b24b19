import { isInputError } from '../../../shared/error/index.ts';
import {
	LONGEST_INITIALS,
	MOST_TICKS,
	mergedTicks,
	NO_TICKS,
	newIn,
	type RigTicks,
	readTicks,
} from '../../../shared/plan/index.ts';
import { type BrowserStore, isNewer, KEPT, moveAside, putText, readRecord, textAt } from '../../storage/index.ts';

/** What became of ticks: `newer` where a newer version of the site wrote there, which is left as it is. */
export type TicksKept = 'kept' | 'full' | 'refused' | 'newer';

/** The ticks of one rig on the device, and what this tab made of them. */
export interface TicksKeeper {
	/** With what other tabs have written since. */
	look(): RigTicks;
	/** Reads what stands there, changes it and writes it, in one go: what another tab wrote is merged, never lost. */
	change(how: (ticks: RigTicks) => RigTicks): RigTicks;
	/** What became of the last one written. */
	readonly kept: TicksKept;
}

/** @param now ms since 1970, asked where something damaged is set aside */
export function ticksKeeper(store: BrowserStore, id: string, now: () => number): TicksKeeper {
	const key = KEPT.ticks.key + id;
	let held = NO_TICKS;
	/** The text read or written last: what is the same need not be read again. */
	let seen: string | null = null;
	let kept: TicksKept = 'kept';

	/** What the device has; null where that is not for this version to touch, or cannot be moved out of the way. */
	const onDevice = (): RigTicks | null => {
		const text = textAt(store, key);
		if (text === null) return NO_TICKS;
		if (text === seen) return held;
		const found = readTicksText(text);
		if (found === 'newer') {
			kept = 'newer';
			return null;
		}
		if (found === 'damaged') {
			if (moveAside(store, { place: key, text, why: 'damaged', now: now() })) return NO_TICKS;
			kept = 'full';
			return null;
		}
		seen = text;
		return found;
	};
	const write = (): void => {
		if (held.ticks.length > MOST_TICKS || held.notes.length > MOST_TICKS) {
			kept = 'full';
			return;
		}
		const text = JSON.stringify(held);
		kept = putText(store, key, text);
		if (kept === 'kept') seen = text;
	};
	const merge = (there: RigTicks): void => {
		if (there === held) return;
		held = held === NO_TICKS ? there : mergedTicks(held, there);
	};
	return {
		get kept() {
			return kept;
		},
		look() {
			// the rig was deleted elsewhere: only a further tick writes again
			if (seen !== null && textAt(store, key) === null) return held;
			const there = onDevice();
			if (there === null) return held;
			merge(there);
			// another tab wrote over what this one had just written
			if (newIn(there, held).count > 0) write();
			return held;
		},
		change(how) {
			const there = onDevice();
			if (there !== null) merge(there);
			held = how(held);
			if (there !== null) write();
			return held;
		},
	};
}

function readTicksText(text: string): RigTicks | 'newer' | 'damaged' {
	if (isNewer(text, KEPT.ticks)) return 'newer';
	const found = readRecord(text, KEPT.ticks);
	if (found.is !== 'record') return found.is;
	try {
		return readTicks(found.record);
	} catch (error) {
		if (!isInputError(error)) throw error;
		return 'damaged';
	}
}

const { initials } = KEPT;

/** Initials as they are typed: letters alone, in capitals; null where that leaves none, or too many. */
export function readInitials(text: string): string | null {
	const letters = text.replaceAll(/[\s.]/g, '').toUpperCase();
	return /^\p{L}+$/u.test(letters) && letters.length <= LONGEST_INITIALS ? letters : null;
}

/** The initials kept on the device; null where there are none. */
export function keptInitials(store: BrowserStore): string | null {
	const text = textAt(store, initials.key);
	const found = text === null ? null : readRecord(text, initials);
	const letters = found?.is === 'record' ? found.record['initials'] : null;
	return typeof letters === 'string' ? readInitials(letters) : null;
}

/** Keeps initials. @returns whether the device took them */
export const keepInitials = (store: BrowserStore, letters: string): boolean =>
	putText(store, initials.key, JSON.stringify({ version: initials.version, initials: letters })) === 'kept';
