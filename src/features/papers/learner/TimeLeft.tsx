import type { JSX } from 'preact';
import { sitWords } from '#words/papers/index.ts';
import { clockText } from './sitting.ts';

/** The time left, where there is a limit; read out only when it runs short. */
export function TimeLeft({ left }: { left: number | null }): JSX.Element | null {
	if (left === null) return null;
	return (
		<p class="sit-time" data-short={left <= 60}>
			<span>{sitWords.timeLeft}</span> <span class="value">{clockText(left)}</span>
		</p>
	);
}
