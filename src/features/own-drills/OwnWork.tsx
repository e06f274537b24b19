import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { ownDrills as words } from '#words/drills/index.ts';
import { panelFrom } from '../../../shared/profile/index.ts';
import { ownSeedAfter, ownTask } from '../../../sim/drill/index.ts';
import { Notice } from '../../ui/index.ts';
import { ownTaskText } from '../../wording/index.ts';
import { type OwnAsked, ownLink } from './link.ts';
import { MadeTask } from './MadeTask.tsx';

/** One task on a fixture that somebody brings. */
export default function OwnWork({ profile, seed }: OwnAsked): JSX.Element {
	const own = useMemo(() => ownTask(profile, seed), [profile, seed]);
	const from = panelFrom(profile);
	return (
		<MadeTask
			title={words.of(profile.name)}
			made={own && { task: own.task, says: ownTaskText(own, words.task) }}
			under={`own-${profile.id}`}
			onAnother={async () => {
				const [drawn = 0] = crypto.getRandomValues(new Uint32Array(1));
				location.hash = await ownLink({ profile, seed: ownSeedAfter(profile, seed, drawn) });
			}}
			back="/drills/own/"
			{...{ seed, words }}
		>
			{from !== 'invented' && (
				<Notice>
					<p>{words.panelFrom[from]}</p>
				</Notice>
			)}
		</MadeTask>
	);
}
