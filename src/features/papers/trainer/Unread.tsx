import type { JSX } from 'preact';
import { trainerWords } from '#words/papers/index.ts';
import { Notice } from '../../../ui/index.ts';
import type { Summary } from './views.ts';

interface Props {
	summary: Summary;
	/** Over the lines. */
	word?: string;
	/** Before them. */
	lead?: string;
}

/** What could not be read, in a few lines however much it is; nothing where all was. */
export function Unread({ summary: { count, lines, left }, word, lead }: Props): JSX.Element | null {
	if (count === 0) return null;
	return (
		<Notice kind="wrong" {...(word ? { word } : {})}>
			{lead && <p>{lead}</p>}
			<ul class="gather-refused">
				{lines.map(({ from, sentence, more }) => (
					<li key={sentence}>
						<strong>{more > 0 ? trainerWords.alike(from, more) : from}:</strong> {sentence}
					</li>
				))}
				{left > 0 && <li>{trainerWords.leftOut(left)}</li>}
			</ul>
		</Notice>
	);
}
