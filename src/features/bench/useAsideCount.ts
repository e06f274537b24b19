import { useEffect, useState } from 'preact/hooks';
import { followKept } from '../../storage/index.ts';
import { asideCount } from '../rig/index.ts';
import type { Keeping } from './opened.ts';

/** How many benches are set aside, followed over every tab. @param turn another value has it look again */
export function useAsideCount(storage: Keeping, turn: unknown): number {
	const [count, set] = useState(() => asideCount(storage));
	useEffect(() => {
		const look = () => set(asideCount(storage));
		look();
		return followKept(look);
	}, [turn]);
	return count;
}
