import type { JSX } from 'preact';
import { drillWords, progressWords } from '#words/drills/index.ts';
import { type Finding, isUnseen, type Mark, type Task } from '../../../sim/drill/index.ts';
import type { Rig } from '../../../sim/rig/index.ts';
import { Notice } from '../../ui/index.ts';
import { conditionText, findingText, harmText } from '../../wording/index.ts';
import { minutesText, type OpenedProgress } from '../progress/index.ts';
import type { TaskName } from '../unfinished/index.ts';
import { type Attempt, resultOf } from './attempt.ts';
import { Fetched } from './Fetched.tsx';

interface Props {
	drill: Task;
	under: TaskName;
	mark: Mark;
	/** The rig as it was marked. */
	rig: Rig;
	attempt: Attempt;
	/** What is on the device since, once it is known. */
	kept: OpenedProgress | null;
}

/** A mark in words: what is still wrong, what is right, presses against the fewest, time, hints, and how it compares. */
export function Marks({ drill, under, mark, rig, attempt, kept }: Props): JSX.Element {
	const { done, harm, wrong, right, presses, looked, fewest, milliseconds } = mark;
	const record = kept?.progress.get(under.kind);
	const best = record?.best;
	const isBest = done && best && JSON.stringify(best) === JSON.stringify(resultOf(under, mark, attempt));
	return (
		<section class="drill-mark" data-done={done} aria-labelledby="drill-mark">
			<h3 id="drill-mark" tabIndex={-1}>
				{!done ? drillWords.notYet : harm.length > 0 ? drillWords.doneLive : drillWords.done}
			</h3>
			{harm.length > 0 && (
				<Notice kind="wrong" word={drillWords.harm}>
					<ul class="drill-harm">
						{harm.map((each) => (
							<li key={`${each.event} ${each.did}`}>{harmText(drill, each)}</li>
						))}
					</ul>
					<p>{drillWords.harmWords}</p>
					<p>{drillWords.harmStays}</p>
				</Notice>
			)}
			{done && <p>{drillWords.doneWords}</p>}
			{wrong.length > 0 && <Wrong {...{ drill, wrong, rig }} />}
			{right.length > 0 && (
				<details class="drill-right">
					<summary>{drillWords.right(right.length)}</summary>
					<ul>
						{right.map((at) => {
							const condition = drill.goal[at];
							return condition && <li key={at}>{conditionText(drill, condition)}</li>;
						})}
					</ul>
				</details>
			)}
			{done && 'kind' in drill && isUnseen(String(drill.kind)) && (
				<Fetched load={() => import('./Stranger.tsx')} props={{ drill, mark }} />
			)}
			<dl class="drill-numbers">
				<dt>{drillWords.presses}</dt>
				<dd>{drillWords.pressesOf(presses, fewest)}</dd>
				{looked > 0 && (
					<>
						<dt>{drillWords.looked}</dt>
						<dd>{drillWords.lookedTimes(looked)}</dd>
					</>
				)}
				<dt>{drillWords.time}</dt>
				<dd>{minutesText(milliseconds)}</dd>
				<dt>{drillWords.hints}</dt>
				<dd>{drillWords.hintsUsed(attempt.hints)}</dd>
				{record && best && (
					<>
						<dt>{drillWords.best}</dt>
						<dd>
							{isBest
								? drillWords.isBest
								: drillWords.result(best.presses, best.fewest, minutesText(best.milliseconds), best.hints)}
						</dd>
						<dt>{drillWords.streak}</dt>
						<dd>{record.streak}</dd>
					</>
				)}
			</dl>
			{done && <p class="hint">{drillWords.cleanCounts}</p>}
			{kept && !kept.keeps && (
				<Notice>
					<p>{drillWords.notKept}</p>
				</Notice>
			)}
			{kept && kept.damaged !== null && (
				<Notice kind="wrong">
					<p>{progressWords.damaged(kept.damaged === 'whole' ? 0 : kept.damaged)}</p>
				</Notice>
			)}
		</section>
	);
}

/** What is wrong: one thing as it is; of several it is worked out which follow from which, by what is fetched only then. */
function Wrong({ drill, wrong, rig }: { drill: Task; wrong: readonly Finding[]; rig: Rig }): JSX.Element {
	const [only, ...more] = wrong;
	if (!only || more.length > 0) return <Fetched load={() => import('./Causes.tsx')} props={{ drill, rig }} />;
	return (
		<>
			<p>{drillWords.causeCount(1, 0)}</p>
			<ul class="drill-wrong" aria-label={drillWords.wrong}>
				<li>{findingText(drill, only)}</li>
			</ul>
		</>
	);
}
