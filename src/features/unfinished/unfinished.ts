import { useEffect, useRef } from 'preact/hooks';
import { isInputError } from '../../../shared/error/index.ts';
import { murmur3Text } from '../../../shared/random/index.ts';
import type { Task } from '../../../sim/drill/index.ts';
import { readLog } from '../../../sim/event/index.ts';
import { useUnderWay } from '../../site/updates/index.ts';
import {
	type BrowserStore,
	DEVICE,
	dropText,
	KEPT,
	keysIn,
	putInPlace,
	readRecord,
	setAside,
	TAB,
	textAt,
} from '../../storage/index.ts';
import { drillStore, type RigStore } from '../rig/index.ts';

const { unfinished: kept } = KEPT;
/** Tasks kept at most on a device: the oldest goes. */
const MOST = 12;

/** Which task: the name its results are kept under, and its seed. */
export interface TaskName {
	readonly kind: string;
	readonly seed: number;
}

/** A task half done: what was done on its rig, and what help was used. Neither has been read yet. */
export interface HalfDoneTask {
	readonly log: unknown;
	readonly attempt: unknown;
}

/**
 * This tab's own store, and the device's: the first survives loading the page again and being put to sleep, and no other tab
 * writes into it; the second survives a crash and a closed tab.
 */
export interface Stores {
	readonly tab: BrowserStore;
	readonly device: BrowserStore;
}

const nameOf = ({ kind, seed }: TaskName): string => `${kind}.${seed}`;

/** Eight hex digits over the rig that a task begins with: another version may make another rig of the same seed. */
const markOf = (sheet: unknown): string => murmur3Text(JSON.stringify(sheet), 0x756e6669).toString(16).padStart(8, '0');

/** Keeps a task half done. Where a store refuses, the task goes on unkept. @param now ms since 1970 */
export function keepUnfinished(
	{ tab, device }: Stores,
	under: TaskName,
	sheet: unknown,
	{ log, attempt }: HalfDoneTask,
	now: number,
): void {
	const text = JSON.stringify({ version: kept.version, at: now, sheet: markOf(sheet), log, attempt });
	for (const store of [tab, device]) putInPlace(store, kept, text, { name: nameOf(under), now });
	dropOldest(device);
}

/** The task as it was left: in this tab, or else on this device; null where it was not, or its rig is another by now. */
export function unfinished({ tab, device }: Stores, under: TaskName, sheet: unknown): HalfDoneTask | null {
	const key = kept.key + nameOf(under);
	for (const store of [tab, device]) {
		const text = textAt(store, key);
		if (text === null) continue;
		const found = readRecord(text, kept);
		// set aside on the device, where a person finds it: this tab's own store goes with it
		if (found.is === 'damaged' && setAside(device, { place: key, text, why: 'damaged', now: Date.now() }))
			dropText(store, key);
		if (found.is !== 'record' || found.record['sheet'] !== markOf(sheet)) continue;
		return { log: found.record['log'], attempt: found.record['attempt'] };
	}
	return null;
}

/** Forgets a task: it is done, or begun anew. */
export function dropUnfinished({ tab, device }: Stores, under: TaskName): void {
	for (const store of [tab, device]) dropText(store, kept.key + nameOf(under));
}

/** When a task was kept, ms since 1970; 0 where it cannot be read. */
function keptAt(store: BrowserStore, key: string): number {
	const found = readRecord(textAt(store, key) ?? '', kept);
	const at = found.is === 'record' ? found.record['at'] : 0;
	return typeof at === 'number' ? at : 0;
}

function dropOldest(store: BrowserStore): void {
	const keys = keysIn(store).filter((key) => key.startsWith(kept.key) && kept.names.test(key.slice(kept.key.length)));
	if (keys.length <= MOST) return;
	const old = keys.map((key) => ({ key, at: keptAt(store, key) })).sort((a, b) => b.at - a.at);
	for (const { key } of old.slice(MOST)) dropText(store, key);
}

/** The stores of the page. */
const STORES: Stores = { tab: TAB, device: DEVICE };

/**
 * The seed of the task that was left last of those kept under a name, in this tab or else on this device: for tasks whose address
 * does not say it.
 * @returns null where none was left
 */
export function seedLeft(kind: string, { tab, device }: Stores = STORES): number | null {
	const start = `${kept.key}${kind}.`;
	for (const store of [tab, device]) {
		const [last] = keysIn(store)
			.filter((key) => key.startsWith(start))
			.map((key) => ({ seed: Number(key.slice(start.length)), at: keptAt(store, key) }))
			.sort((a, b) => b.at - a.at);
		if (last && Number.isSafeInteger(last.seed)) return last.seed;
	}
	return null;
}

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
export function takeUp<A extends object>(task: Task, under: TaskName, fresh: A, stores = STORES): TakenUp<A> | null {
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

/** Milliseconds between a change and its keeping. */
const KEEP_AFTER_MS = 400;

/**
 * Keeps a task while it is at work, so that an update, loading the page again or a crash finds it as it was, and has a new version
 * wait for it. Once it is done there is nothing to come back to.
 */
export function useUnfinished(task: Task, under: TaskName, store: RigStore, attempt: { readonly done: boolean }): void {
	const latest = useRef(attempt);
	latest.current = attempt;
	useUnderWay(!attempt.done);
	useEffect(() => {
		let timer = 0;
		const save = () => {
			window.clearTimeout(timer);
			timer = 0;
			if (latest.current.done) return;
			store.upToNow();
			keepUnfinished(STORES, under, task.sheet, { log: store.rig.log, attempt: latest.current }, Date.now());
		};
		save();
		const stop = store.subscribe(() => {
			if (timer === 0) timer = window.setTimeout(save, KEEP_AFTER_MS);
		});
		window.addEventListener('pagehide', save);
		return () => {
			stop();
			save();
			window.removeEventListener('pagehide', save);
		};
	}, [store]);
	useEffect(() => {
		if (attempt.done) dropUnfinished(STORES, under);
		else keepUnfinished(STORES, under, task.sheet, { log: store.rig.log, attempt }, Date.now());
	}, [attempt]);
}
