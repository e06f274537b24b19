import { InputError, isInputError, messageOf, shown } from '../error/index.ts';
import type { MistakeId } from './ids.ts';
import { sameJson } from './json.ts';
import { answersGiven } from './read.ts';
import { setPaper } from './set.ts';
import type {
	Answer,
	AnswerForm,
	AnswerKey,
	Answers,
	Item,
	ItemMark,
	Misfit,
	MisfitFacts,
	Paper,
	PaperMark,
	PaperSources,
	PracticalMark,
} from './types.ts';

/**
 * Marks answers to a paper. The paper is set anew from its recipe and seed and the answers are marked against that, so a key, a
 * question or a score that somebody changed has no say; what differs is told as a misfit.
 * @throws InputError as `setPaper` does, where the recipe sets no paper, and `paper.answers` for what holds no answers.
 */
export function markPaper(paper: Paper, answers: Answers, sources?: PaperSources): PaperMark {
	const { set, altered } = held(paper, sources);
	const given = answersGiven(answers);
	const misfits: Misfit[] = altered ? [alteredPaper] : [];
	const items = set.items.map((item) => {
		const answer = given.get(item.id);
		given.delete(item.id);
		if (answer === undefined) return unanswered(item);
		if (answer === null) {
			misfits.push(unmarked('answer-form', item.id, { trouble: 'no-answer' }));
			return unanswered(item);
		}
		const verdict = judge(item, answer, sources);
		if (!verdict.fits) {
			misfits.push(unmarked(verdict.code, item.id, verdict.facts));
			return unanswered(item);
		}
		const { right, share, gave, practical } = verdict;
		return itemMark(item, {
			answered: true,
			right,
			score: right ? 1 : 0,
			share,
			looksLike: right ? null : looksLike(item, answer),
			gave,
			practical,
		});
	});
	for (const id of given.keys()) {
		misfits.push(unmarked('unknown-item', id, { trouble: 'no-such-question' }));
	}
	const score = items.filter(({ right }) => right).length;
	const of = items.length;
	const percent = Math.floor((200 * score + of) / (2 * of));
	return { paper: set.mark, items, score, of, percent, passed: percent >= set.recipe.pass, misfits };
}

function unmarked(code: Misfit['code'], item: string, facts: MisfitFacts): Misfit {
	const sentence =
		'error' in facts ? messageOf(facts.error.code, facts.error.path, facts.error.facts) : messageOf(code, '', facts);
	return { code, item, facts, sentence };
}

const alteredPaper = unmarked('paper-altered', '', { trouble: 'altered' });

type ItemOutcome = Omit<ItemMark, 'item' | 'kind' | 'topic' | 'level'>;

const itemMark = ({ id, kind, topic, level }: Item, outcome: ItemOutcome): ItemMark => ({
	item: id,
	kind,
	topic,
	level,
	...outcome,
});

const unanswered = (item: Item): ItemMark =>
	itemMark(item, { answered: false, right: false, score: 0, share: 0, looksLike: null, gave: null, practical: null });

interface CheckedPaper {
	readonly set: Paper;
	readonly altered: boolean;
}

const found = new WeakMap<Paper, { readonly held: CheckedPaper; readonly sources: PaperSources | undefined }>();

/** The paper as its recipe and seed set it, and whether the one handed in differs; found out once for each paper handed in. */
function held(paper: Paper, sources?: PaperSources): CheckedPaper {
	if (typeof paper !== 'object' || paper === null)
		throw new InputError('paper.shape', 'paper', { expected: 'paper', found: shown(paper) });
	const known = found.get(paper);
	if (known && known.sources === sources) return known.held;
	const set = setPaper(paper.recipe, paper.seed, sources);
	const now = { set, altered: paper.mark !== set.mark || !sameJson(paper.items, set.items) };
	found.set(paper, { held: now, sources });
	return now;
}

/** What an answer to one question comes to. */
export type AnswerVerdict =
	| { readonly fits: false; readonly code: Misfit['code']; readonly facts: MisfitFacts }
	| {
			readonly fits: true;
			readonly right: boolean;
			readonly share: number;
			readonly gave: string;
			readonly practical: PracticalMark | null;
	  };

const unfit = (code: Misfit['code'], facts: MisfitFacts): AnswerVerdict => ({ fits: false, code, facts });
const judged = (
	right: boolean,
	gave: string,
	share = right ? 1 : 0,
	practical: PracticalMark | null = null,
): AnswerVerdict => ({
	fits: true,
	right,
	share,
	gave,
	practical,
});

/** Judges one answer against the key of its question, which the paper's own recipe has set. */
export function judge(item: Item, answer: Answer, sources?: PaperSources): AnswerVerdict {
	const { ask, key } = item;
	if (answer.form !== ask.form || answer.form !== key.form) {
		return unfit('answer-form', { expected: 'form', form: ask.form, found: answer.form });
	}
	return checkAnswer(ask, answer) ?? judgeFitting(item, key, answer, sources);
}

