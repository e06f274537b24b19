import type { JSX } from 'preact';
import { printWords, sitWords } from '#words/papers/index.ts';
import { Chart } from '../Chart.tsx';
import { typedText } from '../learner/typed.ts';
import type { AskView } from '../view.ts';
import { Head, letterOf, type SheetProps } from './Head.tsx';

/** The questions, each whole on one page, to be answered on the paper itself or on the answer sheet. */
export function QuestionSheet({ paper, seed }: SheetProps): JSX.Element {
	return (
		<article class="sheet">
			<Head paper={paper} seed={seed} blanks />
			<ol class="sheet-questions">
				{paper.questions.map(({ id, text, chart, ask }) => (
					<li key={id}>
						<p class="sheet-ask">{text}</p>
						<Chart chart={chart} />
						<Room ask={ask} />
					</li>
				))}
			</ol>
		</article>
	);
}

/** Room to answer in. */
function Room({ ask }: { ask: AskView }): JSX.Element {
	switch (ask.form) {
		case 'one':
		case 'several':
		case 'order':
			return (
				<>
					<p class="sheet-how">{ask.form === 'order' ? printWords.orderBox : printWords.tick[ask.form]}</p>
					<ol class="sheet-options">
						{ask.options.map(({ id, text }, at) => (
							<li key={id}>
								<i class="sheet-box" data-round={ask.form === 'one'} />
								<b>{letterOf(at)}</b> {text}
							</li>
						))}
					</ol>
				</>
			);
		case 'number': {
			const [from, to] = [typedText(ask.least, ask.base), typedText(ask.most, ask.base)];
			return (
				<p class="sheet-line">
					<i /> {ask.base === 10 ? sitWords.number(from, to) : sitWords.numberHex(from, to)}
				</p>
			);
		}
		case 'switches':
			return (
				<>
					<p class="sheet-how">{printWords.switchesBox}</p>
					<PaperSwitches count={ask.count} />
				</>
			);
		case 'match':
			return (
				<>
					<p class="sheet-how">{printWords.matchBox}</p>
					<div class="sheet-match">
						<ol class="sheet-options">
							{ask.left.map(({ id, text }) => (
								<li key={id}>
									<i class="sheet-box" /> {text}
								</li>
							))}
						</ol>
						<ol class="sheet-options">
							{ask.right.map(({ id, text }, at) => (
								<li key={id}>
									<b>{letterOf(at)}</b> {text}
								</li>
							))}
						</ol>
					</div>
				</>
			);
		default:
			return <p class="sheet-how">{printWords.onBench}</p>;
	}
}

/** Switches to be marked by pen: an upper and a lower half each. */
export function PaperSwitches({ count }: { count: number }): JSX.Element {
	return (
		<div class="sheet-switches">
			{Array.from({ length: count }, (_, i) => (
				<span key={i}>
					<i />
					<b>{i + 1}</b>
				</span>
			))}
		</div>
	);
}
