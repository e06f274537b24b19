import type { ComponentType, JSX } from 'preact';
import { useState } from 'preact/hooks';
import { benchWords } from '#words/bench/index.ts';
import { later } from './view.ts';

/** A drawer of the bench. */
export type Tool = 'desk' | 'cables' | 'remote' | 'sound' | 'breaker' | 'clock' | 'log';

const parts: readonly (readonly [Tool, ComponentType<object>])[] = [
	['desk', later(() => import('./Desk.tsx'))],
	['cables', later(() => import('./Cables.tsx'))],
	['remote', later(() => import('./Remote.tsx'))],
	['sound', later(() => import('./Sound.tsx'))],
	['breaker', later(() => import('./Breaker.tsx'))],
	['clock', later(() => import('./Clock.tsx'))],
	['log', later(() => import('./Log.tsx'))],
];

/** The tools in drawers that open where they stand; what is in one is fetched when it is first opened. */
export function Tools({ without, startsOpen }: { without: readonly Tool[]; startsOpen: readonly Tool[] }): JSX.Element {
	return (
		<div class="tools">
			{parts
				.filter(([id]) => !without.includes(id))
				.map(([id, Part]) => (
					<Drawer key={id} id={id} words={benchWords.parts[id]} Part={Part} startsOpen={startsOpen.includes(id)} />
				))}
		</div>
	);
}

interface DrawerProps {
	id: string;
	words: string;
	Part: ComponentType<object>;
	startsOpen: boolean;
}

function Drawer({ id, words, Part, startsOpen }: DrawerProps): JSX.Element {
	const [open, set] = useState(startsOpen);
	return (
		<details class="drawer" data-tool={id} open={open} onToggle={(event) => set(event.currentTarget.open)}>
			<summary>
				<h2 class="title title-3">
					<span>{words}</span>
				</h2>
			</summary>
			{open && (
				<div class="drawer-in">
					<Part />
				</div>
			)}
		</details>
	);
}
