import { useEffect, useState } from 'preact/hooks';
import type { RigStore } from './store.ts';

/** Draws the component again whenever the store has something new to show. Returns its version. */
export function useRig(store: RigStore): number {
	const [, turn] = useState(0);
	useEffect(() => store.subscribe(() => turn((n) => n + 1)), [store]);
	return store.version;
}
