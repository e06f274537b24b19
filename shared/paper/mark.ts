import { InputError, messageOf, shown } from '../error/index.ts';
import { sameJson } from './digest.ts';
import { judge, looksLike } from './judge.ts';
import { answersGiven } from './read.ts';
import { setPaper } from './set.ts';
import type { Answers, Item, ItemMark, Misfit, MisfitFacts, Paper, PaperMark, PaperSources } from './types.ts';

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
			misfits.push(misfit('answer-form', item.id, { trouble: 'no-answer' }));
			return unanswered(item);
		}
		const verdict = judge(item, answer, sources);
		if (!verdict.fits) {
			misfits.push(misfit(verdict.code, item.id, verdict.facts));
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
		misfits.push(misfit('unknown-item', id, { trouble: 'no-such-question' }));
	}
	const score = items.filter(({ right }) => right).length;
	const of = items.length;
	const percent = Math.floor((200 * score + of) / (2 * of));
	return { paper: set.mark, items, score, of, percent, passed: percent >= set.recipe.pass, misfits };
}

function misfit(code: Misfit['code'], item: string, facts: MisfitFacts): Misfit {
	const sentence =
		'error' in facts ? messageOf(facts.error.code, facts.error.path, facts.error.facts) : messageOf(code, '', facts);
	return { code, item, facts, sentence };
}

const alteredPaper = misfit('paper-altered', '', { trouble: 'altered' });

type Outcome = Omit<ItemMark, 'item' | 'kind' | 'topic' | 'level'>;

const itemMark = ({ id, kind, topic, level }: Item, outcome: Outcome): ItemMark => ({
	item: id,
	kind,
	topic,
	level,
	...outcome,
});

const unanswered = (item: Item): ItemMark =>
	itemMark(item, { answered: false, right: false, score: 0, share: 0, looksLike: null, gave: null, practical: null });

interface Held {
	readonly set: Paper;
	readonly altered: boolean;
}

const found = new WeakMap<Paper, { readonly held: Held; readonly sources: PaperSources | undefined }>();

/** The paper as its recipe and seed set it, and whether the one handed in differs; found out once for each paper handed in. */
function held(paper: Paper, sources?: PaperSources): Held {
	if (typeof paper !== 'object' || paper === null)
		throw new InputError('paper.shape', 'paper', { expected: 'paper', found: shown(paper) });
	const known = found.get(paper);
	if (known && known.sources === sources) return known.held;
	const set = setPaper(paper.recipe, paper.seed, sources);
	const now = { set, altered: paper.mark !== set.mark || !sameJson(paper.items, set.items) };
	found.set(paper, { held: now, sources });
	return now;
}
