import { levelNames, topicNames } from '#words/papers/index.ts';
import {
	type AnswerForm,
	type Answers,
	asksFor,
	type Item,
	type ItemMark,
	type Option,
	type Paper,
	type PaperMark,
} from '../../../shared/paper/index.ts';
import {
	answerText,
	keyText,
	kindName,
	mistakeText,
	optionText,
	questionAsk,
	questionChart,
	whyText,
	workingText,
} from '../../wording/index.ts';
import type { AskView, KeyView, MarkedView, OptionView, PaperMarkView, PaperView, QuestionView } from './view.ts';

/** A paper in words, with nothing in it that is right. */
export function showPaper(paper: Paper): PaperView {
	const { recipe, mark, items } = paper;
	return {
		mark,
		title: recipe.title,
		minutes: recipe.minutes,
		pass: recipe.pass,
		feedback: recipe.feedback,
		questions: items.map(showQuestion),
	};
}

function showQuestion(item: Item): QuestionView {
	const { id, kind, topic, level } = item;
	return {
		id,
		kind,
		kindName: kindName(kind),
		topic,
		topicName: topicNames[topic],
		level,
		levelName: levelNames[level],
		text: questionAsk(item),
		chart: questionChart(item),
		ask: showAsk(item, item.ask),
	};
}

function showAsk(item: Item, ask: AnswerForm): AskView {
	const shown = (options: readonly Option[]): OptionView[] =>
		options.map((option) => ({ id: option.id, text: optionText(item, option) }));
	switch (ask.form) {
		case 'one':
		case 'several':
		case 'order':
			return { form: ask.form, options: shown(ask.options) };
		case 'match':
			return { form: 'match', left: shown(ask.left), right: shown(ask.right) };
		case 'practical':
			return { form: 'practical', ...ask.drill };
		case 'number':
			return { ...ask, ...asksFor(item) };
		default:
			return ask;
	}
}

/** The key of a paper in words. */
export const showKeys = (paper: Paper): KeyView[] =>
	paper.items.map((item) => ({
		item: item.id,
		right: keyText(item),
		rightIds: rightIds(item),
		working: workingText(item),
	}));

function rightIds({ ask, key }: Item): readonly string[] {
	if (key.form === 'match') return ask.form === 'match' ? ask.left.flatMap(({ id }) => key.right[id] ?? []) : [];
	if (key.form === 'one') return [key.right];
	return key.form === 'several' || key.form === 'order' ? key.right : [];
}

/** Marks in words. */
export function showMarks(paper: Paper, mark: PaperMark, answers: Answers): PaperMarkView {
	const { score, of, percent, passed } = mark;
	const items = paper.items.flatMap((item) => {
		const one = mark.items.find((each) => each.item === item.id);
		return one ? [showMark(item, one, answers)] : [];
	});
	return { score, of, percent, passed, items };
}

/** One mark in words. */
export function showMark(item: Item, mark: ItemMark, answers: Answers): MarkedView {
	const { answered, right, share, looksLike, practical } = mark;
	const answer = Object.hasOwn(answers, item.id) ? answers[item.id] : undefined;
	return {
		item: item.id,
		answered,
		right,
		share,
		gave: answered && answer ? answerText(item, answer) : '',
		key: keyText(item),
		working: workingText(item),
		looksLike: looksLike === null ? null : mistakeText(looksLike),
		why: whyText(item, mark),
		practical: practical === null ? null : { right: practical.right, of: practical.of },
		bench: item.bench === null ? null : JSON.stringify(item.bench),
	};
}
