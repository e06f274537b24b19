import type { JSX } from 'preact';
import { hiddenWords } from '#words/hidden-faults/index.ts';
import { shareText } from '../finder/index.ts';
import type { StandView } from './view.ts';

/** Suspects listed before the rest is only counted. */
const MOST = 24;

/** What still fits, for those who want to look. */
export function Fitting({ fitting }: Pick<StandView, 'fitting'>): JSX.Element {
	return (
		<details class="hidden-fold hidden-fitting">
			<summary>{hiddenWords.fitting(fitting.length)}</summary>
			{fitting.length === 0 && <p>{hiddenWords.fittingNone}</p>}
			<ul>
				{fitting.slice(0, MOST).map(({ name, share }) => (
					<li key={name}>
						{name} <span class="value">{shareText(share)}</span>
					</li>
				))}
			</ul>
			{fitting.length > MOST && <p>{hiddenWords.more(fitting.length - MOST)}</p>}
		</details>
	);
}
