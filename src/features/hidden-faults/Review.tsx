import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { hiddenWords, judgedWords } from '#words/hidden-faults/index.ts';
import { locale } from '#words/locale/index.ts';
import { Notice, Title } from '../../ui/index.ts';
import { timeText } from '../finder/index.ts';
import type { JudgedView, ReviewView } from './view.ts';

/** The answer, the score, and what each choice was worth. */
export function Review({ review, cleared }: { review: ReviewView; cleared: boolean }): JSX.Element {
	const { faults, finder, steps } = review;
	const top = useRef<HTMLDivElement>(null);
	// what had the focus is gone with the list
	useEffect(() => top.current?.focus(), []);
	return (
		<div class="hidden-review" data-cleared={cleared} ref={top} tabIndex={-1}>
			<Title level={3}>{cleared ? hiddenWords.cleared : hiddenWords.gaveUp}</Title>
			<h4>{faults.length === 1 ? hiddenWords.was : hiddenWords.wasAll}</h4>
			<ul class="hidden-faults">
				{faults.map(({ name, cause, repair }) => (
					<li key={name}>
						<strong>{name}.</strong> {cause} {hiddenWords.mend(repair)}
					</li>
				))}
			</ul>
			<Notice kind={cleared ? 'good' : 'plain'}>
				<p class="hidden-score">{scoreOf(review, cleared)}</p>
				{cleared && finder.cleared && review.spent < finder.spent && <p>{hiddenWords.scoreBeaten}</p>}
			</Notice>
			{steps.length > 0 && (
				<>
					<h4>{hiddenWords.review}</h4>
					<ol class="hidden-steps">
						{steps.map((step, at) => (
							<Step key={`${at} ${step.check}`} step={step} />
						))}
					</ol>
				</>
			)}
			<details class="hidden-fold">
				<summary>{hiddenWords.finderWay}</summary>
				<ol>
					{finder.done.map(({ check, title, seen, seconds }, at) => (
						<li key={`${at} ${check}`}>
							{hiddenWords.shows(title, seen)} <span class="value">{timeText(seconds)}</span>
						</li>
					))}
				</ol>
			</details>
		</div>
	);
}

function scoreOf({ spent, finder }: ReviewView, cleared: boolean): string {
	if (!finder.cleared) return hiddenWords.scoreLost(timeText(spent));
	return (cleared ? hiddenWords.score : hiddenWords.scoreGaveUp)(timeText(spent), timeText(finder.spent));
}

function Step({ step }: { step: JudgedView }): JSX.Element {
	const { title, seen, seconds, judged, better, before, after } = step;
	return (
		<li data-judged={judged}>
			<p>
				<strong class="hidden-judged">{judgedWords[judged].word}</strong> {hiddenWords.shows(title, seen)}{' '}
				<span class="value">{timeText(seconds)}</span>
			</p>
			<p class="hidden-why">
				{judgedWords[judged].says} {better !== null && `${hiddenWords.better(better)} `}
				{hiddenWords.doubt(locale.number(before, 1), locale.number(after, 1))}
			</p>
		</li>
	);
}
