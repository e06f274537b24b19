import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { paperWords, sitWords } from '#words/papers/index.ts';
import type { AskRoute } from '../../../engine/index.ts';
import { useUnderWay } from '../../../site/updates/index.ts';
import { DEVICE, freshId } from '../../../storage/index.ts';
import { Button, Live, Notice } from '../../../ui/index.ts';
import { keepLearnt } from '../../deck/index.ts';
import type { OpenedPaper } from '../protocol.ts';
import { AtQuestion } from './AtQuestion.tsx';
import { Done } from './Done.tsx';
import { keepLast } from './keepSitting.ts';
import { Review } from './Review.tsx';
import { Start } from './Start.tsx';
import { answered, begin, handedIn, movedTo, type Sitting, secondsLeft, skillsOf, timeToSay } from './sitting.ts';
import { useSitting } from './useSitting.ts';

/** A paper on this device, from its first page to its result. */
export function SitPaper({ ask, opened }: { ask: AskRoute; opened: OpenedPaper }): JSX.Element {
	const paper = opened.view;
	const { hand, sitting, resumed, trouble, came, change, takeOver } = useSitting(paper, ask);
	const [reviewing, review] = useState(false);
	const [said, say] = useState({ text: '', turn: 0 });
	const left = useSecondsLeft(sitting, paper, (which) => tell(sitWords.timeSay[which]));
	const over = left === 0;
	const act = (how: (now: Sitting) => Sitting) => change((now) => now && how(now));
	const tell = (text: string) => say(({ turn }) => ({ text, turn: turn + 1 }));
	const notKept = came === 'kept' ? null : came === 'full' ? sitWords.noRoom : sitWords.notKept;
	useKeptSaid(sitting, notKept, tell);
	useUnderWay(sitting !== null && sitting.ended === null);
	useEffect(() => {
		if (over) review(true);
	}, [over]);

	if (hand.is === 'asking') return <p class="papers-wait">{paperWords.loading}</p>;
	if (hand.is === 'failed')
		return (
			<Notice kind="wrong">
				<p role="alert">{hand.sentence}</p>
				<Button onClick={takeOver}>{sitWords.tryAgain}</Button>
			</Notice>
		);
	if (hand.is === 'elsewhere') return <Elsewhere lost={hand.lost} onTake={takeOver} />;
	const notices = (
		<>
			{trouble && <Notice kind="wrong">{sitWords[trouble]}</Notice>}
			{notKept && <Notice kind="wrong">{notKept}</Notice>}
			<Live text={said.text} turn={said.turn} />
		</>
	);
	if (!sitting) {
		return (
			<>
				<Start
					paper={paper}
					onBegin={() => {
						keepLast(DEVICE, location.hash);
						change(() => begin(paper, freshId(), Date.now()));
					}}
				/>
				{notices}
			</>
		);
	}
	if (sitting.ended !== null) {
		return (
			<>
				<Done
					ask={ask}
					opened={opened}
					sitting={sitting}
					onFresh={() => {
						keepLast(DEVICE, null);
						change(() => null);
						review(false);
					}}
				/>
				{notices}
			</>
		);
	}
	const shared = { paper, sitting, left };
	return (
		<>
			{reviewing ? (
				<Review
					{...shared}
					onGo={(at) => {
						act((now) => movedTo(now, at, paper));
						review(false);
					}}
					onHandIn={(name) => {
						act((now) => handedIn(now, paper, name, Date.now()));
						void keepLearnt(skillsOf(paper, opened.recipe));
					}}
				/>
			) : (
				<AtQuestion
					key={sitting.at}
					{...shared}
					resumed={resumed}
					onAnswer={(item, answer) => {
						if (!over) act((now) => answered(now, item, answer));
					}}
					onChange={act}
					said={said.text}
					onReview={() => review(true)}
					askMark={(item) =>
						ask('papers.markOne', { recipe: opened.recipe, seed: opened.seed, answers: sitting.answers, item })
					}
				/>
			)}
			{notices}
		</>
	);
}

/** Another tab has this paper. */
function Elsewhere({ lost, onTake }: { lost: boolean; onTake: () => void }): JSX.Element {
	const words = lost ? sitWords.lost : sitWords.elsewhere;
	return (
		<Notice kind="wrong">
			<p role="alert">{words}</p>
			<Button onClick={onTake}>{sitWords.takeOver}</Button>
		</Notice>
	);
}

/** Counts down while there is a limit; null otherwise. What is to be read out is told once. */
function useSecondsLeft(
	sitting: Sitting | null,
	paper: OpenedPaper['view'],
	tell: (which: 'five' | 'one' | 'none') => void,
): number | null {
	const look = () => (sitting ? secondsLeft(sitting, paper, Date.now()) : null);
	const [left, set] = useState(look);
	const before = useRef(left);
	useEffect(() => {
		const turn = () => {
			const now = look();
			const which = timeToSay(before.current, now);
			if (which) tell(which);
			before.current = now;
			set(now);
		};
		turn();
		if (!sitting || paper.minutes === null || sitting.ended !== null) return;
		const timer = window.setInterval(turn, 1000);
		return () => window.clearInterval(timer);
	}, [sitting?.attempt, sitting?.ended]);
	return left;
}

/** Says that an answer is kept, a moment after the last one: not at every letter typed. */
function useKeptSaid(sitting: Sitting | null, notKept: string | null, tell: (text: string) => void): void {
	const first = useRef(true);
	useEffect(() => {
		if (first.current || !sitting || sitting.ended !== null) {
			first.current = sitting === null;
			return;
		}
		const timer = window.setTimeout(() => tell(notKept ?? sitWords.saved), 700);
		return () => window.clearTimeout(timer);
	}, [sitting?.answers]);
}
