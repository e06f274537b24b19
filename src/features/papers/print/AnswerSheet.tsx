import type { JSX } from 'preact';
import { printWords } from '#words/papers/index.ts';
import type { AskView } from '../view.ts';
import { Head, letterOf, type SheetProps } from './Head.tsx';
import { PaperSwitches } from './QuestionSheet.tsx';

/** One line a question to answer on, so that the questions can be used again. */
export function AnswerSheet({ paper, seed }: SheetProps): JSX.Element {
	return (
		<article class="sheet">
			<Head paper={paper} seed={seed} what={printWords.answerSheet} blanks />
			<ol class="sheet-answers">
				{paper.questions.map(({ id, ask }) => (
					<li key={id}>
						<Line ask={ask} />
					</li>
				))}
			</ol>
		</article>
	);
}

function Line({ ask }: { ask: AskView }): JSX.Element {
	switch (ask.form) {
		case 'one':
		case 'several':
			return (
				<span class="sheet-letters">
					{ask.options.map(({ id }, at) => (
						<span key={id}>
							<i class="sheet-box" data-round={ask.form === 'one'} /> {letterOf(at)}
						</span>
					))}
				</span>
			);
		case 'order':
			return (
				<span class="sheet-letters">
					{ask.options.map(({ id }, at) => (
						<span key={id}>
							<i class="sheet-box" /> {letterOf(at)}
						</span>
					))}
				</span>
			);
		case 'match':
			return (
				<span class="sheet-letters">
					{ask.left.map(({ id, text }) => (
						<span key={id}>
							<i class="sheet-box" /> {text}
						</span>
					))}
				</span>
			);
		case 'switches':
			return <PaperSwitches count={ask.count} />;
		case 'number':
			return (
				<span class="sheet-line">
					<i />
				</span>
			);
		default:
			return <span class="sheet-how">{printWords.onBench}</span>;
	}
}
