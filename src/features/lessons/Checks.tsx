import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { lessonWords as words } from '#words/lessons/index.ts';
import { Button } from '../../ui/index.ts';
import { AskOne, askPapers } from '../papers/index.ts';
import type { LessonCheck } from './checks.ts';
import { asksOf } from './round.ts';

interface Props {
	checks: readonly LessonCheck[];
	count: number;
	/** The name its result is kept under. */
	under: string;
}

/** A round of questions on the lesson, drawn fresh: each answered, marked and told why before the next. */
export function Checks(props: Props): JSX.Element {
	const [round, begin] = useState(0);
	const [begun, start] = useState(false);
	if (!begun)
		return (
			<div class="checks-begin">
				<p>{words.checksLead(props.count)}</p>
				<Button look="main" onClick={() => start(true)}>
					{words.checksBegin}
				</Button>
			</div>
		);
	return <Round key={round} {...props} onAgain={() => begin(round + 1)} />;
}

function Round({ checks, count, under, onAgain }: Props & { onAgain: () => void }): JSX.Element {
	const ask = useMemo(askPapers, []);
	const asks = useMemo(() => asksOf(checks, count, crypto.getRandomValues(new Uint32Array(count))), []);
	const [at, go] = useState(0);
	const [right, count1] = useState(0);
	const [isMarked, mark] = useState(false);
	const end = useRef<HTMLHeadingElement>(null);
	const one = asks[at];
	useEffect(() => {
		if (one) return;
		end.current?.focus();
		// fetched at the end of a round: a page that is only read needs none of it
		import('./keepRound.ts').then(({ keepRound }) => keepRound(under, checks, { right, of: count }));
	}, [one]);
	if (!one)
		return (
			<div class="checks-end">
				<h3 ref={end} tabIndex={-1}>
					{words.checksEnd(right, count)}
				</h3>
				<p>{right === count ? words.checksAll : words.checksSome}</p>
				<Button onClick={onAgain}>{words.checksAgain}</Button>
				<Button look="quiet" href="/review/">
					{words.review}
				</Button>
			</div>
		);
	return (
		<AskOne
			key={at}
			ask={ask}
			recipe={one.recipe}
			seed={one.seed}
			heading={words.checksWhere(at + 1, count)}
			focus
			onMarked={(isRight) => {
				if (isRight && !isMarked) count1(right + 1);
				mark(true);
			}}
		>
			<Button
				look="main"
				onClick={() => {
					mark(false);
					go(at + 1);
				}}
			>
				{at + 1 < count ? words.checksNext : words.checksDone}
			</Button>
		</AskOne>
	);
}
