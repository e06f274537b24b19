import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { rigDrills as words } from '#words/drills/index.ts';
import { rigTask } from '../../../sim/drill/index.ts';
import { Notice } from '../../ui/index.ts';
import { ownTaskText } from '../../wording/index.ts';
import { type RigAsked, rigTaskLink } from './link.ts';
import { MadeTask } from './MadeTask.tsx';

/** What is kept of these tasks goes by this, whatever the rig. Permanent. */
const UNDER = 'tonight-rig';

/** Seeds after which the same is asked again: of each goal once. */
const TURNS = 4;

/** One task on a rig that somebody brings. */
export default function RigWork({ sheet, seed }: RigAsked): JSX.Element {
	const made = useMemo(() => rigTask(sheet, seed), [sheet, seed]);
	return (
		<MadeTask
			title={words.of(sheet.name)}
			made={made && { task: made.task, says: ownTaskText(made, words.task) }}
			under={UNDER}
			onAnother={async () => {
				const [drawn = 0] = crypto.getRandomValues(new Uint32Array(1));
				location.hash = await rigTaskLink({ sheet, seed: drawn - (drawn % TURNS) + ((seed + 1) % TURNS) });
			}}
			back="/rig/"
			{...{ seed, words }}
		>
			<div class="own-drills">
				<Notice>
					<p>{words.practice}</p>
				</Notice>
			</div>
		</MadeTask>
	);
}
