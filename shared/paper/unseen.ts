import { InputError } from '../error/index.ts';
import { INVENT_LEVELS } from '../invent/index.ts';
import { UNSEEN_KIND_IDS } from './ids.ts';
import type { PaperRecipe } from './recipe.ts';
import type { QuestionSlot } from './schedule.ts';
import type { Chance, ChartSource, QuestionGround } from './types.ts';

/** Fixtures made up at each level before the next: of easy ones half have a chart of bands, of hard ones nearly all. */
const DRAWS = 12;

/** What a question is set on, asked question by question in the order of the schedule. */
export type GroundAt = (place: QuestionSlot, chance: Chance) => QuestionGround;

/**
 * What each question of a recipe is set on: the recipe's own ground, or for what prints a chart a fixture made up for that question
 * alone; the two by turns where the recipe names fixtures or a rig.
 * @param charts what makes up fixtures, with the recipe's list of words
 * @throws InputError `paper.unseen` where it has another list, or there is none
 */
export function groundsFor(recipe: PaperRecipe, ground: QuestionGround, charts: ChartSource | undefined): GroundAt {
	const { unseen } = recipe;
	if (unseen === undefined) return () => ground;
	if (charts?.list !== unseen) throw new InputError('paper.unseen', 'unseen', { trouble: 'other-words', id: unseen });
	const isNamed = recipe.profiles.length + recipe.own.length > 0 || recipe.rig !== null;
	let turn = 0;
	return (place, chance) => {
		if (!UNSEEN_KIND_IDS.includes(place.kind.id)) return ground;
		const isOwnTurn = isNamed && turn++ % 2 === 1;
		return isOwnTurn && place.kind.fits(ground) ? ground : madeUpFor(place, chance, ground.version, charts);
	};
}

/** A fixture for this question: of its level, or of a harder one where none at its level has what the kind asks about. */
function madeUpFor(
	{ kind, level }: QuestionSlot,
	chance: Chance,
	version: QuestionGround['version'],
	{ invent }: ChartSource,
): QuestionGround {
	for (const each of INVENT_LEVELS.slice(INVENT_LEVELS.indexOf(level)))
		for (let draw = 0; draw < DRAWS; draw++) {
			const profiles = [invent(chance.int(0, 2 ** 32 - 1), each)];
			const ground: QuestionGround = { profiles, sheet: null, ...(version ? { version } : {}) };
			if (kind.fits(ground)) return ground;
		}
	throw new RangeError(`no fixture made up has what ${kind.id} asks about`);
}
