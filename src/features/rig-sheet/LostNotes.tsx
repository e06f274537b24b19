import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { mvrWords as words } from '#words/mvr/index.ts';
import { Button, Title } from '../../ui/index.ts';
import type { MvrNote } from '../mvr/routes.ts';

/** Notes shown at once: a file of many fixtures has thousands. */
const AT_ONCE = 12;

/** All that is lost on the way from or to a file. */
export function LostNotes({
	title,
	lead,
	left,
}: {
	title: string;
	lead: string;
	left: readonly MvrNote[];
}): JSX.Element {
	const [most, show] = useState(AT_ONCE);
	return (
		<section class="rig-lost">
			<Title level={3}>{title}</Title>
			{left.length > 0 && <p>{lead}</p>}
			<ul class="rig-notes">
				{left.slice(0, most).map(({ says, path }, i) => (
					<li key={i}>
						{says} {path !== '' && <span class="rig-soft">{path}</span>}
					</li>
				))}
			</ul>
			{left.length > most && (
				<Button look="quiet" onClick={() => show(most + 10 * AT_ONCE)}>
					{words.more(left.length - most)}
				</Button>
			)}
		</section>
	);
}
