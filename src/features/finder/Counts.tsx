import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { finderWords } from '#words/finder/index.ts';
import type { Learnt } from '../../../sim/finder/index.ts';
import type { FinderStore } from './store.ts';
import { later } from './view.ts';

const CountsIn = later(async () => ({ default: (await import('./CountsIn.tsx')).CountsIn }));

/** Verdicts counted on this device, fetched when somebody looks. */
export function Counts({ store, learnt }: { store: FinderStore; learnt: Learnt }): JSX.Element {
	const [open, set] = useState(false);
	return (
		<details class="fold counted" open={open} onToggle={(event) => set(event.currentTarget.open)}>
			<summary class="fold-line">{finderWords.counts}</summary>
			{open && <CountsIn store={store} learnt={learnt} />}
		</details>
	);
}
