import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { paperWords, sitWords } from '#words/papers/index.ts';
import { askWords } from '#words/review/index.ts';
import type { Answer, PaperRecipeInput } from '../../../shared/paper/index.ts';
import type { AskRoute } from '../../engine/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import { troubleText } from './asking.ts';
import { Chart } from './Chart.tsx';
import { Feedback } from './learner/Feedback.tsx';
import { Form } from './learner/forms/Form.tsx';
import type { OpenedPaper } from './protocol.ts';
import type { MarkedView } from './view.ts';

interface Props {
	ask: AskRoute;
	/** Asks for one question. */
	recipe: PaperRecipeInput;
	seed: number;
	/** What stands over it. */
	heading: string;
	/** Takes the focus when it comes. */
	focus?: boolean;
	onMarked: (right: boolean) => void;
	/** Ways on, once it is marked. */
	children: ComponentChildren;
}

/** One question by itself, set anew from a recipe and a seed: answered, marked, and told why. Give it a key of its own. */
export default function AskOne({ ask, recipe, seed, heading, focus = false, onMarked, children }: Props): JSX.Element {
	const [paper, setPaper] = useState<OpenedPaper | null>(null);
	const [answer, setAnswer] = useState<Answer | null>(null);
	const [marked, setMarked] = useState<MarkedView | null>(null);
	const [trouble, setTrouble] = useState('');
	const title = useRef<HTMLHeadingElement>(null);
	const failed = (error: unknown) => setTrouble(troubleText(error));
	useEffect(() => {
		ask('papers.set', { recipe, seed }).then(setPaper, failed);
		if (focus) title.current?.focus();
	}, []);
	const question = paper?.view.questions[0];
	const check = async () => {
		if (!paper || !question) return;
		try {
			const found = await ask('papers.markOne', {
				recipe: paper.recipe,
				seed,
				item: question.id,
				answers: answer === null ? {} : { [question.id]: answer },
			});
			setMarked(found);
			onMarked(found.right);
		} catch (error) {
			failed(error);
		}
	};
	const words = `ask-${seed}`;
	return (
		<article class="sit-question" data-form={question?.ask.form}>
			<header class="sit-head">
				<h2 class="sit-where" ref={title} tabIndex={-1}>
					{heading}
					{question && <span class="sit-topic">{question.topicName}</span>}
				</h2>
			</header>
			{trouble !== '' && <Notice kind="wrong">{trouble}</Notice>}
			{!question && trouble === '' && <p class="papers-wait">{paperWords.loading}</p>}
			{question && (
				<>
					<p class="sit-ask" id={words}>
						{question.text}
					</p>
					<Chart chart={question.chart} />
					{question.ask.form !== 'number' && <p class="sit-soft">{sitWords.form[question.ask.form]}</p>}
					<Form
						question={question}
						answer={answer}
						labelledby={words}
						disabled={marked !== null}
						onAnswer={setAnswer}
					/>
				</>
			)}
			{marked ? (
				<>
					<Feedback marked={marked} announce />
					<div class="sit-ways">{children}</div>
				</>
			) : (
				question && (
					<div class="sit-ways">
						<Button look="main" disabled={answer === null} onClick={check}>
							{askWords.check}
						</Button>
						<Button look="quiet" onClick={check}>
							{askWords.dontKnow}
						</Button>
					</div>
				)
			)}
		</article>
	);
}
