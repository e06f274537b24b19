import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Task } from '../../../sim/drill/index.ts';
import { drillStore, type RigStore } from '../rig/index.ts';
import { TakenUpNotice, type TaskName, takeUp } from '../unfinished/index.ts';
import { type Attempt, beginAttempt, FRESH } from './attempt.ts';
import { Work } from './Work.tsx';

interface Props {
	task: Task;
	under: TaskName;
	/** Told once the marker says that it is done. */
	onDone?: () => void;
}

/** A task of somebody else's, such as a lesson's: its bench at once, marked and hinted as a drill is. Cautions are theirs to show first. */
export default function OnTask({ task, under, onDone }: Props): JSX.Element {
	const [left] = useState(() => takeUp(task, under, FRESH));
	const [[store, starts], start] = useState<readonly [RigStore, number]>(() => [left?.store ?? drillStore(task), 0]);
	const [attempt, change] = useState<Attempt>(left?.attempt ?? FRESH);
	// one taken up again goes on as it was begun
	useEffect(() => {
		if (!left?.store) void beginAttempt(under).then(change);
	}, []);
	const hear = (next: Attempt) => {
		change(next);
		if (next.done && !attempt.done) onDone?.();
	};
	return (
		<div class="drill" data-at-work="true">
			{store === left?.store && <TakenUpNotice />}
			<Work
				key={starts}
				{...{ drill: task, under, store, attempt }}
				onAttempt={hear}
				onRestart={() => start([drillStore(task), starts + 1])}
			/>
		</div>
	);
}
