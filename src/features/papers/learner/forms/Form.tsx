import type { JSX } from 'preact';
import type { Answer } from '../../../../../shared/paper/index.ts';
import { later } from '../../asking.ts';
import type { QuestionView } from '../../view.ts';
import { Match } from './Match.tsx';
import { NumberBox } from './NumberBox.tsx';
import { Order } from './Order.tsx';
import { Pick } from './Pick.tsx';
import { Switches } from './Switches.tsx';

const Practical = later(() => import('./Practical.tsx'));

export interface FormProps {
	question: QuestionView;
	answer: Answer | null;
	/** Id of the question's words. */
	labelledby: string;
	disabled: boolean;
	onAnswer: (answer: Answer | null) => void;
}

/** What a question is answered with, by its form. */
export function Form({ question: { id, ask }, answer, labelledby, disabled, onAnswer }: FormProps): JSX.Element {
	const shared = { labelledby, disabled };
	switch (ask.form) {
		case 'one':
			return (
				<Pick
					{...shared}
					name={id}
					options={ask.options}
					many={false}
					chosen={answer?.form === 'one' ? [answer.chose] : []}
					onChange={([chose]) => onAnswer(chose === undefined ? null : { form: 'one', chose })}
				/>
			);
		case 'several':
			return (
				<Pick
					{...shared}
					name={id}
					options={ask.options}
					many
					chosen={answer?.form === 'several' ? answer.chose : []}
					onChange={(chose) => onAnswer(chose.length === 0 ? null : { form: 'several', chose })}
				/>
			);
		case 'number':
			return (
				<NumberBox
					ask={ask}
					disabled={disabled}
					value={answer?.form === 'number' ? answer.value : null}
					onChange={(value) => onAnswer(value === null ? null : { form: 'number', value })}
				/>
			);
		case 'order':
			return (
				<Order
					{...shared}
					options={ask.options}
					order={answer?.form === 'order' ? answer.order : null}
					onChange={(order) => onAnswer({ form: 'order', order })}
				/>
			);
		case 'switches':
			return (
				<Switches
					{...shared}
					count={ask.count}
					up={answer?.form === 'switches' ? answer.up : []}
					onChange={(up) => onAnswer({ form: 'switches', up })}
				/>
			);
		case 'match':
			return (
				<Match
					{...shared}
					name={id}
					left={ask.left}
					right={ask.right}
					pairs={answer?.form === 'match' ? answer.pairs : {}}
					onChange={(pairs) => onAnswer(Object.keys(pairs).length === 0 ? null : { form: 'match', pairs })}
				/>
			);
		case 'practical':
			return (
				<Practical
					kind={ask.kind}
					seed={ask.seed}
					disabled={disabled}
					log={answer?.form === 'practical' ? answer.log : []}
					onLog={(log) => onAnswer(log.length === 0 ? null : { form: 'practical', log })}
				/>
			);
	}
}
