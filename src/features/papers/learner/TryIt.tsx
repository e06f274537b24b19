import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { sitWords } from '#words/papers/index.ts';
import type { RigSheet } from '../../../../shared/sheet/index.ts';
import { Button } from '../../../ui/index.ts';
import { linkOf } from '../../rig/index.ts';
import { later } from '../asking.ts';

const OnTheRig = later(() => import('./OnTheRig.tsx'));

/** A question's bench: what the rig says of it, once one asks, and the link that opens it. @param sheet as JSON, from the worker */
export function TryIt({ sheet }: { sheet: string }): JSX.Element {
	const [link, set] = useState('');
	const [open, show] = useState(false);
	useEffect(() => {
		linkOf({ sheet: JSON.parse(sheet) as RigSheet, log: [] }).then((fragment) => set(`/bench/${fragment}`));
	}, [sheet]);
	return (
		<div class="sit-rig">
			<details onToggle={(event) => event.currentTarget.open && show(true)}>
				<summary>{sitWords.trail}</summary>
				{open && <OnTheRig sheet={sheet} />}
			</details>
			{link !== '' && (
				<Button href={link} target="_blank" rel="noopener">
					{sitWords.tryIt}
				</Button>
			)}
		</div>
	);
}
