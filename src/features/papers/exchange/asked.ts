import { exportWords } from '#words/papers/index.ts';
import type { AnswerForm, Item, Option } from '../../../../shared/paper/index.ts';
import { optionText, questionAsk, questionChart } from '../../../wording/index.ts';

/** A thing to choose, order or match, in words. */
export interface WordedChoice {
	readonly id: string;
	readonly text: string;
}

/** What a question asks, line by line, its chart included. */
export function askedLines(item: Item): readonly string[] {
	const chart = questionChart(item);
	return [...questionAsk(item).split('\n'), ...(chart ? [chart.over, ...chart.lines] : [])].filter(Boolean);
}

/** Options in words. */
export const wordedOptions = (item: Item, options: readonly Option[]): readonly WordedChoice[] =>
	options.map((option) => ({ id: option.id, text: optionText(item, option) }));

/** Switches as things to choose: an id must not begin with a digit. */
export const wordedSwitches = ({ count }: AnswerForm & { form: 'switches' }): readonly WordedChoice[] =>
	Array.from({ length: count }, (_, i) => ({ id: switchId(i + 1), text: `${exportWords.switch} ${i + 1}` }));

export const switchId = (n: number): string => `s${n}`;