/** What is wrong with an answer before it is right or wrong: options that are not there, numbers out of reach. */
function checkAnswer(ask: AnswerForm, answer: Answer): AnswerVerdict | null {
	switch (answer.form) {
		case 'one':
			return checkOptions(ask, [answer.chose], false);
		case 'several':
			return checkOptions(ask, answer.chose, false);
		case 'order':
			return checkOptions(ask, answer.order, true);
		case 'match':
			return ask.form === 'match' ? checkPairs(ask, answer.pairs) : null;
		case 'number':
			return ask.form === 'number' && !isWhole(answer.value, ask.least, ask.most)
				? unfit('answer-range', {
						expected: 'whole',
						lo: ask.least,
						hi: ask.most,
						found: shown(answer.value),
					})
				: null;
		case 'switches':
			return ask.form === 'switches' && !(isOnce(answer.up) && answer.up.every((n) => isWhole(n, 1, ask.count)))
				? unfit('answer-range', { expected: 'switches', hi: ask.count })
				: null;
		default:
			return null;
	}
}

const isWhole = (n: number, least: number, most: number): boolean => Number.isInteger(n) && n >= least && n <= most;
const isOnce = (things: readonly unknown[]): boolean => new Set(things).size === things.length;
const idsOf = (options: readonly { readonly id: string }[]): string[] => options.map(({ id }) => id);

function checkOptions(ask: AnswerForm, chosen: readonly string[], all: boolean): AnswerVerdict | null {
	const known = 'options' in ask ? idsOf(ask.options) : [];
	if (isOnce(chosen) && chosen.every((id) => known.includes(id)) && (!all || chosen.length === known.length))
		return null;
	return unfit('answer-option', { expected: all ? 'all-options' : 'options', known });
}

function checkPairs(
	{ left, right }: Extract<AnswerForm, { form: 'match' }>,
	pairs: Readonly<Record<string, string>>,
): AnswerVerdict | null {
	const fits = Object.entries(pairs).every(([a, b]) => idsOf(left).includes(a) && idsOf(right).includes(b));
	return fits ? null : unfit('answer-option', { trouble: 'no-such-pair' });
}

/** An answer as one short text: equal answers read equal. */
function gaveText(answer: Answer): string {
	switch (answer.form) {
		case 'one':
			return answer.chose;
		case 'several':
			return [...answer.chose].sort().join(' ');
		case 'number':
			return String(answer.value);
		case 'order':
			return answer.order.join(' ');
		case 'switches':
			return [...answer.up].sort((a, b) => a - b).join(' ');
		case 'match':
			return Object.entries(answer.pairs)
				.map(([left, right]) => `${left}=${right}`)
				.sort()
				.join(' ');
		default:
			return '';
	}
}

function judgeFitting(item: Item, key: AnswerKey, answer: Answer, sources?: PaperSources): AnswerVerdict {
	const gave = gaveText(answer);
	if (answer.form === 'one' && key.form === 'one') return judged(answer.chose === key.right, gave);
	if (answer.form === 'number' && key.form === 'number') {
		return judged(
			key.within.some(({ from, to }) => from <= answer.value && answer.value <= to),
			gave,
		);
	}
	if (answer.form === 'switches' && key.form === 'switches') {
		return judged(gave === gaveText({ form: 'switches', up: key.up }), gave);
	}
	if (answer.form === 'several' && key.form === 'several') {
		const hits = answer.chose.filter((id) => key.right.includes(id)).length;
		const share = (hits - (answer.chose.length - hits)) / Math.max(1, key.right.length);
		return judged(hits === key.right.length && answer.chose.length === hits, gave, Math.max(0, share));
	}
	if (answer.form === 'order' && key.form === 'order') {
		const hits = answer.order.filter((id, i) => key.right[i] === id).length;
		return judged(hits === key.right.length, gave, hits / key.right.length);
	}
	if (answer.form === 'match' && key.form === 'match') {
		const wanted = Object.entries(key.right);
		const given = new Map(Object.entries(answer.pairs));
		const hits = wanted.filter(([left, right]) => given.get(left) === right).length;
		return judged(hits === wanted.length, gave, hits / wanted.length);
	}
	return answer.form === 'practical' ? judgePractical(item, answer.log, sources) : judged(false, gave);
}

function judgePractical(item: Item, log: readonly unknown[], sources?: PaperSources): AnswerVerdict {
	try {
		const mark = sources?.practical(item, log);
		if (!mark) return unfit('log-bad', { trouble: 'no-bench' });
		return judged(mark.done, `${mark.right}/${mark.of}`, mark.of === 0 ? 0 : mark.right / mark.of, mark);
	} catch (thrown) {
		if (!isInputError(thrown)) throw thrown;
		const { code, path, facts } = thrown;
		return unfit('log-bad', { trouble: 'log-refused', error: { code, path, facts } });
	}
}

/** The mistake a wrong answer looks like: one known for this question, else what choosing too few, too many or another order is. */
export function looksLike({ mistakes, key }: Item, answer: Answer): MistakeId | null {
	const gave = gaveText(answer);
	const known = mistakes.find((each) => gaveText(each.answer) === gave);
	if (known) return known.mistake;
	if (answer.form === 'order') return 'wrong-order';
	if (answer.form !== 'several' || key.form !== 'several') return null;
	const hits = answer.chose.filter((id) => key.right.includes(id)).length;
	if (hits === answer.chose.length && hits > 0) return 'some-missed';
	return hits === key.right.length ? 'one-too-many' : null;
}
