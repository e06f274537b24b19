import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { reviewWords as words } from '#words/review/index.ts';
import { Button } from '../../ui/index.ts';
import { type RecallOutcome, skillOf } from '../deck/index.ts';
import { AskOne, askPapers } from '../papers/index.ts';
import { recipeFor } from './view.ts';

interface Props {
	skills: readonly string[];
	/** Told once for each, with how it went, before the next is shown. */
	onAsked: (skill: string, outcome: RecallOutcome) => void;
	onEnd: () => void;
	/** Whether more is due after this sitting. */
	more: boolean;
}

const anySeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;

/** One sitting: a question for each skill, with other numbers each time. */
export function Sitting({ skills, onAsked, onEnd, more }: Props): JSX.Element {
	const ask = useMemo(askPapers, []);
	const seeds = useMemo(() => skills.map(anySeed), []);
	const [at, go] = useState(0);
	const [marked, mark] = useState<boolean | null>(null);
	const [right, count] = useState(0);
	const end = useRef<HTMLHeadingElement>(null);
	const text = skills[at];
	const skill = text === undefined ? null : skillOf(text);
	useEffect(() => end.current?.focus(), [at]);
	if (text === undefined)
		return (
			<section class="review-end">
				<h2 ref={end} tabIndex={-1}>
					{words.finished}
				</h2>
				<p>{words.finishedWords(right, skills.length)}</p>
				{right < skills.length && <p>{words.wrongComes}</p>}
				<Button look="main" onClick={onEnd}>
					{more ? words.oneMore : words.next}
				</Button>
			</section>
		);
	const onward = (outcome: RecallOutcome) => {
		onAsked(text, outcome);
		if (outcome !== 'wrong') count(right + 1);
		mark(null);
		go(at + 1);
	};
	const heading = words.where(at + 1, skills.length);
	return (
		<div class="review-sitting">
			{skill ? (
				<AskOne
					key={at}
					ask={ask}
					recipe={recipeFor(skill)}
					seed={seeds[at] ?? 0}
					heading={heading}
					focus
					onMarked={mark}
				>
					<Button look="main" onClick={() => onward(marked ? 'right' : 'wrong')}>
						{words.next}
					</Button>
					{marked && (
						<Button onClick={() => onward('guessed')}>
							{words.guessed}
							<span class="visually-hidden">. {words.guessedHint}</span>
						</Button>
					)}
				</AskOne>
			) : (
				<div class="review-gone">
					<p>{words.gone}</p>
					<Button look="main" onClick={() => go(at + 1)}>
						{words.next}
					</Button>
				</div>
			)}
			<Button look="quiet" onClick={onEnd}>
				{words.stop}
			</Button>
		</div>
	);
}
