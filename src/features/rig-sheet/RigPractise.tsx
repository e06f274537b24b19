import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { DEVICE, KEPT, keysIn } from '../../storage/index.ts';
import { Practise } from './lazily.tsx';

/** Offers to practise on the rig planned last; nothing is fetched where none is kept. */
export function RigPractise(): JSX.Element | null {
	const [has, tell] = useState(false);
	useEffect(() => tell(keysIn(DEVICE).some((key) => key.startsWith(KEPT.rigs.key))), []);
	return has ? <Practise /> : null;
}
