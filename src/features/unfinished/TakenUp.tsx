import type { JSX } from 'preact';
import { drillWords } from '#words/drills/index.ts';
import { Notice } from '../../ui/index.ts';

/** Says that a task stands as it was left. */
export function TakenUpNotice(): JSX.Element {
	return (
		<Notice>
			<p role="status">{drillWords.takenUp}</p>
		</Notice>
	);
}
