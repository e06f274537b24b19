import { locale } from '#words/locale/index.ts';
import { learnWords, topicNames, trainerWords } from '#words/papers/index.ts';
import {
	analyse,
	type ItemAnalysis,
	type ItemFigures,
	type Paper,
	type PaperRecipe,
} from '../../../../shared/paper/index.ts';
import { answerText, keyText, mistakeText, questionAsk } from '../../../wording/index.ts';
import type { ClassRow, ClassTable } from '../exchange/index.ts';
import type { CellView, ClassView, ItemView, LearnView, PersonView, RowView, TopicView } from './views.ts';

/** A class table in words. */
export function showClass(table: ClassTable): ClassView {
	const { paper, rows } = table;
	return {
		mark: paper.mark,
		title: paper.recipe.title,
		seed: paper.seed,
		questions: paper.items.map((item) => ({ id: item.id, text: questionAsk(item) })),
		rows: rows.map((row) => showRow(table, row)),
		learn: learnFrom(table),
	};
}

/** Why a result counts or does not, where that is not plain; empty where it is. */
function standingText({ standing: { counts, why }, namesakes }: ClassRow): string {
	if (!counts) return learnWords.notCounted[why];
	if (why !== 'first') return learnWords.counted[why];
	return namesakes > 1 ? learnWords.namesakes(namesakes) : '';
}

function showRow({ paper }: ClassTable, row: ClassRow): RowView {
	const { taken, name, mark, attemptNo, milliseconds, flags, standing } = row;
	const { attempt, ended, answers } = taken.result;
	return {
		attempt,
		name,
		score: mark.score,
		of: mark.of,
		percent: mark.percent,
		passed: mark.passed,
		ended,
		minutes: milliseconds === null ? null : Math.round(milliseconds / 60_000),
		tryNo: attemptNo,
		label: labelOf(row),
		counts: standing.counts,
		standing: standingText(row),
		flags: flags.map(({ item, sentence }) => {
			const at = paper.items.findIndex(({ id }) => id === item);
			return at < 0 ? sentence : `${at + 1}: ${sentence}`;
		}),
		cells: paper.items.map((item): CellView => {
			const one = mark.items.find((each) => each.item === item.id);
			const answer = Object.hasOwn(answers, item.id) ? answers[item.id] : undefined;
			if (!one?.answered || !answer) return { state: 'open', gave: '' };
			return { state: one.right ? 'right' : 'wrong', gave: answerText(item, answer) };
		}),
	};
}

/** Topics named in one sentence: the weakest. */
const MOST_TOPICS = 3;

/** Names said before the rest is only counted. */
const MOST_NAMES = 4;

/** KR-20 from which a paper is called firm, and fair: common practice, no source. */
const FIRM = 0.8;
const FAIR = 0.6;

/**
 * People from which chance alone stamps a question less than 1 time in 20: 1.645 / √(n − 1) under 0.1, the limit at which `analyse`
 * calls one upside-down (recalculated).
 */
const ENOUGH = 272;

/** A topic of one person's is weak below this share: the same that `analyse` calls missed. */
const WEAK = 0.7;

/**
 * What a class table shows, in words: of each person's first result in which everything fits, so that neither practice nor
 * tampering bends a figure, and of whatever the trainer counts besides. Null with nobody left.
 */
export function learnFrom({ paper, rows }: ClassTable): LearnView | null {
	const counted = rows.filter(({ standing }) => standing.counts);
	if (counted.length === 0) return null;
	const figures = analyse(counted.map(({ mark }) => mark));
	return {
		people: figures.people,
		leftOut: rows.length - counted.length,
		tenths: tenthsOf(counted),
		pass: paper.recipe.pass,
		says: [
			learnWords.people(figures.people),
			learnWords.mean(figures.mean / figures.questions, figures.passed, figures.people),
			...(rows.length > counted.length ? [learnWords.leftOut(rows.length - counted.length)] : []),
		],
		steady: steadyOf(figures),
		items: figures.items.map((each, at) => itemOf(paper, each, at, counted)),
		topics: figures.topics.map(topicOf),
		hint: hintOf(figures),
		persons: figures.persons.map((each) => personOf(each, counted)),
		next: nextOf(paper.recipe, figures),
	};
}

function tenthsOf(rows: readonly ClassRow[]): number[] {
	const tenths = Array.from({ length: 10 }, () => 0);
	for (const { mark } of rows) {
		const at = Math.min(9, Math.floor(mark.percent / 10));
		tenths[at] = (tenths[at] ?? 0) + 1;
	}
	return tenths;
}

const hintOf = ({ people, items }: ItemAnalysis): string | null =>
	people < ENOUGH && items.some(({ finding }) => finding !== 'too-few') ? learnWords.hint(people) : null;

function steadyOf({ people, kr20, kr20Interval, again }: ItemAnalysis): string[] {
	if (kr20 === null) return [learnWords.kr20None];
	const figure =
		kr20 < 0
			? learnWords.kr20Below(kr20, !kr20Interval || kr20Interval.to > 0 ? people : null)
			: kr20Interval
				? learnWords.kr20Says(kr20, kr20Interval.from, kr20Interval.to)
				: learnWords.kr20Alone(kr20);
	return [
		figure,
		learnWords.kr20Means[kr20 >= FIRM ? 'firm' : kr20 >= FAIR ? 'fair' : 'weak'],
		...(again === null ? [] : [learnWords.again(again)]),
	];
}

