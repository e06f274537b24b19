import type { JSX } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { drillWords, ownDrills as words } from '#words/drills/index.ts';
import { panelFrom } from '../../../shared/profile/index.ts';
import { ownSeedAfter, ownTask } from '../../../sim/drill/index.ts';
import { fetchedWith, Notice } from '../../ui/index.ts';
import { ownTaskText } from '../../wording/index.ts';
import { taskAtWork } from '../drills/index.ts';
import { type OwnAsked, ownLink } from './link.ts';

const Task = fetchedWith({ ...drillWords, coming: drillWords.loading }, 'coming');

/** One task on a fixture that somebody brings. */
export default function OwnWork({ profile, seed }: OwnAsked): JSX.Element {
	const own = useMemo(() => ownTask(profile, seed), [profile, seed]);
	const from = panelFrom(profile);
	const kind = `own-${profile.id}`;
	const top = useRef<HTMLHeadingElement>(null);
	useEffect(() => top.current?.focus(), []);
	const another = async () => {
		const [drawn = 0] = crypto.getRandomValues(new Uint32Array(1));
		location.hash = await ownLink({ profile, seed: ownSeedAfter(profile, seed, drawn) });
	};
	return (
		<>
			<h2 class="title title-2" ref={top} tabIndex={-1}>
				<span>{words.of(profile.name)}</span>
			</h2>
			{from !== 'invented' && (
				<Notice>
					<p>{words.panelFrom[from]}</p>
				</Notice>
			)}
			{own ? (
				<Task
					load={taskAtWork}
					props={{
						set: { count: 1, first: { task: own.task, says: ownTaskText(own, words.task) }, differ: [] },
						under: kind,
						at: seed,
						onAnother: () => void another(),
					}}
				/>
			) : (
				<p>{words.nothing}</p>
			)}
			<p class="hint">{words.link}</p>
			<p>
				<a href="/drills/own/">{words.another}</a>
			</p>
		</>
	);
}
