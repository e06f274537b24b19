import { InputError } from '../error/index.ts';
import { BUNDLED, bundledProfile, checkProfile, type Profile } from '../profile/index.ts';
import { bundledRig, profileFor, RIG_IDS, type RigId, type RigSheet, readSheet } from '../sheet/index.ts';
import type { PaperRecipe } from './recipe.ts';
import type { Ground } from './types.ts';

/**
 * What a recipe's questions are made on: its own fixtures and the bundled ones it names; with neither, those of its rig; without
 * a rig, every bundled fixture.
 * @throws InputError `paper.profile` or `paper.rig` where the recipe names one that is not there, and what `checkProfile` and
 * `readSheet` throw.
 */
export function groundOf(recipe: PaperRecipe): Ground {
	for (const profile of recipe.own) checkProfile(profile);
	const sheet = sheetOf(recipe.rig);
	const named = recipe.profiles.map((id, i) => {
		const profile = bundledProfile(id);
		if (profile) return profile;
		throw new InputError('paper.profile', `profiles[${i}]`, {
			trouble: 'no-such-profile',
			id,
			known: BUNDLED.map((each) => each.id),
		});
	});
	const chosen = distinct([...recipe.own, ...named]);
	const profiles = chosen.length > 0 || !sheet ? chosen : distinct(fixturesOf(sheet));
	return { profiles: profiles.length > 0 ? profiles : BUNDLED, sheet };
}

function sheetOf(rig: PaperRecipe['rig']): RigSheet | null {
	if (rig === null) return null;
	if (typeof rig !== 'string') return readSheet(rig);
	if ((RIG_IDS as readonly string[]).includes(rig)) return bundledRig(rig as RigId);
	throw new InputError('paper.rig', 'rig', { trouble: 'no-such-rig', id: rig, known: RIG_IDS });
}

const fixturesOf = (sheet: RigSheet): Profile[] => sheet.fixtures.map(({ profile }) => profileFor(sheet, profile));

/** The first of each id. */
const distinct = (profiles: readonly Profile[]): Profile[] =>
	profiles.filter(({ id }, i) => profiles.findIndex((each) => each.id === id) === i);