function itemOf(paper: Paper, figures: ItemFigures, at: number, rows: readonly ClassRow[]): ItemView {
	const { item: id, right, of, difficulty, interval, discrimination, pointBiserial, finding, topic } = figures;
	const item = paper.items.find((each) => each.id === id);
	return {
		id,
		at: at + 1,
		text: item ? questionAsk(item) : '',
		topicName: topicNames[topic],
		share: difficulty,
		low: interval.from,
		high: interval.to,
		finding: learnWords.findings[finding],
		marked: finding === 'upside-down' || finding === 'too-hard',
		key: item ? keyText(item) : '',
		says: [
			learnWords.findingSays[finding],
			learnWords.right(right, of, interval.from, interval.to),
			discrimination === null ? learnWords.discriminationNone : learnWords.discrimination(discrimination),
			pointBiserial === null ? learnWords.biserialNone : learnWords.biserial(pointBiserial),
		],
		drew: figures.given
			.filter((given) => !given.right)
			.map((given) => {
				const who = rows.filter(({ mark }) => mark.items.some((one) => one.item === id && one.gave === given.gave));
				const answer = who[0]?.taken.result.answers[id];
				const words = given.gave === null || !item ? learnWords.drewNone : answerText(item, answer);
				return {
					says: learnWords.drew(words, given.count, namesOf(who)),
					mistake: given.looksLike === null ? null : mistakeText(given.looksLike),
				};
			}),
	};
}

function namesOf(rows: readonly ClassRow[]): string {
	const names = rows.map(labelOf);
	const shown = names.slice(0, MOST_NAMES).join(', ');
	return names.length > MOST_NAMES ? `${shown} ${learnWords.more(names.length - MOST_NAMES)}` : shown;
}

const topicOf = ({ id, right, of, share, interval, short }: ItemAnalysis['topics'][number]): TopicView => ({
	id,
	name: topicNames[id],
	share,
	low: interval.from,
	high: interval.to,
	says: learnWords.topic(right, of),
	short: short && learnWords.topicShort[short],
});

function personOf(figures: ItemAnalysis['persons'][number], rows: readonly ClassRow[]): PersonView {
	const { at, score, percent, passed, topics } = figures;
	const row = rows[at];
	const missed = topics.filter(({ share }) => share < WEAK);
	const named = (some: typeof missed) =>
		listOf(some.slice(0, MOST_TOPICS).map(({ id, right, of }) => learnWords.topicOf(topicNames[id], right, of)));
	// of few questions even who knows the topic may miss most
	const [sure, few] = [
		missed.filter(({ interval }) => interval.to < WEAK),
		missed.filter(({ interval }) => interval.to >= WEAK),
	];
	const weak = [
		...(sure.length > 0 ? [learnWords.weakest(named(sure))] : []),
		...(few.length > 0 ? [learnWords.weakFew(named(few))] : []),
	];
	return {
		attempt: row?.taken.result.attempt ?? '',
		name: row ? labelOf(row) : trainerWords.nameless,
		says: learnWords.score(score, row?.mark.of ?? 0, percent),
		share: percent / 100,
		passed,
		weak: weak.length > 0 ? weak.join(' ') : learnWords.strong,
	};
}

const listOf = (things: readonly string[]): string =>
	locale.list(things.map((each) => each.charAt(0).toLowerCase() + each.slice(1)));

/** The next paper: the kinds that were missed, on the same fixtures, as hard as before. Null where none were. */
function nextOf(recipe: PaperRecipe, { missed, kinds }: ItemAnalysis): LearnView['next'] {
	const asked = missed.kinds.length > 0 ? missed.kinds : kinds.filter(({ share }) => share < 1).map(({ id }) => id);
	if (missed.kinds.length === 0 && missed.topics.length === 0) return null;
	const topics = missed.topics.slice(0, MOST_TOPICS).map((id) => topicNames[id]);
	return {
		why: topics.length > 0 ? trainerWords.nextWhy(listOf(topics)) : trainerWords.nextWhyKinds,
		recipe: {
			...recipe,
			title: trainerWords.nextTitle(recipe.title),
			topics: [],
			kinds: [...asked],
			// twice over each, and no more than they just sat
			count: Math.min(Math.max(recipe.count, 1), Math.max(5, 2 * asked.length)),
		},
	};
}

/** A result by its name, and by whatever tells it from others of that name: which person, which try. */
function labelOf({ name, person, namesakes, attemptNo }: ClassRow): string {
	const which = [
		...(namesakes > 1 ? [learnWords.whichOf(person, namesakes)] : []),
		...(attemptNo > 1 ? [learnWords.whichTry(attemptNo)] : []),
	];
	const called = name || trainerWords.nameless;
	return which.length > 0 ? learnWords.told(called, which.join(', ')) : called;
}
