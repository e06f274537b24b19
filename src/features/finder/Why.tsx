import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { checkWords } from '#words/finder/index.ts';
import { type CheckView, later } from './view.ts';

const WhyIn = later(async () => ({ default: (await import('./WhyIn.tsx')).WhyIn }));

/** Why this check, fetched when somebody asks. */
export function Why({ check }: { check: CheckView }): JSX.Element {
	const [open, set] = useState(false);
	return (
		<details class="fold why" open={open} onToggle={(event) => set(event.currentTarget.open)}>
			<summary class="fold-line">{checkWords.why}</summary>
			{open && <WhyIn check={check} />}
		</details>
	);
}
