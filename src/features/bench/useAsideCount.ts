import { useEffect, useState } from 'preact/hooks';
import { asideCount } from '../rig/index.ts';
import type { Keeping } from './opened.ts';

/** Told on this page when a bench was set aside or forgotten; other pages hear of it from the browser. */
const CHANGED = 'prep-bay-aside';

/** Has every count on this page look again. */
export const tellAside = (): boolean => dispatchEvent(new Event(CHANGED));

/** How many benches are set aside, followed over every tab. @param turn another value has it look again */
export function useAsideCount(storage: Keeping, turn: unknown): number {
	const [count, set] = useState(() => asideCount(storage));
	useEffect(() => {
		const look = () => set(asideCount(storage));
		look();
		addEventListener('storage', look);
		addEventListener(CHANGED, look);
		return () => {
			removeEventListener('storage', look);
			removeEventListener(CHANGED, look);
		};
	}, [turn]);
	return count;
}
