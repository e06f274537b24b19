import { InputError, requireWhole } from '../error/index.ts';
import { BUNDLED, bundledProfile, checkProfile, FIRST_BUNDLED, type Profile } from '../profile/index.ts';
import { makeRandom, type Random } from '../random/index.ts';
import { bundledRig, profileFor, RIG_IDS, type RigId, type RigSheet, readSheet } from '../sheet/index.ts';
import { LEVELS, TOPIC_IDS } from './ids.ts';
import { canonical, digest, longDigest } from './json.ts';
import { readRecipe } from './read.ts';
import type { PaperRecipe, PaperRecipeInput } from './recipe.ts';
import { type QuestionSlot, schedule } from './schedule.ts';
import type { Item, ItemDraft, Paper, PaperSources, QuestionGround } from './types.ts';
import { groundsFor } from './unseen.ts';

/** Highest seed, so that one fits a link: 2^32 − 1. */
export const TOP_SEED = 0xffffffff;

/** Draws of a question's contents before one that stands in the paper already is taken again. */
const TRIES = 24;

/** Papers kept once set: the last few, so that many results of one paper set it once. */
const KEPT = 8;
const kept = new Map<string, { readonly paper: Paper; readonly sources: PaperSources | undefined }>();

/**
 * Sets a paper. Kinds, topics and levels hang on the recipe alone; the seed (a whole number from 0 to `TOP_SEED`) moves contents and
 * order, so another seed sets an equivalent paper, and the same seed always the same. What is handed out is kept, and not to be
 * changed.
 * @throws InputError `paper.recipe`, `paper.seed`, `paper.profile`, `paper.rig`, `paper.needs-rig`, `paper.empty`, `paper.unseen`.
 */
export function setPaper(input: PaperRecipeInput, seed: number, sources?: PaperSources): Paper {
	const recipe = readRecipe(input);
	requireWhole(seed, { lo: 0, hi: TOP_SEED, code: 'paper.seed', path: 'seed', of: 'paper-seed' });
	const name = canonical([recipe, seed]);
	const known = kept.get(name);
	if (known && known.sources === sources) return known.paper;
	const paper = setAnew(recipe, seed, sources);
	kept.delete(name);
	kept.set(name, { paper, sources });
	for (const oldest of kept.keys()) if (kept.size > KEPT) kept.delete(oldest);
	return paper;
}

function setAnew(recipe: PaperRecipe, seed: number, sources: PaperSources | undefined): Paper {
	const ground = groundOf(recipe);
	const chance = makeRandom(seed);
	const taken = new Set<string>();
	const groundAt = groundsFor(recipe, ground, sources?.charts);
	const set = schedule(recipe, ground, sources).map((place, i) => {
		const here = groundAt(place, chance.fork(`${i} chart`));
		const item = itemAt(place, here, (attempt) => chance.fork(`${i} ${place.kind.id} ${attempt}`), taken);
		taken.add(item.id);
		return item;
	});
	const items = inOrder(set, recipe.order, chance.fork('order'));
	return { version: 1, recipe, seed, items, mark: markOf(recipe, seed, items) };
}

/** A paper's mark. Benches are left out: they follow from the rest, and are most of its length. */
function markOf(recipe: PaperRecipe, seed: number, items: readonly Item[]): string {
	const asked = items.map(({ bench: _, ...rest }) => rest);
	return longDigest(canonical([recipe, seed]) + JSON.stringify(asked));
}

function itemAt(
	{ kind, level }: QuestionSlot,
	ground: QuestionGround,
	fork: (attempt: number) => Random,
	taken: Set<string>,
): Item {
	const { id, topic } = kind;
	let draft: ItemDraft | null = null;
	let name = '';
	// where the fixtures have no more to ask, the last draw stands a second time, under a number of its own
	for (let attempt = 0; attempt === 0 || taken.has(name); attempt++) {
		if (attempt < TRIES || !draft) draft = kind.make(ground, fork(attempt), level);
		name = `${id}-${digest(JSON.stringify([draft.facts, draft.ask]), Math.max(0, attempt - TRIES + 1))}`;
	}
	return { id: name, kind: id, topic, level, ...(draft as ItemDraft) };
}

function inOrder(items: readonly Item[], order: PaperRecipe['order'], chance: Random): Item[] {
	const mixed = chance.shuffle(items);
	if (order === 'by-topic') return mixed.sort((a, b) => TOPIC_IDS.indexOf(a.topic) - TOPIC_IDS.indexOf(b.topic));
	if (order === 'easy-first') return mixed.sort((a, b) => LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level));
	return mixed;
}

/**
 * What a recipe's questions are made on: its own fixtures and the bundled ones it names; with neither, those of its rig; without
 * a rig, the first bundled fixtures, whatever has come since.
 * @throws InputError `paper.profile` or `paper.rig` where the recipe names one that is not there, and what `checkProfile` and
 * `readSheet` throw.
 */
export function groundOf(recipe: PaperRecipe): QuestionGround {
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
	return {
		profiles: profiles.length > 0 ? profiles : FIRST_BUNDLED,
		sheet,
		version: recipe.version,
		...(recipe.unseen === undefined ? {} : { unseen: true as const }),
	};
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
