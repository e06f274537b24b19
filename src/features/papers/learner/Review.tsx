import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { sitWords } from '#words/papers/index.ts';
import { Button, Field, Notice } from '../../../ui/index.ts';
import type { PaperView } from '../view.ts';
import { type Sitting, standing } from './sitting.ts';
import { TimeLeft } from './TimeLeft.tsx';

interface Props {
	paper: PaperView;
	sitting: Sitting;
	left: number | null;
	onGo: (at: number) => void;
	onHandIn: (name: string) => void;
}

/** Every question with how it stands, then the name, if one likes, and handing in. */
export function Review({ paper, sitting, left, onGo, onHandIn }: Props): JSX.Element {
	const [name, type] = useState(sitting.name);
	const heading = useRef<HTMLHeadingElement>(null);
	useEffect(() => heading.current?.focus(), []);
	const { answered, open, flagged } = standing(sitting, paper);
	return (
		<section class="sit-review" aria-labelledby="sit-review">
			<header class="sit-head">
				<h2 class="title title-2" id="sit-review" ref={heading} tabIndex={-1}>
					<span>{sitWords.reviewTitle}</span>
				</h2>
				<TimeLeft left={left} />
			</header>
			<p class="sit-lead">{sitWords.reviewCount(answered, open, flagged)}</p>
			{left === 0 && (
				<Notice kind="wrong">
					<p>{sitWords.timeUp}</p>
				</Notice>
			)}
			<ol class="sit-rows">
				{paper.questions.map(({ id, text }, at) => {
					const isAnswered = id in sitting.answers;
					const isFlagged = sitting.flagged.includes(id);
					return (
						<li key={id}>
							<button type="button" class="sit-row" data-answered={isAnswered} onClick={() => onGo(at)}>
								<span class="sit-row-n">
									<span class="visually-hidden">{sitWords.question} </span>
									{at + 1}
								</span>{' '}
								<span class="sit-row-text">{text}</span>{' '}
								<span class="sit-row-state">
									{isFlagged && <strong>{sitWords.flagged}</strong>}{' '}
									{isAnswered ? sitWords.answered : sitWords.notAnswered}
								</span>
							</button>
						</li>
					);
				})}
			</ol>
			<form
				class="sit-hand-in"
				onSubmit={(event) => {
					event.preventDefault();
					onHandIn(name);
				}}
			>
				{open > 0 && left !== 0 && <p>{sitWords.handInOpen(open)}</p>}
				<Field
					label={sitWords.name}
					hint={sitWords.nameHint}
					maxLength={80}
					autocomplete="off"
					value={name}
					onInput={(event) => type(event.currentTarget.value)}
				/>
				<div class="papers-ways">
					{left !== 0 && <Button onClick={() => onGo(sitting.at)}>{sitWords.back}</Button>}
					<Button look="main" type="submit">
						{sitWords.handIn}
					</Button>
				</div>
			</form>
		</section>
	);
}
