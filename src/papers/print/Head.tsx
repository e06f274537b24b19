import type { JSX } from 'preact';
import { paperWords, printWords } from '../../../content/papers/index.ts';
import type { PaperView } from '../view.ts';

export interface SheetProps {
	paper: PaperView;
	seed: number;
}

/** What stands at the top of a printed sheet. @param blanks lines for a name and a date */
export function Head({ paper, seed, what, blanks }: SheetProps & { what?: string; blanks: boolean }): JSX.Element {
	return (
		<header class="sheet-head">
			<h2>{what === undefined ? paper.title : `${what}: ${paper.title}`}</h2>
			<p>
				{[
					paperWords.questions(paper.questions.length),
					...(paper.minutes === null ? [] : [paperWords.minutes(paper.minutes)]),
					printWords.set(seed),
				].join(' · ')}
			</p>
			{blanks && (
				<p class="sheet-blanks">
					<span>{printWords.name}</span>
					<i />
					<span>{printWords.date}</span>
					<i />
				</p>
			)}
		</header>
	);
}

/** The letter that stands for an option on paper: A, B ... */
export const letterOf = (at: number): string => String.fromCharCode(65 + (at % 26));
