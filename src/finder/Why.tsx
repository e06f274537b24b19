import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { amountWords, whyWords } from '../../content/finder/index.ts';
import { shareText, timeText } from './amounts.ts';
import type { CheckView } from './view.ts';

/** Suspects named beside each answer. */
const NAMED = 4;

/** Why this check: how it parts the suspects, and how long the rest should take. */
export function Why({ check: { answers, by, expected } }: { check: CheckView }): JSX.Element {
	const [open, set] = useState(false);
	return (
		<details class="fold why" open={open} onToggle={(event) => set(event.currentTarget.open)}>
			<summary>{whyWords.title}</summary>
			{open && (
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
			)}
		</details>
	);
}

/** A share as a bar; the words beside it say it too. */
export function Bar({ share }: { share: number }): JSX.Element {
	return (
		<svg class="bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
			<rect class="bar-all" width="100" height="6" />
			<rect class="bar-part" width={Math.max(share > 0 ? 0.8 : 0, 100 * share)} height="6" />
		</svg>
	);
}
