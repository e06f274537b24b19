import type { JSX } from 'preact';
import type { PaperView } from '../view.ts';
import type { Sitting } from './sitting.ts';

/** The paper as a punched strip: a hole a question, filled once answered, notched where flagged. Said in words on the review. */
export function Holes({ paper, sitting }: { paper: PaperView; sitting: Sitting }): JSX.Element {
	return (
		<div class="sit-holes" aria-hidden="true">
			{paper.questions.map(({ id }, at) => (
				<i
					key={id}
					data-here={at === sitting.at}
					data-answered={id in sitting.answers}
					data-flagged={sitting.flagged.includes(id)}
				/>
			))}
		</div>
	);
}
