import type { JSX } from 'preact';
import { panelQuestions as words } from '#words/stock/index.ts';
import type { PanelKey } from '../../../shared/profile/index.ts';
import type { Asked, OwnPanel, PanelEntry, Question } from '../../../shared/stock/index.ts';
import { keyName } from '../../wording/index.ts';

/** An answer in words; a key by what is printed on it. */
export function answerText(id: Question, answer: string, panel: OwnPanel['panel']): string {
	const { answers } = words.questions[id];
	const said = (answers as Readonly<Record<string, string>>)[answer];
	return said ?? keyName(panel ?? undefined, answer as PanelKey);
}

/** Answers with one more, or one fewer where it is open again. */
export function withAnswer(answers: PanelEntry['answers'], id: Question, answer: string | null): PanelEntry['answers'] {
	const { [id]: _, ...rest } = answers;
	return answer === null ? rest : ({ ...rest, [id]: answer } as PanelEntry['answers']);
}

interface Props {
	panel: PanelEntry;
	own: OwnPanel;
	onAnswers: (answers: PanelEntry['answers']) => void;
}

/** What may differ from the panel in one's hand, as questions: each answer is a part of how the panel acts. */
export function PanelQuestions({ panel, own, onAnswers }: Props): JSX.Element | null {
	if (own.asked.length === 0) return null;
	return (
		<section class="stock-questions" aria-labelledby="stock-questions">
			<h3 id="stock-questions">{words.heading}</h3>
			<p>{words.lead}</p>
			{own.asked.map((asked) => (
				<Ask
					key={asked.id}
					asked={asked}
					panel={own.panel}
					onAnswer={(answer) => onAnswers(withAnswer(panel.answers, asked.id, answer))}
				/>
			))}
		</section>
	);
}

interface AskProps {
	asked: Asked;
	panel: OwnPanel['panel'];
	onAnswer: (answer: string | null) => void;
}

function Ask({ asked: { id, answers, given }, panel, onAnswer }: AskProps): JSX.Element {
	const { ask, care }: { readonly ask: string; readonly care?: string } = words.questions[id];
	return (
		<fieldset class="stock-ask">
			<legend>{ask}</legend>
			{care && <p class="field-hint">{care}</p>}
			<div class="stock-ways">
				{[null, ...answers].map((answer) => (
					<label key={answer ?? ''} class="stock-pick">
						<input type="radio" name={`panel-${id}`} checked={given === answer} onChange={() => onAnswer(answer)} />
						<span>{answer === null ? words.open : answerText(id, answer, panel)}</span>
					</label>
				))}
			</div>
		</fieldset>
	);
}
