import type { JSX } from 'preact';
import { drillWords, progressWords } from '#words/drills/index.ts';
import type { CauseGroup, Finding, Mark, Task } from '../../../sim/drill/index.ts';
import { Notice } from '../../ui/index.ts';
import { conditionText, findingText, followTexts, harmText } from '../../wording/index.ts';
import { minutesText, type OpenedProgress } from '../progress/index.ts';
import type { TaskName } from '../unfinished/index.ts';
import { type Attempt, resultOf } from './attempt.ts';

interface Props {
	drill: Task;
	under: TaskName;
	mark: Mark;
	/** What is wrong in the mark, causes first. */
	causes: readonly CauseGroup[];
	attempt: Attempt;
	/** What is on the device since, once it is known. */
	kept: OpenedProgress | null;
}

/** A mark in words: what is still wrong, what is right, presses against the fewest, time, hints, and how it compares. */
export function Marks({ drill, under, mark, causes, attempt, kept }: Props): JSX.Element {
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
			<p>
				{done
					? drillWords.doneWords
					: drillWords.causeCount(
							causes.flatMap((each) => each.causes).length,
							causes.flatMap((each) => each.follows).length,
						)}
			</p>
			{wrong.length > 0 && (
				<ul class="drill-wrong" aria-label={drillWords.wrong}>
					{causes.map((group, i) => (
						<Group key={i} drill={drill} group={group} />
					))}
				</ul>
			)}
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

const keyOf = ({ at, place, what }: Finding): string => `${at} ${place} ${what}`;

/** Causes that belong together, each as a line, and under the last what follows from them: of the same kind in one line. */
function Group({ drill, group: { causes, follows } }: { drill: Task; group: CauseGroup }): JSX.Element {
	const last = causes.at(-1);
	return (
		<>
			{causes.map((finding) => (
				<li key={keyOf(finding)}>
					{findingText(drill, finding)}
					{finding === last && follows.length > 0 && (
						<>
							{` ${drillWords.therefore.one}`}
							<ul class="drill-therefore">
								{followTexts(drill, follows).map((text) => (
									<li key={text}>{text}</li>
								))}
							</ul>
						</>
					)}
				</li>
			))}
		</>
	);
}
