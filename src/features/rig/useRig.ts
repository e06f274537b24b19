import { useEffect, useState } from 'preact/hooks';
import type { RigStore } from './store.ts';

/** Draws the component again whenever the store has something new to show. Returns its version. */
export function useRig(store: RigStore): number {
	const [, turn] = useState(0);
	const drawn = store.version;
	useEffect(() => {
		const again = () => turn((n) => n + 1);
		// what happened between the drawing and now is heard of too
		if (store.version !== drawn) again();
		return store.subscribe(again);
	}, [store]);
	return drawn;
}
