/**
 * Papers: questions set from a recipe and a seed, and marked. The same recipe and seed always set the same paper; another seed an
 * equivalent one. Every right answer, every wrong option and the mistake behind it is worked out here from profiles, sheets and
 * the arithmetic of the line; the words are in `content/en/papers`. Kinds that are read from a rig come from `sim/paper`, through
 * `PaperSources`. Marking goes by the answers alone, against the paper set anew, never by a score that was sent.
 */

export { analyse } from './analyse.ts';
export { isAtRest, shortOf, slotChartOf } from './chart.ts';
export { asksFor, draft, fresh, lettered, oneOf, say, severalOf, type WrongAnswer } from './draft.ts';
export type { AnswerCount, GroupFigures, ItemAnalysis, ItemFigures, ItemFinding, PersonFigures } from './figures.ts';
export {
	CHART_KIND_IDS,
	FIRST_KIND_IDS,
	KIND_IDS,
	KIND_TOPICS,
	type KindId,
	LEVELS,
	MISTAKE_IDS,
	type MistakeId,
	OWN_MOST,
	type PaperLevel,
	PLAIN_KIND_IDS,
	type PlainKindId,
	RECIPE_VERSION,
	RIG_KIND_IDS,
	type RigKindId,
	TOPIC_IDS,
	type TopicId,
	UNSEEN_KIND_IDS,
} from './ids.ts';
export { markPaper } from './mark.ts';
export { readAnswers, readPaper, readRecipe } from './read.ts';
export type { PaperRecipe, PaperRecipeInput } from './recipe.ts';
export { isOfAll, kindsFor, needsRig, topicsOf } from './schedule.ts';
export { groundOf, setPaper, TOP_SEED } from './set.ts';
export type {
	Answer,
	AnswerForm,
	AnswerKey,
	Answers,
	Chance,
	ChartSource,
	FactValue,
	Form,
	Item,
	ItemDraft,
	ItemFacts,
	ItemMark,
	KnownMistake,
	Misfit,
	NumberUnit,
	Option,
	Paper,
	PaperMark,
	PaperSources,
	PracticalMark,
	QuestionGround,
	QuestionKind,
	Say,
} from './types.ts';
