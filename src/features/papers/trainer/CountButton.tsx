import type { JSX } from 'preact';
import { learnWords } from '#words/papers/index.ts';
import type { AskRoute } from '../../../engine/index.ts';
import { Button } from '../../../ui/index.ts';
import type { RowView } from './views.ts';

interface Props {
	ask: AskRoute;
	row: RowView;
	onChanged: () => Promise<void>;
}

/** Counts a result that is left out, or leaves out one that counts: one tap, and back with another. */
export function CountButton({ ask, row, onChanged }: Props): JSX.Element {
	const { attempt, label, counts } = row;
	return (
		<Button
			look={counts ? 'quiet' : 'plain'}
			aria-label={counts ? learnWords.leaveOne(label) : learnWords.countOne(label)}
			onClick={() => void ask('papers.count', { attempt, counts: !counts }).then(onChanged)}
		>
			{counts ? learnWords.leave : learnWords.count}
		</Button>
	);
}
