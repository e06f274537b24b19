import type { JSX } from 'preact';
import { amountWords, whyWords } from '#words/finder/index.ts';
import { Bar } from './Bar.tsx';
import { shareText, timeText } from './verdict.ts';
import type { CheckView } from './view.ts';

/** Suspects named beside each answer. */
const NAMED = 4;

/** How a check parts the suspects, and how long the rest should take. */
export function WhyIn({ check: { answers, by, expected } }: { check: CheckView }): JSX.Element {
	return (
		<div class="why-in">
			<p>
				{whyWords.by[by]}
				{expected !== null && ` ${whyWords.expected(amountWords.about(timeText(expected)))}`}
			</p>
			<h3>{whyWords.answers}</h3>
			<ul class="why-answers">
				{answers.map(({ id, words, chance, suspects }) => (
					<li key={id}>
						<p class="why-answer">
							<strong>{words}</strong> <span class="value">{whyWords.chance(shareText(chance))}</span>
						</p>
						<Bar share={chance} />
						<p class="why-who">
							{suspects.length === 0 ? whyWords.nobody : suspects.slice(0, NAMED).join('; ')}
							{suspects.length > NAMED && `; ${whyWords.more(suspects.length - NAMED)}`}
						</p>
					</li>
				))}
			</ul>
		</div>
	);
}
