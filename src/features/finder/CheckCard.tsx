import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { CautionId } from '#words/cautions/index.ts';
import type { CheckSpot } from '#words/checks/index.ts';
import { checkWords, needWords, sortWords } from '#words/finder/index.ts';
import { AnswerSign, Button, Title } from '../../ui/index.ts';
import { Cautions } from './Cautions.tsx';
import { Picture } from './Picture.tsx';
import type { FinderStore } from './store.ts';
import { cautionsFirst, disturbsText, timeText } from './verdict.ts';
import type { AnswerView, CheckView, Stage } from './view.ts';
import { Why } from './Why.tsx';

interface Props {
	store: FinderStore;
	check: CheckView;
	/** What the finder is at: while it works, nothing can be answered. */
	stage: Stage | null;
	/** Cautions told in full on this page: what somebody else read, or was read before the page was opened, is told again. */
	met: Set<CautionId>;
}

/**
 * One check: what to do, what it costs, where, and what may be seen. Cautions stand before the answers, and nothing can be answered
 * until they are there; those of mains and of height stand before what to do. What this walk has told in full is a line that opens.
 */
export function CheckCard({ store, check, stage, met }: Props): JSX.Element {
	const isCautioned = check.cautions.length > 0;
	const [isTold, tell] = useState(!isCautioned);
	const busy = stage !== null;
	const [folds] = useState(() => check.said.filter((id) => met.has(id)));
	const said = (
		<Cautions
			ids={check.cautions}
			said={folds}
			onShown={() => {
				for (const id of check.cautions) met.add(id);
				tell(true);
			}}
		/>
	);
	const isFirst = cautionsFirst(check.cautions);
	const begins = { 'data-begin': true, tabIndex: -1 };
	return (
		<section class="check" data-task-bar data-check={check.id} data-sort={check.sort} data-cautioned={isCautioned}>
			<div class="check-card" {...(isCautioned ? begins : {})}>
				<Title level={2}>{check.title}</Title>
				{isFirst && said}
				<p class="check-does">{check.does}</p>
				<p class="check-costs">
					<span class="check-sort">{sortWords[check.sort]}</span>
					<strong>{checkWords.costs(timeText(check.seconds))}</strong>
					{check.walk >= 1 && `, ${(check.climbs ? checkWords.climb : checkWords.walk)(timeText(check.walk))}`}
					{check.needs.length > 0 && `. ${checkWords.needs(check.needs.map((need) => needWords[need]).join(', '))}`}
					{check.disturbs && `. ${disturbsText(check.sort)}`}.
				</p>
				{!isFirst && said}
				<Picture picture={check.picture} />
				<Why check={check} />
			</div>
			<fieldset class="answers" aria-busy={busy} {...(isCautioned ? {} : begins)}>
				<legend class="answers-ask">{stage === null ? checkWords.ask : checkWords.stages[stage]}</legend>
				<div class="answers-list">
					{check.answers.map((answer) => (
						<Answer
							key={answer.id}
							answer={answer}
							spot={check.picture.spot}
							disabled={busy || !isTold}
							onPress={() => store.answer(check.id, answer.id)}
						/>
					))}
				</div>
				<div class="answers-ways">
					<Button look="quiet" data-way="back" onClick={() => store.back()}>
						{checkWords.back}
					</Button>
					<Button look="quiet" data-way="unsure" disabled={busy} onClick={() => store.setAside(check.id, 'unsure')}>
						{checkWords.unsure}
					</Button>
					<Button look="quiet" data-way="cannot" disabled={busy} onClick={() => store.setAside(check.id, 'cannot')}>
						{checkWords.cannot}
					</Button>
				</div>
			</fieldset>
		</section>
	);
}

/** Characters past which an answer takes the whole width. */
const WIDE = 34;

interface AnswerProps {
	answer: AnswerView;
	spot: CheckSpot;
	disabled: boolean;
	onPress: () => void;
}

function Answer({ answer: { id, words, note }, spot, disabled, onPress }: AnswerProps): JSX.Element {
	return (
		<button
			type="button"
			class="answer"
			data-outcome={id}
			data-wide={words.length > WIDE}
			disabled={disabled}
			onClick={onPress}
		>
			<AnswerSign spot={spot} outcome={id} />
			<span>{words}</span>
			{note !== null && <small>{note}</small>}
		</button>
	);
}
