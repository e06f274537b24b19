import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { drills } from '#words/drills/index.ts';
import { type BundledKind, type Drill, type DrillKind, makeDrill, type UnseenMaker } from '../../../sim/drill/index.ts';
import { drillTask } from '../../wording/index.ts';
import { drillStore, type RigStore } from '../rig/index.ts';
import { TakenUpNotice, takeUp } from '../unfinished/index.ts';
import { type Attempt, beginAttempt, FRESH } from './attempt.ts';
import { Begin } from './Begin.tsx';
import { TaskWords } from './TaskWords.tsx';
import { Ways } from './Ways.tsx';
import { Work } from './Work.tsx';

export interface DrillToDo {
	kind: DrillKind;
	seed: number;
	/** The kinds in the order to learn in. */
	order: readonly DrillKind[];
	/** The first one on this visit leaves the focus where the browser put it. */
	isFirst: boolean;
	/** Makes those of a kind whose fixture is invented. */
	unseen?: UnseenMaker;
}

/** A drill made and done. */
export default function Doing({ kind, seed, unseen, ...rest }: DrillToDo): JSX.Element {
	const drill = useMemo(
		() => (unseen ? makeDrill(kind, seed, unseen) : makeDrill(kind as BundledKind, seed)),
		[kind, seed, unseen],
	);
	return <OneDrill key={`${kind} ${seed}`} drill={drill} {...rest} />;
}

/** One drill: its task, and below it first the cautions, then the bench. */
function OneDrill({ drill, order, isFirst }: { drill: Drill } & Pick<DrillToDo, 'order' | 'isFirst'>): JSX.Element {
	const left = useMemo(() => takeUp(drill, drill, FRESH), [drill]);
	const [store, start] = useState<RigStore | null>(left?.store ?? null);
	const [starts, count] = useState(0);
	const [attempt, change] = useState<Attempt>(left?.attempt ?? FRESH);
	const top = useRef<HTMLHeadingElement>(null);
	const startAnew = () => {
		start(drillStore(drill));
		count((n) => n + 1);
		top.current?.focus();
	};
	const begin = async () => {
		change(await beginAttempt(drill));
		startAnew();
	};
	useEffect(() => {
		if (!isFirst) top.current?.focus();
	}, [isFirst]);
	return (
		<div class="drill" data-kind={drill.kind} data-at-work={store !== null}>
			<TaskWords task={drill} says={drillTask(drill)} labelledby="drill-title">
				<h2 class="title title-2" id="drill-title" ref={top} tabIndex={-1}>
					<span>{drills[drill.kind].title}</span>
				</h2>
			</TaskWords>
			{store !== null && store === left?.store && <TakenUpNotice />}
			{store ? (
				<Work key={starts} {...{ drill, store, attempt }} under={drill} onAttempt={change} onRestart={startAnew} />
			) : (
				<Begin task={drill} why={drills[drill.kind].why} onBegin={begin} />
			)}
			<Ways drill={drill} order={order} />
		</div>
	);
}
