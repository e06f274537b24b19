import { levelNames } from '#words/papers/index.ts';
import { reviewWords } from '#words/review/index.ts';
import type { KindId, PaperRecipeInput } from '../../../shared/paper/index.ts';
import { type Deck, type DeckStanding, recallOf, type Skill, skillOf, standingOf } from '../deck/index.ts';

/** A skill as the list shows it. */
export interface SkillView {
	readonly skill: string;
	readonly name: string;
	readonly standing: DeckStanding;
	/** Percent likely to be known; null for what was never asked. */
	readonly recall: number | null;
	readonly comes: string;
}

export const STANDINGS: readonly DeckStanding[] = Object.freeze(['fading', 'learning', 'new', 'known']);

/** What things are called, by id: handed in by the page, so that the words of all questions need not come along. */
export interface Names {
	readonly fixtures: Readonly<Record<string, string>>;
	readonly kinds: Readonly<Record<KindId, string>>;
}

/** What was learnt, what fades first on top. @param now ms since 1970 */
export function skillViews(deck: Deck, names: Names, now: number): SkillView[] {
	return [...deck]
		.flatMap(([skill, card]) => {
			const found = skillOf(skill);
			const recall = recallOf(card, now);
			return found
				? [
						{
							skill,
							name: nameOf(found, names),
							standing: standingOf(card, now),
							recall: recall === null ? null : Math.round(recall * 100),
							comes: whenText(card.due, now),
							due: card.due,
						},
					]
				: [];
		})
		.toSorted(
			(a, b) =>
				STANDINGS.indexOf(a.standing) - STANDINGS.indexOf(b.standing) || a.due - b.due || (a.name < b.name ? -1 : 1),
		)
		.map(({ due: _, ...view }) => view);
}

/** How many stand how. */
export function countStandings(views: readonly SkillView[]): Readonly<Record<DeckStanding, number>> {
	const counts = { fading: 0, learning: 0, new: 0, known: 0 };
	for (const { standing } of views) counts[standing]++;
	return counts;
}

const nameOf = ({ kind, about, level }: Skill, { fixtures, kinds }: Names): string =>
	reviewWords.skill(kinds[kind], about === null ? null : (fixtures[about] ?? about), levelNames[level].toLowerCase());

/** A paper of one question that asks for this skill. */
export const recipeFor = ({ kind, about, level }: Skill): PaperRecipeInput => ({
	version: 2,
	title: reviewWords.paper,
	kinds: [kind],
	levels: [level],
	profiles: about === null ? [] : [about],
	count: 1,
	feedback: 'each',
});

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** How long until then, in words, to the nearest that a person would say. @param due and @param now ms since 1970 */
export function whenText(due: number, now: number): string {
	const { when } = reviewWords;
	const left = due - now;
	if (left <= 0) return when.now;
	if (left < 90 * MINUTE) return when.minutes(Math.max(1, Math.round(left / MINUTE)));
	if (left < 20 * HOUR) return when.hours(Math.round(left / HOUR));
	if (left < 60 * DAY) return when.days(Math.max(1, Math.round(left / DAY)));
	return when.months(Math.round(left / (30 * DAY)));
}
