import type { JSX } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { drillWords, rigDrills as words } from '#words/drills/index.ts';
import { rigTask } from '../../../sim/drill/index.ts';
import { fetchedWith, Notice } from '../../ui/index.ts';
import { ownTaskText } from '../../wording/index.ts';
import { taskAtWork } from '../drills/index.ts';
import { type RigAsked, rigTaskLink } from './link.ts';

const Task = fetchedWith({ ...drillWords, coming: drillWords.loading }, 'coming');

/** What is kept of these tasks goes by this, whatever the rig. Permanent. */
const UNDER = 'tonight-rig';

/** Seeds after which the same is asked again: of each goal once. */
const TURNS = 4;

/** One task on a rig that somebody brings. */
export default function RigWork({ sheet, seed }: RigAsked): JSX.Element {
	const made = useMemo(() => rigTask(sheet, seed), [sheet, seed]);
	const top = useRef<HTMLHeadingElement>(null);
	useEffect(() => top.current?.focus(), []);
	const another = async () => {
		const [drawn = 0] = crypto.getRandomValues(new Uint32Array(1));
		location.hash = await rigTaskLink({ sheet, seed: drawn - (drawn % TURNS) + ((seed + 1) % TURNS) });
	};
	return (
		<>
			<div class="own-drills">
				<h2 class="title title-2" ref={top} tabIndex={-1}>
					<span>{words.of(sheet.name)}</span>
				</h2>
				<Notice>
					<p>{words.practice}</p>
				</Notice>
			</div>
			{made ? (
				<Task
					load={taskAtWork}
					props={{
						set: { count: 1, first: { task: made.task, says: ownTaskText(made, words.task) }, differ: [] },
						under: UNDER,
						at: seed,
						onAnother: () => void another(),
					}}
				/>
			) : (
				<p>{words.nothing}</p>
			)}
			<p class="hint">{words.link}</p>
			<p>
				<a href="/rig/">{words.another}</a>
			</p>
		</>
	);
}
