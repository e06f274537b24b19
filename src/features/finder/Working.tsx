import type { JSX } from 'preact';
import { checkWords, finderWords } from '#words/finder/index.ts';
import type { Stage } from './view.ts';

/** What the finder is at, while there is nothing else to show. */
export function Working({ stage }: { stage: Stage | null }): JSX.Element {
	return (
		<div class="working" role="status">
			<span class="working-mark" aria-hidden="true" />
			<p>{stage === null ? finderWords.loading : checkWords.stages[stage]}</p>
		</div>
	);
}
