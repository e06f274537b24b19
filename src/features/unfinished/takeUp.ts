import { isInputError } from '../../../shared/error/index.ts';
import type { Task } from '../../../sim/drill/index.ts';
import { readLog } from '../../../sim/event/index.ts';
import { DEVICE, TAB } from '../../storage/index.ts';
import { drillStore, type RigStore } from '../rig/index.ts';
import { dropUnfinished, type Stores, type Under, unfinished } from './keep.ts';

/** The stores of the page. */
export const STORES: Stores = { tab: TAB, device: DEVICE };

/** A task taken up again. */
export interface TakenUp<A> {
	/** Its rig as it was left; null where nothing had been done on it. */
	readonly store: RigStore | null;
	readonly attempt: A;
}

/**
 * A task as it was left half done, by its own way of counting help: what a version before did not count yet is as in `fresh`.
 * @returns null where it was not begun, or what was done fits its rig no more
 */
export function takeUp<A extends object>(task: Task, under: Under, fresh: A, stores = STORES): TakenUp<A> | null {
	const found = unfinished(stores, under, task.sheet);
	if (!found) return null;
	try {
		const log = readLog(found.log);
		const store = log.some(({ type }) => type !== 'clock.wait') ? drillStore(task, log) : null;
		return { store, attempt: likeIn(fresh, found.attempt) };
	} catch (error) {
		if (!isInputError(error)) throw error;
		dropUnfinished(stores, under);
		return null;
	}
}

/** What was kept of each value that is of the same kind as in `fresh`. */
function likeIn<A extends object>(fresh: A, kept: unknown): A {
	const found = (kept ?? {}) as Readonly<Record<string, unknown>>;
	const values = Object.entries(fresh).map(([key, usual]) => {
		const value = Object.hasOwn(found, key) ? found[key] : usual;
		const fits =
			typeof value === typeof usual && (typeof value !== 'number' || (Number.isSafeInteger(value) && value >= 0));
		return [key, fits ? value : usual];
	});
	return Object.fromEntries(values) as A;
}
