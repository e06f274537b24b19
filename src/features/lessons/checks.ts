import { InputError } from '../../../shared/error/index.ts';
import {
	groundOf,
	type KindId,
	kindsFor,
	type PaperLevel,
	type PaperRecipeInput,
	readRecipe,
} from '../../../shared/paper/index.ts';
import { RIG_SOURCES } from '../../../sim/paper/index.ts';
import type { Lesson } from './schema.ts';

/** One kind of question that a lesson asks, ready to be set from any seed. */
export interface LessonCheck {
	readonly recipe: PaperRecipeInput;
	/** What is learnt by it, to be asked again later: about one fixture, or any. */
	readonly skill: { readonly kind: KindId; readonly about: string | null; readonly level: PaperLevel };
}

/**
 * What a lesson asks, worked out when the page is built: for each kind the easiest level it can be set at on the lesson's fixtures.
 * @throws InputError `lesson.checks` for a kind that these fixtures cannot carry
 */
export function checksOf({ id, title, checks }: Pick<Lesson, 'id' | 'title' | 'checks'>): LessonCheck[] {
	const { kinds, profiles } = checks;
	const about = profiles.length === 1 ? (profiles[0] ?? null) : null;
	const fitting = kindsFor(groundOf(readRecipe({ version: 2, title, profiles, count: 1 })), RIG_SOURCES);
	return kinds.map((kind) => {
		const level = fitting.find((each) => each.id === kind)?.levels[0];
		if (!level) throw new InputError('lesson.checks', 'checks.kinds', { trouble: 'nothing-to-ask', lesson: id, kind });
		return {
			recipe: { version: 2, title, profiles, kinds: [kind], levels: [level], count: 1, feedback: 'each' },
			skill: { kind, about, level },
		};
	});
}
