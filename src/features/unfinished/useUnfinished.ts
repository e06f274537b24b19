import { useEffect, useRef } from 'preact/hooks';
import type { Task } from '../../../sim/drill/index.ts';
import { useUnderWay } from '../../site/updates/index.ts';
import type { RigStore } from '../rig/index.ts';
import { dropUnfinished, keepUnfinished, type Under } from './keep.ts';
import { STORES } from './takeUp.ts';

/** Milliseconds between a change and its keeping. */
const KEEP_AFTER_MS = 400;

/**
 * Keeps a task while it is at work, so that an update, loading the page again or a crash finds it as it was, and has a new version
 * wait for it. Once it is done there is nothing to come back to.
 */
export function useUnfinished(task: Task, under: Under, store: RigStore, attempt: { readonly done: boolean }): void {
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
