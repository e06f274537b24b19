import type { JSX } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { lessonWords as words } from '#words/lessons/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import { OnPhone } from './OnPhone.tsx';
import type { Prediction } from './predict.ts';

type Asked = Pick<Prediction, 'ask' | 'options' | 'right'>;

interface Props {
	asked: Asked;
	/** What to do once an answer is picked, before it is told whether it is right; nothing where it is told at once. */
	between?: { readonly words: string; readonly show: string; readonly onShow: () => void };
	/** How the right answer is told. */
	isWord?: (right: string) => string;
	/** Told once it is known whether the answer was right. */
	children?: JSX.Element;
}

/** A question with an answer picked before it is seen: then it is done on the bench, and then told. */
export function Predict({ asked, between, isWord = words.predictIs, children }: Props): JSX.Element {
	const { ask, options, right } = asked;
	const [picked, pick] = useState<number | null>(null);
	const [stage, go] = useState<'asked' | 'said' | 'told'>('asked');
	const [isEmpty, warn] = useState(false);
	const [isOpen, open] = useState(false);
	const end = useRef<HTMLDivElement>(null);
	const name = useId();
	useEffect(() => {
		if (stage !== 'asked') end.current?.focus();
	}, [stage]);
	const say = () => {
		warn(picked === null);
		if (picked !== null) go(between ? 'said' : 'told');
	};
	return (
		<div class="predict" data-open={isOpen || stage !== 'asked'}>
			<fieldset disabled={stage !== 'asked'}>
				<legend>{ask}</legend>
				{stage === 'asked' && <OnPhone line={words.predictOpen} isOpen={isOpen} onPress={() => open(!isOpen)} />}
				{options.map((option, i) => (
					<label key={option} class="practice-rest">
						<input type="radio" name={name} checked={picked === i} onChange={() => pick(i)} />
						<span>{option}</span>
					</label>
				))}
			</fieldset>
			{stage === 'asked' && (
				<div class="practice-rest">
					{isEmpty && <p role="alert">{words.predictEmpty}</p>}
					<Button look="main" onClick={say}>
						{words.predictSay}
					</Button>
				</div>
			)}
			<div ref={end} tabIndex={-1} class="predict-end">
				{stage === 'said' && between && (
					<>
						<p>{between.words}</p>
						<p class="predict-ways">
							<Button look="main" onClick={() => go('told')}>
								{words.predictTell}
							</Button>
							<Button onClick={between.onShow}>{between.show}</Button>
						</p>
					</>
				)}
				{stage === 'told' && (
					<>
						<Notice kind={picked === right ? 'good' : 'wrong'} word={picked === right ? words.right : words.notRight}>
							<p>{isWord(options[right] ?? '')}</p>
						</Notice>
						{children}
					</>
				)}
			</div>
		</div>
	);
}
