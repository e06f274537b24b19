import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { drillWords } from '#words/drills/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import type { Task, UnseenMaker } from '../../../sim/drill/index.ts';
import { Button, SaidAbove } from '../../ui/index.ts';
import { drillStore, type RigStore } from '../rig/index.ts';
import { seedLeft, TakenUpNotice, type TaskName, takeUp } from '../unfinished/index.ts';
import { type Attempt, beginAttempt, FRESH } from './attempt.ts';
import { Begin } from './Begin.tsx';
import { goOf, hasOthers, seedOf, type TaskSet } from './go.ts';
import { TaskWords } from './TaskWords.tsx';
import { Work } from './Work.tsx';

export interface SetTaskProps {
	set: TaskSet;
	/** The name its results are kept under. */
	under: string;
	/** Told once the marker says that it is done. */
	onDone?: () => void;
	/** The seed, where the page's address says it. */
	at?: number;
	/** Goes on to another, where that is for the page to say. */
	onAnother?: () => void;
	/** What stands under the task's words, by what is on its bench. */
	about?: (sheet: RigSheet) => ComponentChildren;
}

interface GoesProps extends SetTaskProps {
	/** The seed of the first go, where none was left half done. */
	first?: number;
	/** Makes those on panels that nobody has seen. */
	unseen?: UnseenMaker;
}

/** Goes at a task: the one that was left half done, or else a new one. Marked and hinted as a drill is. */
export function TaskGoes({ set, under, first, at, ...rest }: GoesProps): JSX.Element {
	const [left] = useState(() => seedLeft(under));
	const [seed, draw] = useState(() => at ?? left ?? first ?? seedOf(set));
	return (
		<OneGo
			key={seed}
			{...{ set, under: { kind: under, seed }, wasBegun: seed === left, ...rest }}
			{...(hasOthers(set) ? { onAnother: () => draw(seedOf(set, seed)) } : {})}
		/>
	);
}

interface GoProps extends Omit<GoesProps, 'under' | 'first' | 'at'> {
	under: TaskName;
	wasBegun: boolean;
	onAnother?: () => void;
}

/** One go: its words, the task's cautions in full, and once it is begun the bench. */
function OneGo({ set, under, wasBegun, onAnother, onDone, about, unseen }: GoProps): JSX.Element {
	const { task, says } = useMemo(() => goOf(set, under.seed, unseen), []);
	const [begun, begin] = useState(wasBegun);
	const [done, finish] = useState(false);
	return (
		<div class="drill" data-at-work={begun}>
			<TaskWords task={task} says={says} />
			{about?.(task.sheet)}
			{begun ? (
				<AtWork
					{...{ task, under }}
					onDone={() => {
						finish(true);
						onDone?.();
					}}
				/>
			) : (
				// what stands on the page is here in full again, where hands are about to do it
				<SaidAbove.Provider value={[]}>
					<Begin task={task} onBegin={() => begin(true)} />
				</SaidAbove.Provider>
			)}
			{done && onAnother && (
				<div>
					<Button onClick={onAnother}>{drillWords.another}</Button>
				</div>
			)}
		</div>
	);
}

function AtWork({ task, under, onDone }: { task: Task; under: TaskName; onDone: () => void }): JSX.Element {
	const [left] = useState(() => takeUp(task, under, FRESH));
	const [[store, starts], start] = useState<readonly [RigStore, number]>(() => [left?.store ?? drillStore(task), 0]);
	const [attempt, change] = useState<Attempt>(left?.attempt ?? FRESH);
	// one taken up again goes on as it was begun
	useEffect(() => {
		if (!left?.store) void beginAttempt(under).then(change);
	}, []);
	const hear = (next: Attempt) => {
		change(next);
		if (next.done && !attempt.done) onDone();
	};
	return (
		<>
			{store === left?.store && <TakenUpNotice />}
			<Work
				key={starts}
				{...{ drill: task, under, store, attempt }}
				onAttempt={hear}
				onRestart={() => start([drillStore(task), starts + 1])}
			/>
		</>
	);
}
