import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { sitWords } from '#words/papers/index.ts';
import type { Answer } from '../../../../shared/paper/index.ts';
import { Button, Notice, useAwake } from '../../../ui/index.ts';
import { troubleText } from '../asking.ts';
import { Chart } from '../Chart.tsx';
import type { MarkedView, PaperView } from '../view.ts';
import { Feedback } from './Feedback.tsx';
import { Form } from './forms/Form.tsx';
import { Holes } from './Holes.tsx';
import { flagged, isOpen, movedTo, type Sitting, toldOf } from './sitting.ts';
import { TimeLeft } from './TimeLeft.tsx';

interface Props {
	paper: PaperView;
	sitting: Sitting;
	left: number | null;
	resumed: boolean;
	onAnswer: (item: string, answer: Answer | null) => void;
	onChange: (how: (now: Sitting) => Sitting) => void;
	/** What was last said of keeping: shown too. */
	said: string;
	onReview: () => void;
	askMark: (item: string) => Promise<MarkedView>;
}

/** One question: its words, what it is answered with, and the bar to go on. */
export function AtQuestion(props: Props): JSX.Element | null {
	const { paper, sitting, left, resumed, said, onAnswer, onChange, onReview, askMark } = props;
	const heading = useRef<HTMLHeadingElement>(null);
	const [marked, setMarked] = useState<MarkedView | null>(null);
	const [trouble, setTrouble] = useState('');
	const question = paper.questions[sitting.at];
	const told = question !== undefined && sitting.told.includes(question.id);
	useAwake();
	useEffect(() => heading.current?.focus(), []);
	useEffect(() => {
		if (told && question && !marked)
			askMark(question.id).then(setMarked, (error: unknown) => setTrouble(troubleText(error)));
	}, [told]);
	if (!question) return null;
	const { id } = question;
	const answer = sitting.answers[id] ?? null;
	const isFlagged = sitting.flagged.includes(id);
	const isLast = sitting.at === paper.questions.length - 1;
	const mayCheck = paper.feedback === 'each' && !told;
	const go = (by: -1 | 1) => onChange((now) => movedTo(now, now.at + by, paper));
	return (
		<>
			<article class="sit-question" data-form={question.ask.form}>
				<header class="sit-head">
					<h2 class="sit-where" ref={heading} tabIndex={-1}>
						{sitWords.where(sitting.at + 1, paper.questions.length)}
						<span class="sit-topic">{question.topicName}</span>
					</h2>
					<TimeLeft left={left} />
				</header>
				<Holes paper={paper} sitting={sitting} />
				{resumed && sitting.told.length === 0 && answer !== null && <p class="sit-soft">{sitWords.resumed}</p>}
				<p class="sit-ask" id="sit-ask">
					{question.text}
				</p>
				<Chart chart={question.chart} />
				{question.ask.form !== 'number' && <p class="sit-soft">{sitWords.form[question.ask.form]}</p>}
				<Form
					question={question}
					answer={answer}
					labelledby="sit-ask"
					disabled={!isOpen(sitting, id) || left === 0}
					onAnswer={(next) => onAnswer(id, next)}
				/>
				{marked && <Feedback marked={marked} announce />}
				{trouble !== '' && <Notice kind="wrong">{trouble}</Notice>}
			</article>
			<div class="thumb-bar sit-bar" data-task-bar>
				<Button disabled={sitting.at === 0} onClick={() => go(-1)}>
					{sitWords.back}
				</Button>
				<button
					type="button"
					class="button button-plain sit-flag"
					aria-pressed={isFlagged}
					onClick={() => onChange((now) => flagged(now, id, !isFlagged))}
				>
					<svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
						<path d="M5 18V3h10l-2.5 3.5L15 10H5" />
					</svg>
					{sitWords.flag}
				</button>
				<Button look="quiet" onClick={onReview}>
					{sitWords.review}
				</Button>
				<span class="sit-bar-gap" aria-hidden="true">
					{said}
				</span>
				{mayCheck && answer !== null ? (
					<Button look="main" onClick={() => onChange((now) => toldOf(now, id))}>
						{sitWords.check}
					</Button>
				) : (
					<Button look="main" onClick={() => (isLast ? onReview() : go(1))}>
						{isLast ? sitWords.handIn : sitWords.next}
					</Button>
				)}
			</div>
		</>
	);
}
