import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { paperWords, sitWords } from '#words/papers/index.ts';
import type { AskRoute } from '../../../engine/index.ts';
import { Button, Dialog, Notice } from '../../../ui/index.ts';
import { troubleText } from '../asking.ts';
import { Chart } from '../Chart.tsx';
import { HandingWays } from '../HandingWays.tsx';
import type { OpenedPaper, WaysToHand } from '../protocol.ts';
import type { PaperMarkView } from '../view.ts';
import { Feedback } from './Feedback.tsx';
import type { Sitting } from './sitting.ts';

interface Props {
	ask: AskRoute;
	opened: OpenedPaper;
	sitting: Sitting;
	onFresh: () => void;
}

/** Handed in: the score, ways to give the result on, and how each question went. */
export function Done({ ask, opened, sitting, onFresh }: Props): JSX.Element {
	const { recipe, seed, view } = opened;
	const [marked, setMarked] = useState<PaperMarkView | null>(null);
	const [handing, hand] = useState<WaysToHand | null>(null);
	const [trouble, setTrouble] = useState('');
	const [asks, askFresh] = useState(false);
	const heading = useRef<HTMLHeadingElement>(null);
	useEffect(() => heading.current?.focus(), []);
	useEffect(() => {
		const tell = (error: unknown) => setTrouble(troubleText(error));
		ask('papers.mark', { recipe, seed, answers: sitting.answers }).then(setMarked, tell);
		ask('papers.handResult', { recipe, seed, sitting, page: new URL('/papers/', location.href).href }).then(hand, tell);
	}, []);
	return (
		<div class="sit-done">
			<section class="sit-score" aria-labelledby="sit-done">
				<h2 class="title title-2" id="sit-done" ref={heading} tabIndex={-1}>
					<span>{sitWords.done}</span>
				</h2>
				<p class="sit-soft">
					{view.title}
					{sitting.name !== '' && `, ${sitting.name}`}
				</p>
				{marked ? (
					<>
						<p class="sit-score-big" data-passed={marked.passed}>
							<span class="value">{sitWords.score(marked.score, marked.of)}</span>{' '}
							<strong>{marked.passed ? sitWords.passed : sitWords.notPassed}</strong>
						</p>
						<p>{sitWords.percent(marked.percent, view.pass)}</p>
					</>
				) : (
					trouble === '' && <p class="papers-wait">{paperWords.loading}</p>
				)}
				{trouble !== '' && (
					<Notice kind="wrong">
						<p role="alert">{trouble}</p>
					</Notice>
				)}
			</section>
			<section class="sit-give" aria-labelledby="sit-give">
				<h3 id="sit-give">{sitWords.give}</h3>
				<p>{sitWords.giveWays}</p>
				{handing ? (
					<HandingWays handing={handing} label={sitWords.resultLink} what={sitWords.resultWhat} title={view.title} />
				) : (
					trouble === '' && <p class="papers-wait">{paperWords.loading}</p>
				)}
			</section>
			{marked && (
				<section class="sit-went" aria-labelledby="sit-went">
					<h3 id="sit-went">{sitWords.went}</h3>
					<ol>
						{view.questions.map(({ id, text, chart }, at) => {
							const one = marked.items.find(({ item }) => item === id);
							return (
								<li key={id}>
									<p class="sit-soft">{sitWords.where(at + 1, view.questions.length)}</p>
									<p class="sit-went-text">{text}</p>
									<Chart chart={chart} />
									{one && <Feedback marked={one} />}
								</li>
							);
						})}
					</ol>
				</section>
			)}
			<p class="papers-ways">
				<Button look="quiet" onClick={() => askFresh(true)}>
					{sitWords.fresh}
				</Button>
			</p>
			{asks && (
				<Dialog open onClose={() => askFresh(false)} title={sitWords.fresh} closeWords={sitWords.freshKeep}>
					<p>{sitWords.freshAsk}</p>
					<Button onClick={onFresh}>{sitWords.freshDo}</Button>
				</Dialog>
			)}
		</div>
	);
}
