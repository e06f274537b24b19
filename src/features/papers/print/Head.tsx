import type { JSX } from 'preact';
import { paperWords, printWords } from '#words/papers/index.ts';
import type { AskView, PaperView } from '../view.ts';

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

/**
 * The letters of what is right, as the question sheet prints them: of an order from first to last, of a match in the order of
 * what stands on the left.
 * @param rightIds as `KeyView.rightIds` has them
 */
export function keyLetters(ask: AskView, rightIds: readonly string[]): string[] {
	const options = ask.form === 'match' ? ask.right : 'options' in ask ? ask.options : [];
	const letters = new Map(options.map(({ id }, at) => [id, letterOf(at)]));
	const printed = rightIds.flatMap((id) => letters.get(id) ?? []);
	return ask.form === 'one' || ask.form === 'several' ? printed.sort() : printed;
}

/** The letter that stands for an option on paper: A, B ... */
export const letterOf = (at: number): string => String.fromCharCode(65 + (at % 26));
