import type { PaperRecipe } from '../../../../shared/paper/index.ts';
import type { Skill } from '../../deck/index.ts';
import type { QuestionView } from '../view.ts';

/**
 * What a paper asked for, to be asked again later: each kind at its level, about the one fixture the paper is on, or any. Nothing
 * of a rig or fixtures of the crew's own, which the review does not have.
 */
export function skillsOf(
	{ questions }: { readonly questions: readonly Pick<QuestionView, 'kind' | 'level'>[] },
	{ profiles, own }: PaperRecipe,
): Skill[] {
	const about = profiles.length === 1 && own.length === 0 ? (profiles[0] ?? null) : null;
	const skills = new Map(questions.map(({ kind, level }) => [`${kind} ${level}`, { kind, about, level }]));
	return [...skills.values()];
}
